// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.trace;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;

import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Takes the time of the signal network with the microbenchmark harness of OpenJDK. */
@Command(name = "trace", mixinStandardHelpOptions = true,
        description = "Takes the time of building and asking the signal network of a made netlist of 3000 parts.")
public final class TraceCommand implements Callable<Integer> {

    /** The most that a measurement may take, in milliseconds. */
    private static final Map<String, Double> BOUNDS = Map.of("buildNetwork", 200.0, "traceLargestNet", 5.0, "allLoads", 5.0,
            "followLargest", 5.0);

    @Option(names = "--short", description = "One short turn of each, to see that it runs; its figures are worth little.")
    private boolean quick;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws RunnerException {
        PrintWriter print = spec.commandLine().getOut();
        print.println(new TraceBenchmarks().what());
        print.flush();
        ChainedOptionsBuilder options = new OptionsBuilder().include(TraceBenchmarks.class.getName()).shouldFailOnError(true)
                .verbosity(VerboseMode.SILENT);
        if (quick) {
            options.warmupIterations(1).measurementIterations(1).warmupTime(TimeValue.milliseconds(100))
                    .measurementTime(TimeValue.milliseconds(100)).forks(0);
        }
        boolean within = true;
        for (RunResult run : new Runner(options.build()).run()) {
            String name = run.getPrimaryResult().getLabel();
            Result<?> result = run.getPrimaryResult();
            Double bound = BOUNDS.get(name);
            boolean fits = bound == null || result.getScore() <= bound;
            within &= fits;
            print.printf(Locale.ROOT, "%-28s %9.4f %s%s%s%n", name, result.getScore(), result.getScoreUnit(),
                    Double.isNaN(result.getScoreError()) ? "" : String.format(Locale.ROOT, " +- %.4f", result.getScoreError()),
                    bound == null ? "" : String.format(Locale.ROOT, ", at most %.0f%s", bound, fits ? "" : ": TOO SLOW"));
        }
        print.flush();
        return within ? 0 : 1;
    }
}
