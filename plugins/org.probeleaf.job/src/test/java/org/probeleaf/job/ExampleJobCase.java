// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.place.Place;

/** A job of the example, whose netlist its generator wrote; what is done to it comes a minute apart. */
public abstract class ExampleJobCase {

    private static final Path EXAMPLE = Path.of("../../examples/tern-tl8");

    @TempDir
    Path folder;

    protected Job job;
    private int minute;

    @BeforeEach
    void open() throws IOException {
        job = Job.create(folder.resolve("t.probeleaf"), List.of(EXAMPLE.resolve("tern-tl8.pdf")), JobDetails.blank());
        try (InputStream in = Files.newInputStream(EXAMPLE.resolve("tern-tl8.json"))) {
            job.setNetlist(NetlistJson.read(in));
        }
    }

    @AfterEach
    void close() {
        job.close();
    }

    /** A minute after the last time it was asked. */
    protected final Instant later() {
        return Instant.parse("2026-03-01T09:00:00Z").plusSeconds(60L * minute++);
    }

    /** Pins a reading; {@code expected} may be null. */
    protected final void read(String place, String text, String expected) throws IOException {
        Place at = Place.parse(place);
        job.apply(new AddReading(ReadingMark.of(at, Anchor.of(at, job.state().netlist()).orElseThrow(), text, "",
                expected == null ? null : Expectation.parse(expected), later())));
    }

    /** Does something to the board on the bench. */
    protected final KeptBoardChange change(BoardChange what, boolean temporary) throws IOException {
        KeptBoardChange kept = KeptBoardChange.of(Board.THIS, what, temporary, "", later());
        job.changeBoard(List.of(kept));
        return kept;
    }
}
