// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.recognition.PageSource;
import org.probeleaf.recognition.Progress;
import org.probeleaf.recognition.Recogniser;
import org.probeleaf.schematic.checksum.Sha256;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;

/** Recognises a sheet file and takes the time of each page. */
public final class SheetReader {

    private static final double NANO = 1e-9;

    private final Console console;
    private final List<SheetTiming> timings = new ArrayList<>();

    public SheetReader(Console console) {
        this.console = console;
    }

    /** The part book to read by. */
    PartBook book() {
        return PartBooks.book(console);
    }

    /** The times of the pages read so far, in the order done. */
    public List<SheetTiming> timings() {
        return List.copyOf(timings);
    }

    /**
     * Recognises pages of a sheet.
     *
     * @param file     the sheet
     * @param pages    which pages
     * @param password for a protected sheet, or null
     * @throws SheetException where it cannot be used
     */
    public Netlist read(Path file, PageRange pages, String password) throws SheetException {
        long start = System.nanoTime();
        try (SheetFile sheet = SheetFile.open(file, password)) {
            double open = seconds(start);
            List<Integer> wanted = pages.of(sheet.pageCount());
            PageClock clock = new PageClock(file, open);
            Netlist netlist = new Recogniser(book()).recognise(sheet.name(), Sha256.of(sheet.bytes()),
                    PageSource.of(sheet, wanted, password), clock);
            clock.stop();
            return netlist;
        } finally {
            console.progressDone();
        }
    }

    private static double seconds(long since) {
        return (System.nanoTime() - since) * NANO;
    }

    /** Shows progress and keeps the times of pages. */
    private final class PageClock implements Progress {

        private final Path file;
        private final double open;
        private final List<SheetTiming> pages = new ArrayList<>();
        private long lastPage = System.nanoTime();

        PageClock(Path file, double open) {
            this.file = file;
            this.open = open;
        }

        @Override
        public void pageRead(int page, double draw, double read) {
            pages.add(new SheetTiming(file.toString(), page, pages.isEmpty() ? open : 0, draw, read));
        }

        @Override
        public void pagesDone(int done, int total) {
            console.progress(file.getFileName() + ": reading page " + done + " of " + total);
            lastPage = System.nanoTime();
        }

        /** Joining the pages is told of the last. */
        void stop() {
            SheetTiming last = pages.remove(pages.size() - 1);
            pages.add(new SheetTiming(last.file(), last.page(), last.open(), last.draw(),
                    last.recognise() + seconds(lastPage)));
            timings.addAll(pages);
        }
    }
}
