// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.time.Instant;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/** Readings on which the technician has a word of his own. */
class WordOfPersonTest {

    private static ReadingMark reading(String typed, String expected) {
        return ReadingMark.of(new Place.OfPin("IC5", "9"), new Anchor(1, new Point(1, 2)), typed, "",
                expected == null ? null : Expectation.parse(expected), Instant.EPOCH);
    }

    @ParameterizedTest
    @CsvSource(nullValues = "-", value = {
        "bad,                  -,     BAD,  said to be bad",
        "ok,                   -,     GOOD, said to be good",
        "Good,                 5V±5%, GOOD, said to be good",
        "bad no swing,         74LS,  BAD,  said to be bad: no swing",
        "4.9V,                 5V±5%, GOOD, 4.9 V is within 5V±5%",
        "4.9V bad: drops out,  5V±5%, BAD,  said to be bad: drops out (though 4.9 V is within 5V±5%)",
        "4.2V ok,              5V±5%, GOOD, said to be good (though 4.2 V is below 4.75 V)",
        "4.2V bad,             5V±5%, BAD,  said to be bad",
        "4.2V badly regulated, 5V±5%, BAD,  4.2 V is below 4.75 V"})
    void verdict_withAWord_isTheWord(String typed, String expected, String outcome, String reason) {
        ReadingMark mark = reading(typed, expected);
        assertEquals(outcome, mark.verdict().outcome().name());
        assertEquals(reason, mark.verdict().reason());
    }

    @Test
    void verdict_withoutWordAndExpectation_isNone() {
        assertNull(reading("4.9V flat", null).verdict());
        assertNull(reading("4.9V goodness", null).verdict());
        assertEquals("bad", reading("wrong", null).shown());
    }
}
