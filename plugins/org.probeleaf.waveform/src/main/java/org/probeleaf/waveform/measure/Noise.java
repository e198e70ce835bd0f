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
    /** Differences of rising order and the roots of the sums of their squares. */
    private static final double[][] DIFFERENCES = {{1, -1, 0, 0, 0}, {1, -2, 1, 0, 0}, {1, -3, 3, -1, 0}, {1, -4, 6, -4, 1}};
    private static final double[] ROOTS = {Math.sqrt(2), Math.sqrt(6), Math.sqrt(20), Math.sqrt(70)};
    private static final double MAD_TO_SIGMA = 1.4826;

    /**
     * Estimates both. The noise is what differences of neighbours leave, their median taken, so that edges do not count. The
     * least of four orders counts: higher ones see through a curve, lower ones through levels that are only a few samples
     * long.
     *
     * @param samples    the values
     * @param resolution the step where it is known, else NaN
     */
    static Noise of(Samples samples, double resolution) {
        int n = samples.size();
        int stride = Math.max(1, n / LOOKED_AT);
        double[] values = new double[n / stride + 1];
        int held = 0;
        for (int i = 0; i < n; i += stride) {
            double value = samples.get(i);
            if (!Double.isNaN(value)) {
                values[held++] = value;
            }
        }
        double sigma = Double.POSITIVE_INFINITY;
        for (int order = 0; order < ROOTS.length; order++) {
            sigma = Math.min(sigma, sigma(samples, order, stride));
        }
        double step = Double.isNaN(resolution) ? grid(Arrays.copyOf(values, held)) : resolution;
        return new Noise(Double.isInfinite(sigma) ? 0 : sigma, step);
    }

    private static double sigma(Samples samples, int order, int stride) {
        int n = samples.size();
        double[] weights = DIFFERENCES[order];
        double[] all = new double[n / stride + 1];
        int count = 0;
        for (int i = 0; i + order + 1 < n; i += stride) {
            double d = 0;
            for (int k = 0; k <= order + 1; k++) {
                d += weights[k] * samples.get(i + k);
            }
            if (!Double.isNaN(d)) {
                all[count++] = Math.abs(d);
            }
        }
        return count == 0 ? Double.POSITIVE_INFINITY : MAD_TO_SIGMA * median(Arrays.copyOf(all, count)) / ROOTS[order];
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
