// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;

import org.probeleaf.cli.answer.JobJson;
import org.probeleaf.cli.answer.JobText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobState;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code job show}: what a job holds. */
@Command(name = "show", description = "Show what a job holds: its head, sheets, labels, notes, readings and log.")
public final class JobShowCommand extends Verb {

    @Parameters(paramLabel = "FILE", description = "The job.")
    private Path file;

    @Option(names = "--json", paramLabel = "OUT", description = "Write the answer as JSON (- for standard output).")
    private String json;

    public JobShowCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        try (Job job = Job.openToRead(file)) {
            JobState state = job.state();
            if (json != null) {
                JsonTarget.object(console(), json, out -> JobJson.write(out, file, state));
            } else {
                JobText.write(console().out(), state);
            }
        }
        return ExitCode.DONE;
    }
}
