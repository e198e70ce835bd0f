// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.recognition.PageSource;
import org.probeleaf.recognition.Progress;
import org.probeleaf.recognition.Recogniser;
import org.probeleaf.schematic.netlist.Netlist;

/**
 * A sheet that was read, and how long it took.
 *
 * @param open  seconds to open it
 * @param pages for each page seconds to draw and to read it
 * @param all   seconds for all of it, by the clock on the wall
 */
record Reading(Netlist netlist, double open, List<PageTime> pages, double all) {

    private static final double NANO = 1e-9;

    /** Seconds that a page took. */
    record PageTime(int page, double draw, double read) {
    }

    static Reading of(Path sheet) throws SheetException {
        long start = System.nanoTime();
        try (SheetFile file = SheetFile.open(sheet, null)) {
            double open = (System.nanoTime() - start) * NANO;
            List<PageTime> pages = new ArrayList<>();
            Progress clock = new Progress() {
                @Override
                public void pageRead(int page, double draw, double read) {
                    pages.add(new PageTime(page, draw, read));
                }
            };
            List<Integer> wanted = IntStream.rangeClosed(1, file.pageCount()).boxed().toList();
            Netlist netlist = new Recogniser().recognise(file.name(), "", PageSource.of(file, wanted, null), clock);
            return new Reading(netlist, open, pages, (System.nanoTime() - start) * NANO);
        }
    }
}
