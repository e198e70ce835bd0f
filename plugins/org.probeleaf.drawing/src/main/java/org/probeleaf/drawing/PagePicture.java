// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing;

import org.probeleaf.schematic.geometry.Box;

/**
 * A page ready to be rendered again and again, piece by piece, at any scale. Any thread may use it, also after its
 * file is closed.
 */
public interface PagePicture {

    /** The size of the page as displayed. */
    PageSize size();

    /**
     * Renders a piece of the page on white paper, annotations of the file included.
     *
     * @param scale  pixels per point
     * @param region the piece, in points as displayed; the raster's size is its size times the scale, rounded up
     * @throws SheetException where the page is damaged
     */
    Raster render(double scale, Box region) throws SheetException;
}
