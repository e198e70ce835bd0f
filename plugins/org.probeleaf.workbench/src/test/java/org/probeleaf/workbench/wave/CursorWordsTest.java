// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.PlotTrace;

class CursorWordsTest {

    private final PlotTrace trace = PlotTrace.of("/RD", Channel.volts("/RD", 1e-6, 0, 2, 4, 2), Ink.TRACE_A);

    private String words(double a, double b) {
        return CursorWords.of(trace, a, b, 1e-8).replaceAll(" +", " ");
    }

    @Test
    void of_bothCursors_tellsEachAndTheirDifference() {
        assertEquals("/RD A 500 ns 1 V B 2.5 \u00b5s 3 V B\u2212A 2 \u00b5s 2 V 1/\u0394t 500 kHz", words(0.5e-6, 2.5e-6));
        assertEquals("/RD A 2.5 \u00b5s 3 V B 500 ns 1 V B\u2212A \u22122 \u00b5s \u22122 V 1/\u0394t 500 kHz", words(2.5e-6, 0.5e-6));
    }

    @Test
    void of_oneCursor_tellsItAlone() {
        assertEquals("/RD B 1 \u00b5s 2 V", words(Double.NaN, 1e-6));
        assertTrue(words(Double.NaN, Double.NaN).startsWith("Click puts cursor A"));
    }

    @Test
    void of_bothAtOnePlace_hasNoRate() {
        assertEquals("/RD A 1 \u00b5s 2 V B 1 \u00b5s 2 V B\u2212A 0 s 0 V", words(1e-6, 1e-6));
    }

    @Test
    void of_aPlaceOutside_tellsTheTimeAlone() {
        assertEquals("/RD A 9 \u00b5s", words(9e-6, Double.NaN));
    }

    /** A second after the trigger, at a nanosecond a pixel: the nanoseconds are told. */
    @Test
    void digits_goDownToAPixel() {
        assertEquals(10, CursorWords.digits(1.234567891, 1e-9 * 1.3));
        assertEquals(4, CursorWords.digits(2e-9, 1e-9));
    }

    @Test
    void value_ofAShiftedTrace_isThatWhereItIsDrawn() {
        assertEquals(2, CursorWords.value(trace.shiftedBy(1e-6), 2e-6), 1e-9);
    }
}
