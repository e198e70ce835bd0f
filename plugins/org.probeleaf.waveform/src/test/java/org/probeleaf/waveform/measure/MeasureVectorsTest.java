// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.waveform.Shapes;
import org.probeleaf.waveform.capture.Channel;

/** Tables worked by hand and shapes with known averages. Values computed from the definitions of IEEE Std 181. */
class MeasureVectorsTest {

    private static final double US = 1e-6;

    private static Measures measure(Channel channel) {
        return WaveMeasurer.standard().measure(channel);
    }

    /** A ramp of ten samples: 10, 50 and 90 % at 2.5, 4.5 and 6.5 us by straight lines between samples. */
    @Test
    void rampTable_isMeasuredByHand() {
        Measures m = measure(Channel.volts("A", US, 0, 0, 0, 1, 2, 3, 4, 5, 5, 5));
        Transition t = m.transitions().get(0);
        assertEquals(2.5 * US, t.start(), 1e-12);
        assertEquals(4.5 * US, t.middle(), 1e-12);
        assertEquals(6.5 * US, t.end(), 1e-12);
        assertEquals(4 * US, m.rise().value(), 1e-12);
        assertEquals("the capture holds no whole period", m.period().reason());
        assertEquals("the capture holds no falling edge", m.fall().reason());
    }

    /** Two pulses with 10 % overshoot and 5 % undershoot. */
    @Test
    void pulseTable_isMeasuredByHand() {
        Measures m = measure(Channel.volts("A", US, 0, 0, 0, 5.5, 5, 5, 5, 5, -0.25, 0, 0, 0, 0, 5.5, 5, 5, 5, 5, -0.25, 0, 0));
        assertEquals(0, m.low().value(), 1e-12);
        assertEquals(5, m.high().value(), 1e-12);
        assertEquals(10, m.overshoot().value(), 1e-9);
        assertEquals(5, m.undershoot().value(), 1e-9);
        assertEquals(2.4545454545454544 * US, m.instants()[0], 1e-15);
        assertEquals(7.476190476190476 * US, m.instants()[1], 1e-15);
        assertEquals(12.454545454545454 * US, m.instants()[2], 1e-15);
        assertEquals(5.021645021645021 * US, m.pulse().value(), 1e-15);
        assertEquals(10 * US, m.period().value(), 1e-15);
        assertEquals(0.5021645021645021, m.duty().value(), 1e-12);
        assertEquals(0.7272727272727272 * US, m.rise().value(), 1e-15);
        assertEquals(0.7619047619047618 * US, m.fall().value(), 1e-15);
        assertEquals(5.75, m.peakToPeak(), 1e-12);
    }

