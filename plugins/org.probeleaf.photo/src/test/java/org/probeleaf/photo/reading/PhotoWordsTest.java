// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.probeleaf.photo.graticule.Corners;
import org.probeleaf.photo.graticule.Divisions;
import org.probeleaf.photo.trace.TraceColour;

class PhotoWordsTest {

    @Test
    void of_everySaid_comesBack() {
        PhotoOptions options = PhotoOptions.of(0.5, 2e-5).withDivisions(new Divisions(12, 8))
                .withCorners(Corners.parse("10,20;110,25;105,90;12,88")).withZero(-1.5).withColour(TraceColour.parse("cyan"));
        String line = PhotoWords.of(options);
        assertEquals("photo volts=0.5 seconds=2.0E-5 divisions=12x8 corners=10.0,20.0;110.0,25.0;105.0,90.0;12.0,88.0"
                + " zero=-1.5 colour=#20e0f0", line);
        assertEquals(options, PhotoWords.parse(line));
    }

    @Test
    void of_nothingSaid_isTheFirstWordAlone() {
        assertEquals("photo", PhotoWords.of(PhotoOptions.none()));
        assertFalse(PhotoWords.parse("photo").scaled());
    }

    @Test
    void are_onlyLinesAboutPhotographs() {
        assertTrue(PhotoWords.are("photo volts=1.0"));
        assertFalse(PhotoWords.are("delimiter=; time=1"));
        assertFalse(PhotoWords.are("photographs=1"));
        assertFalse(PhotoWords.are(""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"photo volts=", "photo volts=-1", "photo seconds=0", "photo zero=99", "photo divisions=9",
        "photo corners=1,2", "photo colour=mauve", "photo dots=3", "volts=1"})
    void parse_damaged_oneSentence(String line) {
        String message = assertThrows(IllegalArgumentException.class, () -> PhotoWords.parse(line)).getMessage();
        assertFalse(message.isBlank() || message.contains("\n"), message);
    }
}
