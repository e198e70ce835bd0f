// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.pan;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Moves the plot of a long capture along on the screen and counts the frames. Names no class of the window's libraries. */
@Command(name = "pan", mixinStandardHelpOptions = true, description = {
    "Moves the window's plot of a made capture along from its beginning to its end, at several zooms, by itself and laid on a"
            + " reference with its tolerance, and counts the frames that are painted. Needs a display."})
public final class PanCommand implements Callable<Integer> {

    private static final double GOAL = 30;

    @Option(names = "--samples", paramLabel = "N", defaultValue = "10000000",
            description = "How many there are. Default: ${DEFAULT-VALUE}.")
    private int samples;

    @Option(names = "--frames", paramLabel = "N", defaultValue = "300",
            description = "Frames at each zoom. Default: ${DEFAULT-VALUE}.")
    private int frames;

    @Option(names = "--width", paramLabel = "PIXELS", defaultValue = "1200",
            description = "Of the plot. Default: ${DEFAULT-VALUE}.")
    private int width;

    @Option(names = "--height", paramLabel = "PIXELS", defaultValue = "400",
            description = "Of the plot. Default: ${DEFAULT-VALUE}.")
    private int height;

    @Spec
    private CommandSpec spec;

    /**
     * What was seen at one zoom.
     *
     * @param what    what was in the plot
     * @param inSight how many samples were in sight
     * @param rate    frames a second, on the average
     * @param slow    95 of 100 frames took no longer, in milliseconds
     * @param slowest the longest that one took, in milliseconds
     */
    record Seen(String what, long inSight, double rate, double slow, double slowest) {
    }

    @Override
    public Integer call() {
        PrintWriter print = spec.commandLine().getOut();
        List<Seen> all = new PanRun(samples, frames, width, height).run();
        print.printf(Locale.ROOT, "%d samples, plot of %d by %d pixels, %d frames each%n", samples, width, height, frames);
        print.printf("%-32s %12s %12s %14s %10s%n", "in the plot", "in sight", "frames/s", "95 of 100, ms", "longest");
        boolean good = true;
        for (Seen s : all) {
            print.printf(Locale.ROOT, "%-32s %12d %12.0f %14.1f %10.1f%n", s.what(), s.inSight(), s.rate(), s.slow(),
                    s.slowest());
            good &= s.rate() >= GOAL && s.slow() <= 1000 / GOAL;
        }
        print.printf(Locale.ROOT, "the goal is %.0f frames a second at least, for 95 of 100 frames too%n", GOAL);
        print.flush();
        return good ? 0 : 1;
    }
}