    /** Modes at 0.2 and 4.9 V; the mean of the lower half would be 0.27885 V, pulled up by four samples of edges. */
    @Test
    void histogramTable_givesModes() {
        double[][] runs = {{0.1, 30}, {0.2, 50}, {0.3, 20}, {2.5, 4}, {4.8, 25}, {4.9, 60}, {5.0, 15}};
        double[] all = new double[204];
        int n = 0;
        for (double[] run : runs) {
            for (int i = 0; i < run[1]; i++) {
                all[n++] = run[0];
            }
        }
        Measures m = measure(Channel.volts("A", US, all));
        assertEquals(0.2, m.low().value(), 1e-9);
        assertEquals(4.9, m.high().value(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"8, 1, 0", "5, 1, 0", "1000, 7, 0.3", "12, 1, 0.2617993878"})
    void sampledSine_wholeCycles_hasItsRms(int samples, int cycles, double phase) {
        Measures m = measure(Shapes.sampled(i -> Math.sin(2 * Math.PI * cycles * i / samples + phase), 1, samples));
        assertEquals(Math.sqrt(0.5), m.rms().value(), 2e-4);
        assertEquals(0, m.mean().value(), 2e-4);
    }

    /** Ten and a half cycles: the plain mean of the samples would be 0.0758 V. */
    @Test
    void sine_brokenCycles_isAveragedOverWholeOnes() {
        Measures m = measure(Shapes.sampled(i -> 2.5 * Math.sin(2 * Math.PI * 10.5 * i / 1000), 1, 1000));
        assertEquals(0, m.mean().value(), 1e-4);
        assertEquals(1.7677669529663687, m.rms().value(), 1e-4);
        assertEquals(9, m.periods());
    }

    private static double saw(double t) {
        double p = t - Math.floor(t);
        return p < 0.25 ? 4 * p : p < 0.75 ? 2 - 4 * p : 4 * p - 4;
    }

    /** Unit peak; RMS, mean and crest factor by formula. */
    @ParameterizedTest
    @CsvSource({"triangle, 0.5773502691896258, 0, 1.7320508075688772", "square, 1, 0, 1",
        "fullwave, 0.7071067811865475, 0.6366197723675814, 1.4142135623730951",
        "halfwave, 0.5, 0.3183098861837907, 2", "pulse25, 0.5, 0.25, 2", "pulse1, 0.1, 0.01, 10"})
    void shape_hasItsAverages(String shape, double rms, double mean, double crest) {
        DoubleUnaryOperator of = switch (shape) {
            case "triangle" -> MeasureVectorsTest::saw;
            case "square" -> t -> t - Math.floor(t) < 0.5 ? 1 : -1;
            case "fullwave" -> t -> Math.abs(Math.sin(2 * Math.PI * t));
            case "halfwave" -> t -> Math.max(0, Math.sin(2 * Math.PI * t));
            case "pulse25" -> t -> t - Math.floor(t) < 0.25 ? 1 : 0;
            default -> t -> t - Math.floor(t) < 0.01 ? 1 : 0;
        };
        Measures m = measure(Shapes.sampled(of, 0.00025, 0.0005, 12_000));
        assertEquals(rms, m.rms().value(), 2e-3 * rms);
        assertEquals(mean, m.mean().value(), 2e-3);
        assertEquals(crest, m.crest().value(), 2e-3 * crest);
    }

    @Test
    void oneLevel_hasNoEdgesAndSaysWhy() {
        Measures flat = measure(Channel.volts("A", US, 0.12, 0.12, 0.12, 0.12));
        assertFalse(flat.levels().two());
        assertEquals("it stays at one level, 120 mV", flat.amplitude().reason());
        Measures noisy = measure(Shapes.noisy(Shapes.sampled(t -> 1.4, US, 5000), 0.01, 1));
        assertFalse(noisy.levels().two());
        assertEquals(1.4, noisy.mean().value(), noisy.mean().uncertainty());
        assertTrue(noisy.frequency().reason().startsWith("it stays at one level"));
    }

    @Test
    void unevenEdges_haveNoPeriodAndSayWhy() {
        double[] bits = new double[900];
        int[] word = {1, 0, 0, 1, 1, 1, 1, 0, 1, 0, 0, 0, 0, 0, 1, 1, 0, 1};
        for (int i = 0; i < bits.length; i++) {
            bits[i] = word[i / 50] * 5;
        }
        Figure period = measure(Channel.volts("A", US, bits)).period();
        assertEquals("its edges come at uneven distances, 150 \u00b5s to 300 \u00b5s", period.reason());
    }

    @Test
    void missingSamples_areLeftOut() {
        Measures m = measure(Channel.volts("A", US, 0, 0, Double.NaN, 5, 5, 5, 5, 0, 0, Double.NaN, Double.NaN, 0, 5, 5, 5, 5));
        assertEquals(3, m.missing());
        assertEquals(5, m.amplitude().value(), 1e-12);
        assertEquals(3, m.edges());
    }

    @Test
    void valuesTooLarge_haveNoFigureAndSayWhy() {
        Measures m = measure(Channel.volts("A", US, 1e308, -1e308, 1e308, -1e308, 1e308));
        assertEquals("the values are too large to reckon with", m.rms().reason());
    }

    @Test
    void noSample_saysSo() {
        assertEquals("there is no sample", measure(Channel.volts("A", US, Double.NaN, Double.NaN)).rms().reason());
    }
}
