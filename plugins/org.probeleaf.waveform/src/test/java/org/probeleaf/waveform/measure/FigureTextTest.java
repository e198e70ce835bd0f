// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FigureTextTest {

    @Test
    void both_figure_valueAndUncertaintyWithPrefixesOfTheirOwn() {
        assertEquals("1.5 V \u00b1 33 mV", FigureText.both(Figure.of(1.5, 0.0333), 3, "V"));
        assertEquals("20 kHz \u00b1 130 Hz", FigureText.both(Figure.of(20e3, 130), 4, "Hz"));
    }

    @Test
    void both_exactFigure_noUncertainty() {
        assertEquals("1.3 V", FigureText.both(Figure.of(1.3, 1e-12), 4, "V"));
    }

    @Test
    void value_whatRoundingLeftOfZero_isZero() {
        assertEquals("0 %", FigureText.value(Figure.of(2.04e-9, 3.3), 4, "%"));
        assertEquals("69.4 %", FigureText.value(Figure.of(0.694, 0.001).times(100), 4, "%"));
        assertEquals("2 nV", FigureText.value(Figure.of(2e-9, 1e-10), 4, "V"));
    }
}
