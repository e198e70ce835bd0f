// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import org.probeleaf.waveform.Shapes;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;
import org.probeleaf.waveform.measure.WaveMeasurer;

class ComparerTest {

    private static Comparison compare(Channel channel, Channel reference) {
        WaveMeasurer m = WaveMeasurer.standard();
        return Comparer.compare(channel, m.measure(channel), reference, m.measure(reference), Tolerance.usual());
    }

    private static double clock(double t) {
        return 0.2 + 3.2 * Shapes.trapezoid(t, 0.05, 0.45, 0.05, 1);
    }

    /** A burst that happens once, so that there is one right shift only. */
    private static double once(double t) {
        return t < 4 || t > 9 ? 0.2 : t < 6.5 ? clock(t) : clock(1.7 * t);
    }

    private static Channel wave(DoubleUnaryOperator of) {
        return Shapes.sampled(of, 0, 0.01, 2000);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-2.5, -0.37, 0, 0.02, 1.33, 3.1})
    void lateCapture_isMovedOntoTheReference(double late) {
        Comparison c = compare(Shapes.noisy(wave(t -> once(t - late)), 0.01, 5), wave(ComparerTest::once));
        assertEquals(late, c.shift(), 0.0101);
        assertTrue(c.same(), c.toString());
        assertEquals(1, c.gain(), 0.02);
        assertTrue(c.correlation() > 0.98, c.toString());
    }

    @Test
    void clock_isMovedByLessThanAPeriod() {
        Comparison c = compare(wave(t -> clock(t - 7.3)), wave(ComparerTest::clock));
        assertTrue(Math.abs(c.shift()) <= 0.5, c.toString());
        assertTrue(c.same(), c.toString());
    }

    @Test
    void weakerCapture_differsByItsGain() {
        Comparison c = compare(wave(t -> 0.1 + 0.6 * clock(t)), wave(ComparerTest::clock));
        assertFalse(c.same());
        assertEquals(0.6, c.gain(), 0.01);
        assertEquals(0.1, c.offset(), 0.02);
        assertEquals(0, c.scaledRms(), 1e-6);
        assertTrue(c.reasons().toString().contains("Its amplitude is 1.92 V, that of the reference 3.2 V."), c.toString());
    }

    @Test
    void missingPulse_differsInShape() {
        Comparison c = compare(wave(t -> Math.floor(t) == 7 ? 0.2 : clock(t)), wave(ComparerTest::clock));
        assertFalse(c.same(), c.toString());
        assertEquals(0.025, c.outside(), 0.005);
    }

    /** It is 3.2 s late and counts from 100 s; what lies between 7 and 8 s is missing, of which 7.3 s is a high. */
    @Test
    void overlay_ofALateCapture_saysWhereItLiesAndWhereItIsOutside() {
        double[] volts = wave(t -> Math.floor(t - 3.2) == 7 ? 0.2 : once(t - 3.2)).samples().toArray();
        Channel late = Channel.of("A", "V", new TimeBase.Uniform(100, 0.01, volts.length), Samples.of(volts));
        Overlay o = compare(late, wave(ComparerTest::once)).overlay();
        assertEquals(103.2, o.laid(), 0.0101);
        assertFalse(o.outside().isEmpty());
        for (Overlay.Stretch s : o.outside()) {
            assertTrue(s.from() >= 110.19 && s.to() <= 111.21 && s.to() >= s.from(), s.toString());
        }
        Channel d = o.difference();
        assertEquals(-3.2, d.samples().get(d.times().indexAt(110.5)), 1e-6);
        assertEquals(0, d.samples().get(d.times().indexAt(109)), 1e-6);
        assertEquals(0, d.samples().get(d.times().indexAt(112)), 1e-6);
    }

    @Test
    void otherFrequency_isNamed() {
        Comparison c = compare(wave(t -> clock(1.2 * t)), wave(ComparerTest::clock));
        assertFalse(c.same());
        assertTrue(c.reasons().toString().contains("Its frequency is 1.2 Hz, that of the reference 1 Hz."), c.toString());
    }

    @Test
    void stuckCapture_isSaidToStay() {
        Comparison c = compare(wave(t -> 0.3), wave(ComparerTest::clock));
        assertFalse(c.same());
        assertTrue(c.reasons().toString().contains("It stays at one level where the reference moves."), c.toString());
    }

    @Test
    void railLevels_areHeldAgainstEachOther() {
        assertTrue(compare(wave(t -> 5.05), wave(t -> 5)).same());
        assertFalse(compare(wave(t -> 4.2), wave(t -> 5)).same());
    }

    @Test
    void otherSampling_isTheSame() {
        Channel coarse = Shapes.sampled(ComparerTest::once, 0, 0.023, 860);
        assertTrue(compare(coarse, wave(ComparerTest::once)).same());
    }
}
