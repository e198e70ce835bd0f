// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.schematic.quantity.QuantityKind;

/** Values that do not stand still, and signals that move or do not. */
class UnsteadyReadingTest {

    private static ReadingMark read(String typed, String expected) {
        return ReadingMark.of(Place.parse("IC1.3"), new Anchor(1, new Point(10, 10)), typed, "",
                expected == null ? null : Expectation.parse(expected), Instant.EPOCH);
    }

    @Test
    void of_twoEnds_halfWayWithBothShown() {
        ReadingMark mark = read("4.7-5.1V hunting @ warm [DMM]", null);
        assertEquals(4.9, mark.value().value(), 1e-12);
        assertEquals(QuantityKind.VOLTAGE_DC, mark.value().kind());
        assertEquals("4.7 V to 5.1 V", mark.shown());
        assertEquals("hunting", mark.remark());
        assertEquals("warm", mark.circumstances().conditions());
        assertEquals(QuantityKind.VOLTAGE_DC, read("4.7-5.1", "5V+-5%").span().orElseThrow().low().kind());
        assertTrue(read("5.1V", null).span().isEmpty());
    }

    /** 5 V of 74LS: VIL 0.8 V, VIH 2.0 V, VOL 0.5 V, VOH 2.7 V (the levels that LogicFamily carries). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "4.8-5.2V|5V+-5%|GOOD",
        "4.7-5.1V|5V+-5%|BAD",
        "4.0-4.5V|5V+-5%|BAD",
        "4.5-5.5V|4.75V..5.25V|BAD",
        "0.2-3.4V|74LS|GOOD",
        "0.2-1.4V|74LS|BAD",
        "0.6-3.4V|74LS|UNSURE",
        "48-52|50Hz+-5%|GOOD"})
    void judge_twoEnds_bothMustBeAsTheyShould(String typed, String expected, Outcome outcome) {
        assertEquals(outcome, read(typed, expected).verdict().outcome());
    }

    @Test
    void judge_twoEnds_reasonNamesTheWorseOne() {
        assertEquals("4.7 V is below 4.75 V", read("4.7-5.1V", "5V+-5%").verdict().reason());
        assertEquals("4.5 V is below 4.75 V, 5.5 V is above 5.25 V", read("4.5-5.5V", "5V+-5%").verdict().reason());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "pulsing|pulsing|GOOD|pulsing as expected",
        "H|toggling|BAD|steady high, where pulsing is expected",
        "dead|pulsing|BAD|no signal, where pulsing is expected",
        "L|no signal|GOOD|steady low, no signal as expected",
        "toggling|74LS|GOOD|pulsing between valid states",
        "0.6 diode|0.6V diode drop+-20%|GOOD|600 mV diode drop is within 0.6V diode drop\u00b120%",
        "ESR 0.8|ESR 0..ESR 0.5|BAD|800 mΩ ESR is above 500 mΩ ESR",
        "0.6 diode|5V+-5%|UNSURE|a DC voltage is expected, 600 mV diode drop is a diode drop",
        "230.0V AC|230V AC+-10%|GOOD|230 V AC is within 230V AC\u00b110%",
        "50Hz|49Hz..51Hz|GOOD|50 Hz is within 49Hz..51Hz",
        "3k2|3k3+-5%|GOOD|3.2 kΩ is within 3k3\u00b15%",
        "OL|short|BAD|open, where joined is expected"})
    void judge_statesAndTests_inWords(String typed, String expected, Outcome outcome, String reason) {
        ReadingMark mark = read(typed, expected);
        assertEquals(reason, mark.verdict().reason());
        assertEquals(outcome, mark.verdict().outcome());
    }
}
