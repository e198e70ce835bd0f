// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.util.concurrent.Callable;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.schematic.place.Place;

import picocli.CommandLine.Option;

/** A verb: options filled in by the parser, then called once. */
abstract class Verb implements Callable<Integer> {

    @Option(names = "--debug", description = "Show where an error came from inside the program.")
    private boolean debug;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this text.")
    private boolean help;

    private final Console console;

    Verb(Console console) {
        this.console = console;
    }

    Console console() {
        return console;
    }

    /** Prints a line of the result. */
    void say(String line) {
        console.out().println(line);
    }

    /** Does the work. */
    abstract ExitCode run() throws Exception;

    @Override
    public final Integer call() throws Exception {
        ExitCode code = run();
        console.out().flush();
        return code.value();
    }

    /** Reads a place from the command line. */
    static Place place(String at) {
        try {
            return Place.parse(at);
        } catch (IllegalArgumentException e) {
            throw Problem.usage(e.getMessage());
        }
    }
}
