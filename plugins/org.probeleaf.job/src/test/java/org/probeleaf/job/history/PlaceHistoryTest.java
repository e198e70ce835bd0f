// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.job.ExampleJobCase;
import org.probeleaf.job.change.PutBack;
import org.probeleaf.job.history.HistoryStep.Done;
import org.probeleaf.job.history.HistoryStep.Read;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;

/** Readings on the example, whose netlist its generator wrote. */
class PlaceHistoryTest extends ExampleJobCase {

    private KeptBoardChange lift(String pin) throws IOException {
        String[] part = pin.split("\\.");
        return change(new BoardChange.Lift(new Place.OfPin(part[0], part[1])), true);
    }

    private List<HistoryStep> history(String place) {
        return PlaceHistory.of(job.state(), Place.parse(place), PartBook.standard()).steps();
    }

    @Test
    void of_beforeAndAfterALift_differenceAndWhatWasDone() throws IOException {
        lift("IC12.1");
        read("IC5.8", "1.3V", null);
        read("IC4.15", "3.0V", null);
        KeptBoardChange lifted = lift("IC8.1");
        read("net:/INP", "0.2V", null);
        job.apply(new PutBack(lifted.id(), later()));
        read("IC5.8", "500kHz", null);
        read("IC5.8", "1.35V", null);
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
        read("IC5.8", "1.3V", null);
        assertEquals(List.of(), history("IC1.6"));
    }

    @Test
    void of_undone_isGone() throws IOException {
        read("IC5.8", "1.3V", null);
        job.undo();
        assertEquals(List.of(), history("IC5.8"));
    }
}
