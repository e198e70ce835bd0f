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

/** {@code undo}: undo the last change of a job. */
@Command(name = "undo", description = "Undo the last change of a job. It says what was undone.")
public final class UndoCommand extends Verb {

    @Parameters(paramLabel = "FILE", description = "The job.")
    private Path file;

    public UndoCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        try (Job job = Job.open(file)) {
            Optional<String> what = job.undo();
            say(what.map(words -> "Undid: " + words + ".").orElse("There is nothing to undo."));
        }
        return ExitCode.DONE;
    }
}
