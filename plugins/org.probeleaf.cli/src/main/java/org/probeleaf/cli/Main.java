// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.cli.io.Problems;

import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;

/** Runs the verb that a command line names. */
public final class Main {

    private static final int HELP_WIDTH = 100;

    private Main() {
    }

    /** The process: streams are UTF-8, and it ends with the code of {@link #run}. */
    public static void main(String[] args) {
        PrintStream out = stream(FileDescriptor.out);
        PrintStream err = stream(FileDescriptor.err);
        // The PDF library speaks of fonts and the like on its own; what matters comes as an exception.
        System.setProperty("org.apache.commons.logging.Log", "org.apache.commons.logging.impl.NoOpLog");
        int code = run(args, out, err);
        out.flush();
        err.flush();
        System.exit(code);
    }

    /**
     * Runs one command line within a process that goes on.
     *
     * @param args as typed after the program's name
     * @param out  takes the result
     * @param err  takes progress and errors
     * @return the exit code: 0 done, 2 wrong command line, 3 an input cannot be read, 4 a job held or damaged, 1 else
     */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        String home = System.getProperty("probeleaf.home");
        return run(args, new Console(out, err, Boolean.getBoolean("probeleaf.terminal"),
                home == null ? null : Path.of(home), System.getenv()));
    }

    static int run(String[] args, Console console) {
        boolean debug = Arrays.asList(args).contains("--debug");
        CommandLine line;
        try {
            line = Verbs.commandLine(args, console);
        } catch (Problem e) {
            return failed(e, console, debug);
        }
        line.setUsageHelpWidth(HELP_WIDTH);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setOut(new PrintWriter(console.out(), true));
        line.setErr(new PrintWriter(console.err(), true));
        line.setParameterExceptionHandler((e, a) -> wrong(e, console));
        line.setExecutionExceptionHandler((e, l, parsed) -> failed(e, console, debug));
        try {
            return line.execute(args);
        } catch (OutOfMemoryError | StackOverflowError e) {
            return failed(e, console, debug);
        }
    }

    private static int wrong(ParameterException e, Console console) {
        String verb = e.getCommandLine().getCommandSpec().qualifiedName();
        Problems.print(console, Problem.usage(sentence(e.getMessage()) + "; " + verb + " --help shows how"));
        return ExitCode.USAGE.value();
    }

    private static int failed(Throwable e, Console console, boolean debug) {
        Problem problem = Problems.wrapped(e);
        Problems.print(console, problem);
        if (debug) {
            (problem.getCause() == null ? problem : problem.getCause()).printStackTrace(console.err());
        }
        return problem.code().value();
    }

    private static String sentence(String text) {
        return text.replaceAll("[.\\s]+$", "").replaceAll("\\s*\\R\\s*", " ");
    }

    private static PrintStream stream(FileDescriptor fd) {
        return new PrintStream(new BufferedOutputStream(new FileOutputStream(fd), 1 << 13), false,
                StandardCharsets.UTF_8);
    }
}
