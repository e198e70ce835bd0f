// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.job.Job;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code redo}: redo the change of a job that was undone last. */
@Command(name = "redo", description = "Redo the change of a job that was undone last. It says what was redone.")
public final class RedoCommand extends Verb {

    @Parameters(paramLabel = "FILE", description = "The job.")
    private Path file;

    public RedoCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        try (Job job = Job.open(file)) {
            Optional<String> what = job.redo();
            say(what.map(words -> "Redid: " + words + ".").orElse("There is nothing to redo."));
        }
        return ExitCode.DONE;
    }
}
