// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The command line without a verb. */
@Command(name = "probeleaf", synopsisSubcommandLabel = "VERB", description = {
    "From a schematic to a mended board: reads a sheet, traces its nets, keeps what you measure on the board in a job,"
            + " and marks up the sheet for the customer.", ""},
    commandListHeading = "%nVerbs:%n",
    footer = {"", "A place on a drawing is written IC4.21 (a pin), IC4 (a part), net:/RD (a net), 1@120.5,300 (a spot"
            + " on a page).", "Try probeleaf demo, or probeleaf VERB --help.", "",
        "Exit codes: 0 done, 1 failed, 2 wrong command line, 3 an input cannot be read, 4 a job is held or damaged."})
public final class RootCommand extends Verb {

    @Option(names = {"-V", "--version"}, description = "Print the version.")
    private boolean version;

    @Spec
    private CommandSpec spec;

    public RootCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() {
        if (version) {
            String v = RootCommand.class.getPackage().getImplementationVersion();
            say("Probeleaf " + (v == null ? System.getProperty("probeleaf.version", "(unpackaged)") : v));
            return ExitCode.DONE;
        }
        CommandLine.usage(spec.commandLine(), console().err(), CommandLine.Help.Ansi.OFF);
        return ExitCode.USAGE;
    }
}
