// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;

import org.probeleaf.cli.answer.HistoryText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.cli.io.PartBooks;
import org.probeleaf.job.Job;
import org.probeleaf.job.history.PlaceHistory;
import org.probeleaf.schematic.place.Place;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code history}: what was read at a place over time. */
@Command(name = "history", description = "Tell what was read at a place, in order of time, and what was done to the board"
        + " between. What was read anywhere on the same net counts.")
public final class HistoryCommand extends Verb {

    @Parameters(index = "0", paramLabel = "FILE", description = "The job.")
    private Path file;

    @Parameters(index = "1", paramLabel = "AT", description =
            "The place: IC4.21, IC4, net:/RD or 1@120.5,300 (page, points from the left and the top).")
    private String at;

    @Option(names = "--json", paramLabel = "OUT", description = "Write the answer as JSON (- for standard output).")
    private String json;

    public HistoryCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        Place place = place(at);
        PlaceHistory history;
        try (Job job = Job.openToRead(file)) {
            history = PlaceHistory.of(job.state(), place, PartBooks.book(console()));
        }
        if (json != null) {
            JsonTarget.object(console(), json, out -> HistoryText.json(out, place, history));
        } else {
            HistoryText.write(console().out(), place, history);
        }
        return ExitCode.DONE;
    }
}
