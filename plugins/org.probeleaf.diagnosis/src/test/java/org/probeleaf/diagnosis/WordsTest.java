// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import org.probeleaf.schematic.place.Place;

/** What people write of a board. */
class WordsTest {

    @ParameterizedTest
    @CsvSource({"IC4.21=bad, IC4.21, BAD", "net:/RD=0, net:/RD, LOW", "net:A=B=1, net:A=B, HIGH",
        "'1@120.5,300=good', '1@120.5,300', GOOD", "IC1.1=H, IC1.1, HIGH"})
    void observation_isRead(String text, String at, Seen seen) {
        Observation o = Observation.parse(text);
        assertEquals(at, o.at().text());
        assertEquals(seen, o.seen());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "IC1", "=bad", "IC1.1=odd", "a b=bad"})
    void observation_wrong_isRefusedInOneSentence(String text) {
        String said = assertThrows(IllegalArgumentException.class, () -> Observation.parse(text)).getMessage();
        assertTrue(said.contains("\""), said);
    }

    @Test
    void given_listIsRead() {
        assertEquals(List.of(new Given(new Place.OfNet("/RD"), false), new Given(new Place.OfNet("A,B"), true),
                new Given(new Place.OfNet("N12"), true), new Given(new Place.OnPage(1, 2, 3), false)),
                Given.parseAll("/RD=0,net:A,B=1,N12=H,1@2,3=0"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "/RD", "/RD=2", "=1", "/RD=good", "A=1,B"})
    void given_wrong_isRefusedInOneSentence(String text) {
        String said = assertThrows(IllegalArgumentException.class, () -> Given.parseAll(text)).getMessage();
        assertTrue(said.contains("NET=0 or NET=1"), said);
    }
}
