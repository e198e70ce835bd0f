// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.Problem;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code job}: stands for its three verbs. */
@Command(name = "job", synopsisSubcommandLabel = "VERB", description =
        "Make a job, show it, check its file. A job is one file that holds the sheets unchanged, what is connected on"
                + " them, and everything you find; every change is safe on disk when the command ends.")
public final class JobCommand extends Verb {

    @Spec
    private CommandSpec spec;

    public JobCommand(Console console) {
        super(console);
    }

    @Spec
    void addVerbs(CommandSpec own) {
        own.addSubcommand("new", new CommandLine(new JobNewCommand(console())));
        own.addSubcommand("show", new CommandLine(new JobShowCommand(console())));
        own.addSubcommand("check", new CommandLine(new JobCheckCommand(console())));
    }

    @Override
    ExitCode run() {
        throw Problem.usage("job needs one of new, show, check; " + spec.qualifiedName() + " --help shows how");
    }
}
