// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.speed;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import org.probeleaf.benchmark.sheet.MadeSheet;
import org.probeleaf.schematic.netlist.Netlist;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Reads one-page sheets of rising size and tells what twice the parts cost. */
@Command(name = "growth", mixinStandardHelpOptions = true,
        description = "Times made sheets of 500, 1000, 2000 and 4000 parts on one page.")
public final class GrowthCommand implements Callable<Integer> {

    private static final double GOAL = 2.3;

    @Option(names = "--parts", paramLabel = "N", split = ",", defaultValue = "500,1000,2000,4000",
            description = "Numbers of parts, each twice the one before. Default: ${DEFAULT-VALUE}.")
    private List<Integer> sizes;

    @Option(names = "--rounds", paramLabel = "N", defaultValue = "7",
            description = "How often each is read; the median counts. Default: ${DEFAULT-VALUE}.")
    private int rounds;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Makes other sheets.")
    private long seed;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter print = spec.commandLine().getOut();
        List<MadeSheet> sheets = new ArrayList<>();
        List<List<Double>> times = new ArrayList<>();
        for (int parts : sizes) {
            sheets.add(MadeSheet.of(parts, 1, seed));
            times.add(new ArrayList<>());
        }
        boolean good = true;
        print.printf("%6s %6s %12s%n", "parts", "nets", "exact nets");
        for (int i = 0; i < sheets.size(); i++) {
            Netlist netlist = MadeReading.read(sheets.get(i).pdf());
            int exact = MadeReading.exact(sheets.get(i), netlist);
            int nets = sheets.get(i).nets().size();
            good &= exact == nets && netlist.parts().size() == sizes.get(i);
            print.printf("%6d %6d %12d%n", netlist.parts().size(), nets, exact);
        }
        // The first rounds only warm up.
        for (int round = -3; round < rounds; round++) {
            for (int i = 0; i < sheets.size(); i++) {
                long start = System.nanoTime();
                MadeReading.read(sheets.get(i).pdf());
                if (round >= 0) {
                    times.get(i).add((System.nanoTime() - start) * 1e-6);
                }
            }
        }
        print.printf("%n%6s %12s %8s%n", "parts", "milliseconds", "factor");
        for (int i = 0; i < sheets.size(); i++) {
            double time = Median.of(times.get(i));
            double factor = i == 0 ? Double.NaN : time / Median.of(times.get(i - 1));
            good &= i == 0 || factor <= GOAL;
            print.printf(Locale.ROOT, "%6d %12.1f %8s%n", sizes.get(i), time,
                    i == 0 ? "" : String.format(Locale.ROOT, "%.2f", factor));
        }
        print.printf(Locale.ROOT, "the goal is a factor of at most %.1f for twice the parts, every net exact%n", GOAL);
        print.flush();
        return good ? 0 : 1;
    }
}
