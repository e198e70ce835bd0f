// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.probeleaf.cli.answer.BoardText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JobFiles;
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.job.BoardComparison;
import org.probeleaf.job.Boards;
import org.probeleaf.job.Job;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code boards}: the drawing and two boards side by side. */
@Command(name = "boards", description = "Compare the drawing, the board on the bench and a known-good board, part by"
        + " part: only where they are not the same.")
public final class BoardsCommand extends Verb {

    @Parameters(paramLabel = "FILE", description = "The job.")
    private Path file;

    @Option(names = "--json", paramLabel = "OUT", description = "Write the answer as JSON (- for standard output).")
    private String json;

    public BoardsCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        try (Job job = Job.openToRead(file)) {
            Boards boards = job.state().boards().drawn() != null ? job.state().boards()
                    : Boards.of(JobFiles.recognise(job, console()), job.state().boards().kept());
            List<BoardComparison.Row> rows = BoardComparison.of(boards);
            if (json != null) {
                JsonTarget.object(console(), json, out -> {
                    out.writeArrayFieldStart("differences");
                    for (BoardComparison.Row row : rows) {
                        out.writeStartObject();
                        out.writeStringField("what", row.what());
                        out.writeStringField("ref", row.part());
                        out.writeStringField("drawn", row.drawn());
                        out.writeStringField("this", row.thisBoard());
                        out.writeStringField("known_good", row.knownGood());
                        out.writeEndObject();
                    }
                    out.writeEndArray();
                });
            } else {
                BoardText.compared(console().out(), rows);
            }
        }
        return ExitCode.DONE;
    }
}
