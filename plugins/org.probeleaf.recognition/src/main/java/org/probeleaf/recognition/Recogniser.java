// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.recognition.page.NetlistBuilder;
import org.probeleaf.recognition.page.PageReading;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Sheet;
import org.probeleaf.schematic.partbook.PartBook;

/**
 * Reads drawings, as many pages at the same time as there are processor cores; what is read does not depend on how
 * many. Instances have no state; any thread may use them.
 */
public final class Recogniser {

    private final int cores;
    private final PartBook book;

    /** Uses all processor cores and the part book of the program. */
    public Recogniser() {
        this(PartBook.standard());
    }

    /** @param book knows the pins that a sheet does not draw; all processor cores are used */
    public Recogniser(PartBook book) {
        this(book, Runtime.getRuntime().availableProcessors());
    }

    /** @param cores how many pages are in work at the same time, at least 1 */
    public Recogniser(PartBook book, int cores) {
        this.book = book;
        this.cores = cores;
    }

    /**
     * Reads pages that are drawn already.
     *
     * @param file     name of the sheet file, without folders
     * @param sha256   of its bytes, lower-case hexadecimal
     * @param drawings its pages, by rising number
     * @param progress hears of each page
     * @return the netlist
     * @throws CancellationException where {@code progress} says to stop
     */
    public Netlist recognise(String file, String sha256, List<Drawing> drawings, Progress progress) {
        try {
            return recognise(file, sha256, PageSource.of(drawings), progress);
        } catch (SheetException e) {
            throw new IllegalStateException("pages that are drawn were drawn again", e);
        }
    }

    /**
     * Draws pages and reads them.
     *
     * @param file     name of the sheet file, without folders
     * @param sha256   of its bytes, lower-case hexadecimal
     * @param pages    its pages, by rising number
     * @param progress hears of each page, in their order
     * @return the netlist
     * @throws SheetException        where a page cannot be drawn: of several, the first
     * @throws CancellationException where {@code progress} says to stop
     */
    public Netlist recognise(String file, String sha256, PageSource pages, Progress progress) throws SheetException {
        List<Sheet> sheets = new ArrayList<>();
        List<PageReading> readings = new ArrayList<>();
        try (PageCrew crew = new PageCrew(pages, progress, cores)) {
            for (int i = 0; i < pages.size(); i++) {
                PageCrew.ReadPage page = crew.page(i);
                sheets.add(page.sheet());
                readings.add(page.reading());
                progress.pageRead(page.sheet().page(), page.draw(), page.read());
                progress.pagesDone(i + 1, pages.size());
            }
        }
        return new NetlistBuilder(readings, book).build(file, sha256, sheets);
    }
}
