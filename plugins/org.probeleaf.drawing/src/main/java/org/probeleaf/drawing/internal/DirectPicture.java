// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import org.probeleaf.drawing.PagePicture;
import org.probeleaf.drawing.PageSize;
import org.probeleaf.drawing.Raster;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.schematic.geometry.Box;

/**
 * A page that cannot be recorded: each rendering interprets it anew, from a document of its own so that others may
 * use theirs meanwhile. Any thread may use it; renderings wait for each other.
 */
final class DirectPicture implements PagePicture {

    private final byte[] bytes;
    private final String path;
    private final String password;
    private final int page;
    private final PageSize size;
    private PdfSheetFile file;

    DirectPicture(byte[] bytes, String path, String password, int page, PageSize size) {
        this.bytes = bytes;
        this.path = path;
        this.password = password;
        this.page = page;
        this.size = size;
    }

    @Override
    public PageSize size() {
        return size;
    }

    @Override
    public synchronized Raster render(double scale, Box region) throws SheetException {
        if (file == null) {
            // A document read from memory holds nothing outside it, so that the collector may end it with this.
            file = PdfSheetFile.open(bytes, path, password);
        }
        return file.render(page, scale, region);
    }
}
