// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.PartBook;

/** Levels are those of the book: 74LS 0.8 and 2.0 V (data sheet of the 74LS00), 74HC at 4.5 V 1.35 and 3.15 V (74HC00). */
class ThresholdWordsTest {

    private final ThresholdWords words = new ThresholdWords(LevelBook.standard(), PartBook.standard());

    @ParameterizedTest
    @CsvSource({"74LS, 0.8, 2.0", "74ls, 0.8, 2.0", "SN74LS32N, 0.8, 2.0", "74HC@4.5V, 1.35, 3.15", "74HC 4.5V, 1.35, 3.15",
        "74, 0.8, 2.0", "2.0V, 2, 2", "2.0, 2, 2", "800mV, 0.8, 0.8"})
    void parse_readsFamiliesPartsAndVoltages(String text, double low, double high) {
        Thresholds t = words.parse(text).orElseThrow();
        assertEquals(low, t.low(), 1e-12);
        assertEquals(high, t.high(), 1e-12);
    }

    @Test
    void parse_blankOrNothing_isNothing() {
        assertTrue(words.parse("  ").isEmpty());
        assertTrue(words.parse("nothing").isEmpty());
    }

    @ParameterizedTest
    @CsvSource({"CUCKOO, there is no family", "74HC 12V, the levels of 74HC at 12 V are not known", "10mA, there is no family"})
    void parse_whatIsNone_saysSoInOneSentence(String text, String begin) {
        String said = assertThrows(IllegalArgumentException.class, () -> words.parse(text)).getMessage();
        assertTrue(said.startsWith(begin) && !said.contains("\n"), said);
    }
}
