// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import org.probeleaf.waveform.Shapes;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;

class SpectrumTest {

    /** A sine of 2 V peak is 1.41421 V RMS wherever it lies between the lines. */
    @ParameterizedTest
    @ValueSource(doubles = {100, 100.3, 100.5, 117.77, 250.123})
    void sine_readsRight(double hertz) {
        Spectrum s = Spectrum.of(Shapes.sampled(t -> 1 + 2 * Math.sin(2 * Math.PI * hertz * t), 0.001, 1024));
        Spectrum.Peak peak = s.peaks(1).get(0);
        assertEquals(hertz, peak.hertz(), 0.01);
        assertEquals(Math.sqrt(2), peak.rms(), 0.002);
        assertEquals("Hann", s.window());
    }

    /** The harmonics of a square wave fall as 1, 1/3, 1/5 (Fourier series). */
    @Test
    void square_hasOddHarmonics() {
        Spectrum s = Spectrum.of(Shapes.sampled(t -> (t * 64 / 4096) % 1 < 0.5 ? 1 : -1, 1, 4096));
        double first = s.peaks(1).get(0).rms();
        assertEquals(4 / Math.PI / Math.sqrt(2), first, 0.005);
        assertEquals(first / 3, s.peaks(2).get(1).rms(), 0.005);
        assertEquals(first / 5, s.peaks(3).get(2).rms(), 0.005);
    }

    @Test
    void unevenOrShort_hasNoneAndSaysWhy() {
        Channel uneven = Channel.of("A", "V", new TimeBase.Stamped(new double[] {0, 1, 4}), Samples.of(1, 2, 3));
        assertEquals("its samples are unevenly spaced", Spectrum.of(uneven).reason());
        assertEquals("it has fewer than 16 samples", Spectrum.of(Channel.volts("A", 1, 1, 2, 3)).reason());
    }
}
