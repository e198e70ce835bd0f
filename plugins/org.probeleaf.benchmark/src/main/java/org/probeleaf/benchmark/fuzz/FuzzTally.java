// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.fuzz;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Counts what became of damaged files, and keeps those that fail. */
final class FuzzTally implements FuzzWorker.Listener {

    /** How many of the slowest files are told. */
    private static final int SLOWEST = 10;

    private final Mutator mutator;
    private final long seed;
    private final Path keep;
    private final PrintWriter err;
    private final Map<Outcome.Kind, Integer> counts = new EnumMap<>(Outcome.Kind.class);
    private final List<String> failures = new ArrayList<>();
    private final List<Time> times = new ArrayList<>();

    private record Time(int number, double seconds) {

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%d (%.1f s)", number, seconds);
        }
    }

    /**
     * @param keep folder for the files that fail, or null
     * @param err  told of each file that fails as soon as it does
     */
    FuzzTally(Mutator mutator, long seed, Path keep, PrintWriter err) {
        this.mutator = mutator;
        this.seed = seed;
        this.keep = keep;
        this.err = err;
    }

    @Override
    public synchronized void heard(int number, Outcome outcome, double seconds) {
        counts.merge(outcome.kind(), 1, Integer::sum);
        times.add(new Time(number, seconds));
        if (outcome.good()) {
            return;
        }
        Mutator.Mutant mutant = mutator.mutant(number);
        String line = String.format("%6d %s (%s) %s", number, outcome.kind(), mutant.how(), outcome.detail());
        failures.add(line);
        err.println(line);
        if (keep != null) {
            try {
                Files.createDirectories(keep);
                Files.write(keep.resolve(seed + "-" + number + ".pdf"), mutant.bytes());
            } catch (IOException e) {
                err.println("cannot keep it: " + e.getMessage());
            }
        }
    }

    /** Whether every file was read or clearly refused. */
    boolean isGood() {
        return failures.isEmpty();
    }

    /** @param took how long all of it took, in seconds */
    void print(PrintWriter print, long took) {
        failures.stream().sorted().forEach(print::println);
        times.sort(Comparator.comparingDouble(Time::seconds).reversed());
        print.println("slowest: " + times.stream().limit(SLOWEST).map(Time::toString).collect(Collectors.joining(", ")));
        print.printf("%d files of seed %d in %d s:", times.size(), seed, took);
        for (Outcome.Kind kind : Outcome.Kind.values()) {
            print.printf(" %d %s%s", counts.getOrDefault(kind, 0), kind.name().toLowerCase(Locale.ROOT)
                    .replace('_', ' '), kind == Outcome.Kind.DIED ? "\n" : ",");
        }
        print.flush();
    }
}
