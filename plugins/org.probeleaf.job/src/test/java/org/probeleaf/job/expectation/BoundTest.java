// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/** Values of which only a limit is known, or that were read roughly. */
class BoundTest {

    private static ReadingMark reading(String typed, String expected) {
        return ReadingMark.of(Place.parse("IC4.21"), new Anchor(1, new Point(1, 2)), typed, "", Expectation.parse(expected),
                Instant.EPOCH);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        ">20M|1k..10k|BAD", ">20M|10M..50M|UNSURE", ">5k|10k..20k|UNSURE", "<1|10..20|BAD", "<1|0..5|UNSURE", "<30|10..20|UNSURE",
        "> 6V|5V\u00b15%|BAD", ">3V|5V\u00b15%|UNSURE", "<4V|5V\u00b15%|BAD", "<0.1V|74LS|GOOD", ">3V|74LS|UNSURE", ">7V|74LS|BAD",
        "~5V|5V\u00b15%|GOOD", "about 4V|5V\u00b15%|BAD", "OL|open|GOOD", "0L|open|GOOD", "0.L|short|BAD"})
    void judge_limit_onlyWhatFollows(String typed, String expected, Outcome outcome) {
        assertEquals(outcome, reading(typed, expected).verdict().outcome(), reading(typed, expected).verdict().reason());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {">20M|1k..10k|> 20 M\u03a9", "<1.0|1V..2V|< 1.0 V", "~2.50V|1V..3V|about 2.50 V",
        "over 9 V|1V..3V|> 9 V", "ca. 3k3|1k..5k|about 3.3 k\u03a9", "2.5V|1V..3V|2.5 V"})
    void shown_signBeforeTheValue_kept(String typed, String expected, String shown) {
        assertEquals(shown, reading(typed, expected.replace("1k..10k", "1kohm..10kohm").replace("1k..5k", "1kohm..5kohm")).shown());
    }
}
