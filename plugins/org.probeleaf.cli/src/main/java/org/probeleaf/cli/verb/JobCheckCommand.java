// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobState;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code job check}: whether a job's file is sound. */
@Command(name = "check", description = {"Look a job's file over: its structure, each sheet against its checksum, every"
        + " change replayed.", "", "Ends with 0 where it is sound and with 4 where it is not."})
public final class JobCheckCommand extends Verb {

    @Parameters(paramLabel = "FILE", description = "The job.")
    private Path file;

    public JobCheckCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        try (Job job = Job.openToRead(file)) {
            List<String> wrong = job.check();
            if (!wrong.isEmpty()) {
                wrong.forEach(line -> console().err().println(file + ": " + line));
                return ExitCode.JOB;
            }
            JobState state = job.state();
            say(file + ": sound; " + state.sheets().size() + " sheet file" + (state.sheets().size() == 1 ? "" : "s")
                    + ", " + state.log().size() + " change" + (state.log().size() == 1 ? "" : "s"));
        }
        return ExitCode.DONE;
    }
}
