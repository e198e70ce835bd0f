// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import java.util.Arrays;

import org.probeleaf.waveform.capture.Samples;

/**
 * What makes the samples of a channel uncertain.
 *
 * @param sigma standard deviation of the noise from sample to sample, in the channel's unit
 * @param step  of the converter, in the channel's unit; 0 where none shows
 */
public record Noise(double sigma, double step) {

    private static final int LOOKED_AT = 100_000;
    private static final int DISTINCT = 2000;
    /** The root of the sum of the squares of 1, -4, 6, -4, 1. */
    private static final double FOURTH = Math.sqrt(70);
    private static final double MAD_TO_SIGMA = 1.4826;

    /**
     * Estimates both. The noise is what fourth differences leave, their median taken, so that edges do not count and a
     * curve with some twenty samples for each of its bends does not either.
     *
     * @param samples    the values
     * @param resolution the step where it is known, else NaN
     */
    static Noise of(Samples samples, double resolution) {
        int n = samples.size();
        int stride = Math.max(1, n / LOOKED_AT);
        double[] fourth = new double[n / stride + 1];
        double[] values = new double[n / stride + 1];
        int count = 0;
        int held = 0;
        for (int i = 0; i < n; i += stride) {
            double value = samples.get(i);
            if (!Double.isNaN(value)) {
                values[held++] = value;
            }
            if (i >= 2 && i + 2 < n) {
                double d = samples.get(i - 2) - 4 * samples.get(i - 1) + 6 * value - 4 * samples.get(i + 1)
                        + samples.get(i + 2);
                if (!Double.isNaN(d)) {
                    fourth[count++] = Math.abs(d);
                }
            }
        }
        double sigma = count == 0 ? 0 : MAD_TO_SIGMA * median(Arrays.copyOf(fourth, count)) / FOURTH;
        double step = Double.isNaN(resolution) ? grid(Arrays.copyOf(values, held)) : resolution;
        return new Noise(sigma, step);
    }

    /** The step of which all values are whole multiples, apart from an offset; 0 where there is none that is plain. */
    private static double grid(double[] values) {
        Arrays.sort(values);
        double span = values.length == 0 ? 0 : values[values.length - 1] - values[0];
        double step = Double.POSITIVE_INFINITY;
        int distinct = 1;
        for (int i = 1; i < values.length; i++) {
            double gap = values[i] - values[i - 1];
            if (gap > span * 1e-6) {
                step = Math.min(step, gap);
                distinct++;
            }
        }
        if (distinct < 3 || distinct > DISTINCT || values.length < 2 * distinct) {
            return 0;
        }
        for (int i = 1; i < values.length; i++) {
            double steps = (values[i] - values[0]) / step;
            if (Math.abs(steps - Math.rint(steps)) > 0.05) {
                return 0;
            }
        }
        return step;
    }

    static double median(double[] values) {
        Arrays.sort(values);
        int n = values.length;
        return n == 0 ? Double.NaN : n % 2 == 1 ? values[n / 2] : (values[n / 2 - 1] + values[n / 2]) / 2;
    }
}
