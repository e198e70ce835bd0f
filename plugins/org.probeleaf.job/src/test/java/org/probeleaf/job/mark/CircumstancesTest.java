// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.job.change.OverruleReading;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class CircumstancesTest {

    private static ReadingMark reading(String typed, String expected) {
        return ReadingMark.of(Place.parse("IC4.21"), new Anchor(1, new Point(1, 2)), typed, "",
                expected == null ? null : Expectation.parse(expected), Instant.EPOCH);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"2.2V flat @ reset held [scope, 10:1]|2.2V flat|reset held|scope, 10:1",
        "2.2V @ 230 V mains|2.2V|230 V mains|''", "5.03 [DMM]|5.03|''|DMM", "5.03|5.03|''|''",
        "12 V @|12 V @|''|''", "3k3@warm|3k3@warm|''|''", "0.61 V @ cold @ no load|0.61 V|cold @ no load|''",
        "H [ ]|H|''|''"})
    void typed_line_isTakenApart(String line, String rest, String conditions, String instrument) {
        Circumstances.Typed read = Circumstances.typed(line);
        assertEquals(rest, read.rest());
        assertEquals(new Circumstances(conditions, instrument), read.circumstances());
    }

    @Property
    void text_anyCircumstances_readBackTheSame(@ForAll("words") String conditions, @ForAll("words") String instrument) {
        Circumstances made = new Circumstances(conditions, instrument);
        Circumstances.Typed read = Circumstances.typed("2.2V flat " + made.text());
        assertEquals("2.2V flat", read.rest());
        assertEquals(made, read.circumstances());
    }

    @Provide
    Arbitrary<String> words() {
        return Arbitraries.strings().withCharRange('a', 'z').withChars(" .,:%/0123456789\u03a9").ofMaxLength(20);
    }

    @Test
    void of_lineWithCircumstances_valueRemarkAndVerdictAreApart() {
        ReadingMark mark = reading("4.2V sagging @ tape running [meter]", "5V\u00b15%");
        assertEquals(4.2, mark.value().value(), 1e-12);
        assertEquals("sagging", mark.remark());
        assertEquals(new Circumstances("tape running", "meter"), mark.circumstances());
        assertEquals(Outcome.BAD, mark.verdict().outcome());
        assertFalse(mark.overruled());
        assertEquals("4.2V sagging @ tape running [meter]", mark.line());
    }

    @Test
    void withWord_overruledAndTakenBack_judgementIsKept() {
        ReadingMark mark = reading("4.2V", "5V\u00b15%");
        ReadingMark good = mark.withWord(Outcome.GOOD, "the adaptor is a 4.2 V one");
        assertTrue(good.overruled());
        assertEquals("said to be good: the adaptor is a 4.2 V one (though 4.2 V is below 4.75 V)", good.verdict().reason());
        assertEquals(mark.judged(), good.judged());
        assertEquals(mark, good.withWord(null, ""));
        assertNull(reading("4.2V", null).withWord(Outcome.BAD, "x").withWord(null, "").verdict());
    }

    @Test
    void overrule_withoutReason_refused() {
        assertThrows(IllegalArgumentException.class, () -> new OverruleReading("a", Outcome.GOOD, "  ", Instant.EPOCH));
    }

    @Test
    void typedAnew_otherValue_sameMarkJudgedAfresh() {
        ReadingMark mark = reading("42V @ warm", "5V\u00b15%").withCard(new Offset(3, 4));
        ReadingMark right = mark.typedAnew("4.9V", "", mark.circumstances(), mark.expectation());
        assertEquals(mark.id(), right.id());
        assertEquals(mark.card(), right.card());
        assertEquals("warm", right.circumstances().conditions());
        assertEquals(Outcome.GOOD, right.verdict().outcome());
    }

    @Test
    void sameInstrument_emptyBrackets_theOneNamedLast() {
        List<ReadingMark> before = List.of(reading("5V [DMM]", null), reading("3V [scope, 10:1]", null), reading("2V", null));
        assertEquals("2.2V flat @ warm [scope, 10:1]", Circumstances.sameInstrument("2.2V flat @ warm []", before));
        assertEquals("2.2V [DMM]", Circumstances.sameInstrument("2.2V [DMM]", before));
        assertEquals("2.2V", Circumstances.sameInstrument("2.2V", before));
        assertThrows(IllegalArgumentException.class, () -> Circumstances.sameInstrument("2.2V []", List.of()));
    }
}
