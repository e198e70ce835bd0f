// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.observation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.diagnosis.Seen;
import org.probeleaf.job.ExampleJobCase;
import org.probeleaf.job.change.OverruleReading;
import org.probeleaf.job.change.PutBack;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;

/** Readings on the example, whose netlist its generator wrote. */
class EpisodeTest extends ExampleJobCase {

    private List<Episode> episodes() {
        return Episode.of(job.state(), PartBook.standard());
    }

    /** Levels of the 74LS series as in its data sheets: low up to 0.8 V, high from 2.0 V. */
    @ParameterizedTest
    @CsvSource(nullValues = "-", value = {
        "L,            -,       LOW",
        "H,            -,       HIGH",
        "0.2V,         74LS,    LOW",
        "3.4V,         74LS,    HIGH",
        "1.4V,         74LS,    BAD",
        "0.7V,         74LS,    LOW",
        "bad,          -,       BAD",
        "good,         74LS,    GOOD",
        "3.4V bad,     74LS,    BAD",
        "5.02V,        5V±5%,   GOOD",
        "4.1V,         5V±5%,   BAD",
        "0.1V,         -,       LOW",
        "3.9V,         -,       HIGH",
        "0.1-0.4V,     -,       LOW",
        "0.2-1.4V,     74LS,    BAD",
        "dead,         pulsing, BAD"})
    void of_aReading_saysWhatItSees(String typed, String expected, Seen seen) throws IOException {
        read("IC5.8", typed, expected);
        assertEquals(List.of(seen), episodes().get(0).seen().stream().map(o -> o.seen()).toList());
        assertEquals("IC5.8", episodes().get(0).seen().get(0).at().text());
    }

    /** A reading judged bad: the person's word counts in its place, and so does that it is taken back. */
    @ParameterizedTest
    @CsvSource(nullValues = "-", value = {"GOOD, GOOD", "BAD, BAD", "UNSURE, -", "-, BAD"})
    void of_anOverruledReading_isTheWordOfThePerson(Outcome word, Seen seen) throws IOException {
        read("IC5.8", "4.1V", "5V\u00b15%");
        String id = job.state().readings().get(0).id();
        job.apply(new OverruleReading(id, word, "the adaptor sags", later()));
        assertEquals(seen == null ? List.of() : List.of(seen), episodes().get(0).seen().stream().map(o -> o.seen()).toList());
        job.undo();
        assertEquals(List.of(Seen.BAD), episodes().get(0).seen().stream().map(o -> o.seen()).toList());
    }

    @ParameterizedTest
    @CsvSource({"1.4V", "4MHz", "3k3", "9V", "0.6 diode", "0.2-3.4V", "pulsing", "ESR 0.3", "1% duty"})
    void of_aReadingThatSaysNothing_isNothing(String typed) throws IOException {
        read("IC5.8", typed, null);
        assertEquals(List.of(), episodes().get(0).seen());
    }

    @Test
    void of_readingsBeforeAndAfterALift_belongToTwoBoards() throws IOException {
        read("IC1.21", "bad", null);
        KeptBoardChange lift = change(new BoardChange.Lift(new Place.OfPin("IC5", "9")), true);
        assertEquals(2, episodes().size());
        assertEquals(List.of(), episodes().get(1).seen());
        read("IC1.21", "good", null);
        List<Episode> two = episodes();
        assertEquals(List.of(Seen.BAD), two.get(0).seen().stream().map(o -> o.seen()).toList());
        assertFalse(two.get(0).board().isLifted("IC5", "9"));
        assertEquals(List.of(Seen.GOOD), two.get(1).seen().stream().map(o -> o.seen()).toList());
        assertSame(job.state().boards().thisBoard(), two.get(1).board());
        job.apply(new PutBack(lift.id(), later()));
        List<Episode> back = episodes();
        assertEquals(2, back.size());
        assertTrue(back.get(0).board().isLifted("IC5", "9"));
        assertEquals(List.of(Seen.BAD), back.get(1).seen().stream().map(o -> o.seen()).toList());
    }

    @Test
    void of_readingsBeforeSomethingDoneForGood_areVoid() throws IOException {
        read("IC1.21", "bad", null);
        change(new BoardChange.Replace("IC5", null), false);
        assertEquals(1, episodes().size());
        assertEquals(List.of(), episodes().get(0).seen());
        read("IC1.21", "good", null);
        assertEquals(List.of(Seen.GOOD), episodes().get(0).seen().stream().map(o -> o.seen()).toList());
        job.undo();
        job.undo();
        assertEquals(List.of(Seen.BAD), episodes().get(0).seen().stream().map(o -> o.seen()).toList());
    }
}
