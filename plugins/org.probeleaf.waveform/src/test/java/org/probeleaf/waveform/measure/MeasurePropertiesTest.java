// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import org.probeleaf.waveform.Shapes;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.TimeBase;

/** How figures change with the waveform; and that noise of known size stays inside the stated uncertainty. */
class MeasurePropertiesTest {

    private static final double PERIOD = 10;

    private static double shape(double t) {
        return Shapes.trapezoid(t, 1, 3, 2, PERIOD);
    }

    private static Measures measure(Channel channel) {
        return WaveMeasurer.standard().measure(channel);
    }

    private static Channel plain(double scale, double offset, double shift, double dt) {
        return Shapes.sampled(t -> offset + scale * shape(t), shift - 3.3, dt, (int) (64 / dt));
    }

    @Property(tries = 60)
    void scaleAndOffset_changeLevelsAndNothingElse(@ForAll @DoubleRange(min = -3, max = 3) double decades,
            @ForAll @DoubleRange(min = -50, max = 50) double offset) {
        double scale = Math.pow(10, decades);
        Measures one = measure(plain(1, 0, 0, 0.05));
        Measures other = measure(plain(scale, offset * scale, 0, 0.05));
        assertEquals(scale, other.amplitude().value(), 1e-9 * scale);
        assertEquals(offset * scale, other.low().value(), 1e-7 * scale);
        assertEquals(one.mean().value() * scale + offset * scale, other.mean().value(), 1e-7 * scale);
        assertEquals(one.rise().value(), other.rise().value(), 1e-6);
        assertEquals(one.period().value(), other.period().value(), 1e-6);
        assertEquals(one.duty().value(), other.duty().value(), 1e-6);
        assertEquals(one.acRms().value() * scale, other.acRms().value(), 1e-5 * scale);
    }

    @Property(tries = 40)
    void turnedOver_swapsTheEdges(@ForAll @DoubleRange(min = 0, max = 10) double shift) {
        Measures up = measure(plain(2, 0, shift, 0.05));
        Measures down = measure(plain(-2, 0, shift, 0.05));
        assertEquals(up.rise().value(), down.fall().value(), 1e-6);
        assertEquals(up.fall().value(), down.rise().value(), 1e-6);
        assertEquals(up.pulse().value(), down.separation().value(), 1e-2);
        assertEquals(-up.mean().value(), down.mean().value(), 1e-2);
    }

    @Property(tries = 60)
    void timeShift_changesNoFigureBeyondItsUncertainty(@ForAll @DoubleRange(min = 0, max = 10) double shift) {
        Measures m = measure(plain(5, -1, shift, 0.04));
        assertTrue(m.rise().admits(0.8), m.rise().toString());
        assertTrue(m.fall().admits(1.6), m.fall().toString());
        assertTrue(m.period().admits(PERIOD), m.period().toString());
        assertTrue(m.pulse().admits(4.5), m.pulse().toString());
        assertTrue(m.mean().admits(-1 + 5 * 0.45), m.mean().toString());
    }

    @Property(tries = 60)
    void otherSampling_keepsFiguresWithinTheirUncertainty(@ForAll @DoubleRange(min = 0.01, max = 0.3) double dt) {
        Measures m = measure(plain(5, 0, 0, dt));
        assertTrue(m.rise().admits(0.8), m.rise().toString());
        assertTrue(m.fall().admits(1.6), m.fall().toString());
        assertTrue(m.duty().admits(0.45), m.duty().toString());
        assertTrue(m.amplitude().admits(5), m.amplitude().toString());
        assertTrue(m.mean().admits(2.25), m.mean().toString());
    }

    @Property(tries = 40)
    void slowerClock_scalesTimes(@ForAll @DoubleRange(min = -9, max = 0) double decades) {
        double factor = Math.pow(10, decades);
        Channel one = plain(5, 0, 0, 0.05);
        Channel slow = Channel.of("A", "V", new TimeBase.Uniform(7, 0.05 * factor, one.size()), one.samples());
        assertEquals(measure(one).period().value() * factor, measure(slow).period().value(), 1e-6 * factor);
        assertEquals(measure(one).rise().value() * factor, measure(slow).rise().value(), 1e-6 * factor);
        assertEquals(measure(one).rms().value(), measure(slow).rms().value(), 1e-6);
    }

    /** A hundred seeded runs: every figure holds the truth at least 95 times. */
    @ParameterizedTest
    @ValueSource(doubles = {0.005, 0.02, 0.05})
    void noise_staysInsideTheUncertainty(double sigma) {
        Map<String, Integer> held = new LinkedHashMap<>();
        for (long seed = 0; seed < 100; seed++) {
            Channel clean = Shapes.sampled(t -> 0.4 + 3 * shape(t), -3.3 - seed * 0.0123, 0.05, 1300);
            Measures m = measure(Shapes.noisy(clean, 3 * sigma, seed));
            note(held, "low", m.low(), 0.4);
            note(held, "high", m.high(), 3.4);
            note(held, "amplitude", m.amplitude(), 3);
            note(held, "rise", m.rise(), 0.8);
            note(held, "fall", m.fall(), 1.6);
            note(held, "period", m.period(), PERIOD);
            note(held, "pulse", m.pulse(), 4.5);
            note(held, "duty", m.duty(), 0.45);
            note(held, "mean", m.mean(), 1.75);
            note(held, "rms", m.rms(), 2.2);
            note(held, "max", m.max(), 3.4);
            note(held, "min", m.min(), 0.4);
            note(held, "overshoot", m.overshoot(), 0);
            note(held, "undershoot", m.undershoot(), 0);
        }
        assertTrue(held.size() == 14 && held.values().stream().allMatch(n -> n >= 95), held.toString());
    }

    private static void note(Map<String, Integer> held, String name, Figure figure, double truth) {
        held.merge(name, figure.admits(truth) ? 1 : 0, Integer::sum);
    }
}
