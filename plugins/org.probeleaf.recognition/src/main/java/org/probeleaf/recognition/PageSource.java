// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import java.util.List;
import java.util.function.BooleanSupplier;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;

/**
 * Pages that are drawn when they are wanted and kept by nobody, so that a file of ten thousand pages needs no more
 * memory than one of two. Each thread that draws opens a hand of its own; {@link #open()} may be called by several
 * threads at once.
 */
public interface PageSource {

    /** How many pages there are. */
    int size();

    /**
     * Opens what one thread draws pages with; it closes it in the end.
     *
     * @throws SheetException where the sheet cannot be opened
     */
    Hand open() throws SheetException;

    /** Draws pages; used by one thread at a time. */
    interface Hand extends AutoCloseable {

        /**
         * Draws a page.
         *
         * @param index 0-based place among the pages
         * @param stop  asked now and then whether to give up
         * @throws SheetException                             where it cannot be drawn
         * @throws java.util.concurrent.CancellationException where it was given up
         */
        Drawing draw(int index, BooleanSupplier stop) throws SheetException;

        @Override
        default void close() {
            // nothing is held
        }
    }

    /**
     * Pages of an open sheet, which stays open while they are used.
     *
     * @param pages    1-based numbers, rising
     * @param password with which the sheet was opened, or null
     */
    static PageSource of(SheetFile sheet, List<Integer> pages, String password) {
        return new SheetPages(sheet, pages, password);
    }

    /** Pages that are drawn already. */
    static PageSource of(List<Drawing> drawings) {
        return new PageSource() {
            @Override
            public int size() {
                return drawings.size();
            }

            @Override
            public Hand open() {
                return (index, stop) -> drawings.get(index);
            }
        };
    }
}
