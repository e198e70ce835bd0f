// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark;

import org.probeleaf.benchmark.fuzz.FuzzCommand;
import org.probeleaf.benchmark.lettering.LetteringCommand;
import org.probeleaf.benchmark.pan.PanCommand;
import org.probeleaf.benchmark.probes.AnswerCommand;
import org.probeleaf.benchmark.probes.ProbesCommand;
import org.probeleaf.benchmark.score.ScoreCommand;
import org.probeleaf.benchmark.speed.GrowthCommand;
import org.probeleaf.benchmark.speed.ImportCommand;
import org.probeleaf.benchmark.speed.SetCommand;
import org.probeleaf.benchmark.speed.SpeedCommand;
import org.probeleaf.benchmark.trace.TraceCommand;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;

/** Runs the measurement that a command line names. */
@Command(name = "benchmark", mixinStandardHelpOptions = true,
        description = "Measures how well sheets are read, how fast, what breaks that, how few probes find a fault, and how"
            + " fast a signal is traced.",
        subcommands = {ScoreCommand.class, SpeedCommand.class, GrowthCommand.class, SetCommand.class, FuzzCommand.class,
            LetteringCommand.class, ProbesCommand.class, AnswerCommand.class, TraceCommand.class, ImportCommand.class, PanCommand.class,
            AllCommand.class})
public final class Main {

    private static final int HELP_WIDTH = 100;

    private Main() {
    }

    /** The process: 0 done, 1 a figure is out of its bounds or a measurement failed, 2 the command line is wrong. */
    public static void main(String[] args) {
        // The PDF library speaks of fonts and the like on its own; what matters comes as an exception.
        System.setProperty("org.apache.commons.logging.Log", "org.apache.commons.logging.impl.NoOpLog");
        CommandLine line = new CommandLine(new Main());
        line.setUsageHelpWidth(HELP_WIDTH);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        System.exit(line.execute(args));
    }
}
