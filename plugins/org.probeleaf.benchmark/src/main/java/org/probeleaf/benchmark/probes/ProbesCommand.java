// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.probes;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.Callable;

import org.probeleaf.diagnosis.Diagnosis;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.schematic.partbook.PartBook;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Hunts faults in made networks and tells how many probes they took. */
@Command(name = "probes", mixinStandardHelpOptions = true, description = {
    "Puts single stuck pins into made networks of gates, shows the outputs to the diagnosis, and probes where it says"
            + " until one suspect is left, or some that probing cannot tell apart."})
public final class ProbesCommand implements Callable<Integer> {

    /** Against log2 of the number of classes of faults that agree with the outputs. */
    private static final double MOST_OF_BOUND = 1.25;
    private static final double MOST_OF_BACKWARD = 0.5;

    @Option(names = "--gates", paramLabel = "N", split = ",", defaultValue = "20,50,100,150,200",
            description = "Sizes of the networks. Default: ${DEFAULT-VALUE}.")
    private List<Integer> sizes;

    @Option(names = "--faults", paramLabel = "N", defaultValue = "500",
            description = "How many faults in all. Default: ${DEFAULT-VALUE}.")
    private int faults;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", description = "Makes other networks and faults.")
    private long seed;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter print = spec.commandLine().getOut();
        print.printf("%6s %7s %8s %8s %7s %9s %7s %8s %7s %8s%n", "gates", "faults", "classes", "log2", "probes", "backward",
                "found", "settled", "mean", "longest");
        List<Hunt> all = new ArrayList<>();
        for (int gates : sizes) {
            List<Hunt> hunts = hunts(gates, faults / sizes.size());
            row(print, String.valueOf(gates), hunts);
            print.flush();
            all.addAll(hunts);
        }
        row(print, "all", all);
        double probes = mean(all, h -> h.probes());
        double bound = mean(all, h -> Math.log(h.classes()) / Math.log(2));
        double backward = mean(all, h -> h.backward());
        print.printf(Locale.ROOT, "probes over the bound %.2f, goal %.2f; over going backward %.2f, goal %.2f%n",
                probes / bound, MOST_OF_BOUND, probes / backward, MOST_OF_BACKWARD);
        print.flush();
        boolean good = probes <= MOST_OF_BOUND * bound && probes <= MOST_OF_BACKWARD * backward
                && all.stream().allMatch(h -> h.found() && h.settled());
        return good ? 0 : 1;
    }

    /** Five faults in each network, then another network. */
    private List<Hunt> hunts(int gates, int count) {
        List<Hunt> hunts = new ArrayList<>();
        Random random = new Random(seed * 1000 + gates);
        while (hunts.size() < count) {
            GateNetwork network = GateNetwork.made(Math.max(8, gates / 4), gates, random.nextLong());
            Diagnosis sound = Diagnosis.of(network.board(), PartBook.standard(), Priors.standard());
            for (int i = 0; i < 5 && hunts.size() < count; i++) {
                Hunt hunt = Hunt.of(network, sound, random);
                if (hunt != null) {
                    hunts.add(hunt);
                }
            }
        }
        return hunts;
    }

    private static void row(PrintWriter print, String name, List<Hunt> hunts) {
        print.printf(Locale.ROOT, "%6s %7d %8.1f %8.2f %7.2f %9.2f %6.1f%% %7.1f%% %4.0f ms %5.0f ms%n", name, hunts.size(),
                mean(hunts, h -> h.classes()), mean(hunts, h -> Math.log(h.classes()) / Math.log(2)),
                mean(hunts, h -> h.probes()), mean(hunts, h -> h.backward()),
                100 * mean(hunts, h -> h.found() ? 1 : 0),
                100 * mean(hunts, h -> h.settled() ? 1 : 0), 1000 * mean(hunts, Hunt::mean),
                1000 * hunts.stream().mapToDouble(Hunt::longest).max().orElse(0));
    }

    private static double mean(List<Hunt> hunts, java.util.function.ToDoubleFunction<Hunt> what) {
        return hunts.stream().mapToDouble(what).average().orElse(0);
    }
}
