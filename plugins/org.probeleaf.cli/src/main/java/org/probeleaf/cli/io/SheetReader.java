// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.recognition.PageFeed;
import org.probeleaf.recognition.Progress;
import org.probeleaf.recognition.Recogniser;
import org.probeleaf.schematic.netlist.Netlist;

/** Recognises a sheet file and takes the time of each page. */
public final class SheetReader {

    private static final double NANO = 1e-9;

    private final Console console;
    private final List<SheetTiming> timings = new ArrayList<>();

    public SheetReader(Console console) {
        this.console = console;
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
            try (PageFeed feed = new PageFeed(wanted.size(), i -> sheet.draw(wanted.get(i)))) {
                PageClock clock = new PageClock(file, wanted.size());
                Netlist netlist = new Recogniser().recognise(sheet.name(), Hash.sha256(sheet.bytes()), feed, clock);
                List<Double> recognise = clock.stop();
                for (int i = 0; i < wanted.size(); i++) {
                    timings.add(new SheetTiming(file.toString(), wanted.get(i), i == 0 ? open : 0,
                            feed.seconds(i), Math.max(0, recognise.get(i) - feed.waited(i))));
                }
                return netlist;
            } catch (PageFeed.Failed e) {
                throw e.sheetException();
            }
        } finally {
            console.progressDone();
        }
    }

    private static double seconds(long since) {
        return (System.nanoTime() - since) * NANO;
    }

    /** Shows progress and splits the time of a recognition over its pages. */
    private final class PageClock implements Progress {

        private final Path file;
        private final int pages;
        private final List<Double> laps = new ArrayList<>();
        private long last = System.nanoTime();

        PageClock(Path file, int pages) {
            this.file = file;
            this.pages = pages;
        }

        @Override
        public synchronized void pagesDone(int done, int total) {
            console.progress(file.getFileName() + ": reading page " + done + " of " + total);
            if (laps.size() < pages) {
                lap();
            }
        }

        synchronized List<Double> stop() {
            double rest = seconds(last);
            while (laps.size() < pages) {
                laps.add(0.0);
            }
            laps.set(pages - 1, laps.get(pages - 1) + rest);
            return laps;
        }

        private void lap() {
            laps.add(seconds(last));
            last = System.nanoTime();
        }
    }
}
