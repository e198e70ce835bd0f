// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.job.Job;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.change.PutBack;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.history.HistoryStep.Done;
import org.probeleaf.job.history.HistoryStep.Read;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;

/** Readings on the example, whose netlist its generator wrote. */
class PlaceHistoryTest {

    private static final Path EXAMPLE = Path.of("../../examples/tern-tl8");

    @TempDir
    Path folder;

    private Job job;
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

    private Instant later() {
        return Instant.parse("2026-03-01T09:00:00Z").plusSeconds(60L * minute++);
    }

    private void read(String place, String text) throws IOException {
        Place at = Place.parse(place);
        job.apply(new AddReading(ReadingMark.of(at, Anchor.of(at, job.state().netlist()).orElseThrow(), text, "", null,
                later())));
    }

    private KeptBoardChange lift(String pin) throws IOException {
        String[] part = pin.split("\\.");
        KeptBoardChange kept = KeptBoardChange.of(Board.THIS, new BoardChange.Lift(new Place.OfPin(part[0], part[1])), true, "",
                later());
        job.changeBoard(List.of(kept));
        return kept;
    }

    private List<HistoryStep> history(String place) {
        return PlaceHistory.of(job.state(), Place.parse(place), PartBook.standard()).steps();
    }

    @Test
    void of_beforeAndAfterALift_differenceAndWhatWasDone() throws IOException {
        lift("IC12.1");
        read("IC5.8", "1.3V");
        read("IC4.15", "3.0V");
        KeptBoardChange lifted = lift("IC8.1");
        read("net:/INP", "0.2V");
        job.apply(new PutBack(lifted.id(), later()));
        read("IC5.8", "500kHz");
        read("IC5.8", "1.35V");
        List<HistoryStep> steps = history("IC5.8");
        assertEquals(6, steps.size(), steps.toString());
        Read first = assertInstanceOf(Read.class, steps.get(0));
        assertEquals("", first.board());
        assertEquals(Double.NaN, first.change());
        assertEquals("IC8.1 lifted", assertInstanceOf(Done.class, steps.get(1)).words());
        Read second = assertInstanceOf(Read.class, steps.get(2));
        assertEquals(-1.1, second.change(), 1e-12);
        assertEquals("since IC8.1 lifted", second.board());
        assertEquals("IC8.1 lifted: put back", assertInstanceOf(Done.class, steps.get(3)).words());
        assertEquals(Double.NaN, assertInstanceOf(Read.class, steps.get(4)).change());
        Read last = assertInstanceOf(Read.class, steps.get(5));
        assertEquals(1.15, last.change(), 1e-12);
        assertEquals("since IC8.1 lifted: put back", last.board());
    }

    @Test
    void of_placeWithoutReadings_isEmpty() throws IOException {
        read("IC5.8", "1.3V");
        assertEquals(List.of(), history("IC1.6"));
    }

    @Test
    void of_undone_isGone() throws IOException {
        read("IC5.8", "1.3V");
        job.undo();
        assertEquals(List.of(), history("IC5.8"));
    }
}
