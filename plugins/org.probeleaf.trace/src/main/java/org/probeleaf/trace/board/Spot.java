// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/**
 * A spot on a sheet.
 *
 * @param page 1-based page
 * @param at   the spot, in points
 */
public record Spot(int page, Point at) {

    /** The spot as a place that a person can name. */
    public Place.OnPage place() {
        return new Place.OnPage(page, at.x(), at.y());
    }
}
