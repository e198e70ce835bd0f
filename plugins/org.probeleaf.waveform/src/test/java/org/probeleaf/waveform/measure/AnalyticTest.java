// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import org.probeleaf.waveform.Shapes;
import org.probeleaf.waveform.capture.Channel;

/** Waveforms with exact answers: within 0.1 % at 200 samples for a transition, within the stated uncertainty at 10. */
class AnalyticTest {

    private static final double LN9 = Math.log(9);

    private static Measures measure(Channel channel) {
        return WaveMeasurer.standard().measure(channel);
    }

    private static void near(double truth, Figure figure) {
        assertTrue(figure.known(), figure.reason());
        assertEquals(truth, figure.value(), Math.abs(truth) * 1e-3);
    }

    private static void admits(double truth, Figure figure) {
        assertTrue(figure.admits(truth), () -> truth + " is not in " + figure);
    }

    /** A step of V (1 - exp(-t / RC)): 10 to 90 % takes RC ln 9, 20 to 80 % RC ln 4. */
    private static Channel rcStep(int perTransition) {
        double dt = LN9 / perTransition;
        int n = (int) (25 / dt);
        return Shapes.sampled(t -> 5 * Shapes.rc(t, 1), -2 - 0.37 * dt, dt, n);
    }

    @Test
    void rcStep_200Samples_isExact() {
        Measures m = measure(rcStep(200));
        near(LN9, m.rise());
        near(5, m.amplitude());
        near(Math.log(4), WaveMeasurer.standard().from(20).measure(rcStep(200)).rise());
        assertEquals(0, m.overshoot().value(), 0.1);
    }

    @Test
    void rcStep_10Samples_isWithinUncertainty() {
        Measures m = measure(rcStep(10));
        admits(LN9, m.rise());
        admits(5, m.amplitude());
        assertTrue(m.rise().uncertainty() < 0.1 * LN9, m.rise().toString());
    }

    @Test
    void rcStep_falling_isTheSameUpsideDown() {
        Channel up = rcStep(200);
        Channel down = Shapes.sampled(t -> 5 - 5 * Shapes.rc(t, 1), -2, LN9 / 200, up.size());
        near(LN9, measure(down).fall());
        assertEquals("the capture holds no rising edge", measure(down).rise().reason());
    }

    private static Channel damped(double zeta, double tenNinety, int perTransition) {
        double dt = tenNinety / perTransition;
        return Shapes.sampled(t -> 3 * Shapes.secondOrder(t, zeta), -5 - 0.29 * dt, dt, (int) (80 / dt));
    }

    /**
     * Overshoot is exp(-pi z / sqrt(1 - z^2)); the rise times are of the project's reference vectors, computed from the
     * same formula. The dip after it is the square of the overshoot.
     */
    @ParameterizedTest
    @CsvSource({"0.2, 52.66205993, 1.20342990", "0.3, 37.23261049, 1.32133998", "0.4, 25.38267220, 1.46349120",
        "0.5, 16.30335348, 1.63757295", "0.6, 9.47802248, 1.85405035", "0.707107, 4.32139183, 2.14803799"})
    void dampedStep_hasItsOvershootAndRise(double zeta, double overshoot, double rise) {
        Measures fine = measure(damped(zeta, rise, 200));
        near(overshoot, fine.overshoot());
        near(rise, fine.rise());
        assertEquals(overshoot * overshoot / 100, fine.undershoot().value(), 0.05);
        Measures coarse = measure(damped(zeta, rise, 10));
        admits(overshoot, coarse.overshoot());
        admits(rise, coarse.rise());
        assertTrue(coarse.rise().uncertainty() < 0.2 * rise, coarse.rise().toString());
    }

    /** 0.4 to 3.4 V, up in 1 us, top 3 us, down in 2 us, every 10 us: the RMS is 2.2 V exactly. */
    private static Channel trapezoid(double dt) {
        return Shapes.sampled(t -> 0.4 + 3 * Shapes.trapezoid(t, 1e-6, 3e-6, 2e-6, 10e-6), -3.21e-6, dt,
                (int) Math.round(52e-6 / dt));
    }

    @Test
    void trapezoid_200Samples_isExact() {
        Measures m = measure(trapezoid(0.8e-6 / 200));
        near(0.4, m.low());
        near(3.4, m.high());
        near(3, m.amplitude());
        near(0.8e-6, m.rise());
        near(1.6e-6, m.fall());
        near(4.5e-6, m.pulse());
        near(5.5e-6, m.separation());
        near(10e-6, m.period());
        near(1e5, m.frequency());
        near(0.45, m.duty());
        near(1.75, m.mean());
        near(2.2, m.rms());
        near(1.3332291625973383, m.acRms());
        near(3.4 / 2.2, m.crest());
        assertEquals(0, m.overshoot().value(), 1e-6);
        assertEquals(0, m.undershoot().value(), 1e-6);
        assertEquals(LevelMethod.HISTOGRAM, m.levels().lowBy());
    }

    @Test
    void trapezoid_10Samples_isWithinUncertainty() {
        Measures m = measure(trapezoid(0.8e-6 / 10));
        admits(3, m.amplitude());
        admits(0.8e-6, m.rise());
        admits(1.6e-6, m.fall());
        admits(4.5e-6, m.pulse());
        admits(10e-6, m.period());
        admits(0.45, m.duty());
        admits(1.75, m.mean());
        admits(2.2, m.rms());
        assertTrue(m.rise().uncertainty() < 0.25e-6, m.rise().toString());
    }

    @ParameterizedTest
    @ValueSource(ints = {25, 100, 1000})
    void sine_hasItsRmsAndCrest(int perPeriod) {
        Channel sine = Shapes.sampled(t -> 1.5 + 2.5 * Math.sin(2 * Math.PI * t), 0.123, 1.0 / perPeriod,
                (int) (7.4 * perPeriod));
        Measures m = measure(sine);
        near(1.5, m.mean());
        near(Math.sqrt(1.5 * 1.5 + 2.5 * 2.5 / 2), m.rms());
        near(2.5 / Math.sqrt(2), m.acRms());
        near(1, m.frequency());
        admits(4 / Math.sqrt(1.5 * 1.5 + 2.5 * 2.5 / 2), m.crest());
        admits(4, m.max());
        assertEquals(LevelMethod.EXTREME, m.levels().highBy());
        admits(Math.asin(0.8) / Math.PI, m.rise());
        if (perPeriod == 1000) {
            near(Math.asin(0.8) / Math.PI, m.rise());
        }
    }

    /** Its histogram is level: what its fullest bins are depends on nothing but rounding. */
    @ParameterizedTest
    @ValueSource(ints = {130, 400, 997})
    void triangle_hasItsSwingAndPeriod(int perPeriod) {
        Channel triangle = Shapes.sampled(t -> 0.5 + 3 * Math.abs(2 * (t - Math.floor(t)) - 1), 0.123, 1.0 / perPeriod,
                (int) (6.3 * perPeriod));
        Measures m = measure(triangle);
        // The samples nearest to its tips miss them by half a step at most.
        assertEquals(3, m.amplitude().value(), 12.0 / perPeriod);
        near(1, m.period());
        near(2, m.mean());
        near(Math.sqrt(3) / 2, m.acRms());
    }
}
