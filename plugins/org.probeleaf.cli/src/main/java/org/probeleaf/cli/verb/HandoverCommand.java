// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JobFiles;
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.job.Job;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code handover}: writes what the customer gets. */
@Command(name = "handover", description = {"Write the marked-up sheets of a job: the original pages, untouched, with"
        + " labels, notes and readings on top as annotations that every PDF reader shows.", "",
    "This version writes the sheets only; say --sheet-only."})
public final class HandoverCommand extends Verb {

    @Parameters(paramLabel = "FILE", description = "The job.")
    private Path file;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "The folder to write to.")
    private Path out;

    @Option(names = "--sheet-only", description = "Write the marked-up sheets and nothing else.")
    private boolean sheetOnly;

    @Option(names = "--json", paramLabel = "FILE", description = "Write the answer as JSON (- for standard output).")
    private String json;

    public HandoverCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        if (!sheetOnly) {
            throw Problem.usage("this version writes the marked-up sheets but no report yet; add --sheet-only");
        }
        List<Path> files;
        try (Job job = Job.openToRead(file)) {
            files = JobFiles.handOver(job, out, Instant.now());
        }
        if (json != null) {
            JsonTarget.object(console(), json, answer -> {
                answer.writeArrayFieldStart("files");
                for (Path written : files) {
                    answer.writeString(written.toString());
                }
                answer.writeEndArray();
                answer.writeArrayFieldStart("open_changes");
                answer.writeEndArray();
            });
        } else {
            files.forEach(written -> say("Wrote " + written + "."));
        }
        return ExitCode.DONE;
    }
}
