// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BooleanSupplier;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;

/** Pages of an open sheet: the first thread uses the sheet itself, the others open its bytes anew. */
final class SheetPages implements PageSource {

    private final SheetFile sheet;
    private final List<Integer> pages;
    private final String password;
    private final AtomicBoolean taken = new AtomicBoolean();

    /** @param pages 1-based numbers, rising */
    SheetPages(SheetFile sheet, List<Integer> pages, String password) {
        this.sheet = sheet;
        this.pages = pages;
        this.password = password;
    }

    @Override
    public int size() {
        return pages.size();
    }

    @Override
    public Hand open() throws SheetException {
        return taken.compareAndSet(false, true) ? new SheetHand(sheet, false)
                : new SheetHand(SheetFile.open(sheet.bytes(), sheet.name(), password), true);
    }

    private final class SheetHand implements Hand {

        private final SheetFile file;
        private final boolean own;

        SheetHand(SheetFile file, boolean own) {
            this.file = file;
            this.own = own;
        }

        @Override
        public Drawing draw(int index, BooleanSupplier stop) throws SheetException {
            return file.draw(pages.get(index), stop);
        }

        @Override
        public void close() {
            if (own) {
                file.close();
            }
        }
    }
}
