// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.speed;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import org.probeleaf.benchmark.Case;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.recognition.Progress;
import org.probeleaf.recognition.Recogniser;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Takes the time to open and read each page, and beside it the time a public tool takes to draw the same page. */
@Command(name = "speed", mixinStandardHelpOptions = true,
        description = "Times opening and reading each page against mutool drawing it, warm, in one run.")
public final class SpeedCommand implements Callable<Integer> {

    private static final double NANO = 1e-9;
    private static final double GOAL = 1.0;

    @Parameters(index = "0", paramLabel = "CASES", description = "Folder of folders with sheet.pdf and truth.json.")
    private Path cases;

    @Option(names = "--only", paramLabel = "NAME", description = "Only this case; may be given again.")
    private List<String> only = new ArrayList<>();

    @Option(names = "--rounds", paramLabel = "N", defaultValue = "7",
            description = "How often each page is timed; the median counts. Default: ${DEFAULT-VALUE}.")
    private int rounds;

    @Option(names = "--warm", paramLabel = "N", defaultValue = "12",
            description = "How often all pages are read before that. Default: ${DEFAULT-VALUE}.")
    private int warm;

    @Spec
    private CommandSpec spec;

    /** Times of one page, one of ours for one of theirs. */
    private static final class Page {
        final String name;
        final Path file;
        final int number;
        final List<double[]> ours = new ArrayList<>();
        final List<Double> theirs = new ArrayList<>();

        Page(String name, Path file, int number) {
            this.name = name;
            this.file = file;
            this.number = number;
        }
    }

    @Override
    public Integer call() throws IOException {
        PublicTool.check();
        PrintWriter print = spec.commandLine().getOut();
        List<Page> pages = pages();
        for (int i = 0; i < warm; i++) {
            for (Page p : pages) {
                read(p);
            }
        }
        for (int i = 0; i < rounds; i++) {
            for (Page p : pages) {
                p.ours.add(read(p));
                p.theirs.add(PublicTool.draw(p.file, p.number));
            }
        }
        print.printf("%-28s %4s %7s %7s %9s %7s %7s %6s   milliseconds%n", "sheet", "page", "open", "draw", "recognise",
                "total", "mutool", "ratio");
        List<Double> ratios = new ArrayList<>();
        for (Page p : pages) {
            double[] ours = new double[4];
            for (int k = 0; k < ours.length; k++) {
                int column = k;
                ours[k] = Median.of(p.ours.stream().map(t -> t[column]).toList()) * 1e3;
            }
            double theirs = Median.of(p.theirs) * 1e3;
            ratios.add(ours[3] / theirs);
            print.printf(Locale.ROOT, "%-28s %4d %7.1f %7.1f %9.1f %7.1f %7.1f %6.2f%n", p.name, p.number, ours[0],
                    ours[1], ours[2], ours[3], theirs, ours[3] / theirs);
        }
        double median = Median.of(ratios);
        print.printf(Locale.ROOT, "median ratio %.2f over %d pages; the goal is at most %.1f%n", median, pages.size(),
                GOAL);
        print.flush();
        return median <= GOAL ? 0 : 1;
    }

    private List<Page> pages() throws IOException {
        List<Page> pages = new ArrayList<>();
        for (Case c : Case.in(cases, only)) {
            try (SheetFile file = SheetFile.open(c.sheet(), null)) {
                for (int p = 1; p <= file.pageCount(); p++) {
                    pages.add(new Page(c.name(), c.sheet(), p));
                }
            }
        }
        return pages;
    }

    /** Seconds to open, draw, recognise, and all of it. */
    private static double[] read(Page page) throws IOException {
        long start = System.nanoTime();
        try (SheetFile file = SheetFile.open(page.file, null)) {
            long opened = System.nanoTime();
            Drawing drawing = file.draw(page.number);
            long drawn = System.nanoTime();
            new Recogniser().recognise(file.name(), "", List.of(drawing), Progress.NONE);
            long done = System.nanoTime();
            return new double[] {(opened - start) * NANO, (drawn - opened) * NANO, (done - drawn) * NANO,
                (done - start) * NANO};
        }
    }
}
