// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;

import org.probeleaf.cli.answer.BoardJson;
import org.probeleaf.cli.answer.Words;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JobFiles;
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.job.Job;
import org.probeleaf.job.mark.KeptBoardChange;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code handover}: writes what the customer gets. */
@Command(name = "handover", description = {"Write the marked-up sheets of a job: the original pages, untouched, with"
        + " labels, notes, readings and waveforms on top as annotations that every PDF reader shows; and the waveforms at full"
        + " size with their figures.", "",
    "This version writes no report yet."})
public final class HandoverCommand extends Verb {

    @Parameters(paramLabel = "FILE", description = "The job.")
    private Path file;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "The folder to write to.")
    private Path out;

    @Option(names = "--sheet-only", description = "Write the marked-up sheets and nothing else.")
    private boolean sheetOnly;

    @Option(names = "--accept-open", description = {"Hand over although something done for now has not been put back."})
    private boolean acceptOpen;

    @Option(names = "--json", paramLabel = "FILE", description = "Write the answer as JSON (- for standard output).")
    private String json;

    public HandoverCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        List<Path> files;
        List<KeptBoardChange> open;
        try (Job job = Job.openToRead(file)) {
            open = job.state().boards().open();
            if (!open.isEmpty() && !acceptOpen) {
                answer(List.of(), open);
                throw Problem.other(file + ": " + Words.count(open.size(), "thing") + " done for now "
                        + (open.size() == 1 ? "is" : "are") + " still to be put back (" + open.stream()
                        .map(KeptBoardChange::words).collect(Collectors.joining(", ")) + "); note it with probeleaf"
                        + " putback, or hand over with --accept-open", null);
            }
            files = JobFiles.handOver(job, out, Instant.now(), sheetOnly, console());
        }
        answer(files, open);
        return ExitCode.DONE;
    }

    private void answer(List<Path> files, List<KeptBoardChange> open) throws IOException {
        if (json != null) {
            JsonTarget.object(console(), json, answer -> {
                answer.writeArrayFieldStart("files");
                for (Path written : files) {
                    answer.writeString(written.toString());
                }
                answer.writeEndArray();
                BoardJson.list(answer, "open_changes", open);
            });
        } else {
            files.forEach(written -> say("Wrote " + written + "."));
        }
    }
}
