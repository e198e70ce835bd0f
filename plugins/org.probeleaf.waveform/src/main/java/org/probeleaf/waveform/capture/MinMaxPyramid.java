// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.capture;

import java.util.ArrayList;
import java.util.List;

/**
 * The least and the greatest value of any stretch of samples, at a cost that grows with the logarithm of its length: what
 * drawing asks for each column of pixels. Holds an eighth of the samples again. Any thread may use it.
 */
public final class MinMaxPyramid {

    private static final int STEP = 16;

    private final Samples samples;
    private final List<float[]> lows = new ArrayList<>();
    private final List<float[]> highs = new ArrayList<>();

    /** Reads all samples once. */
    public MinMaxPyramid(Samples samples) {
        this.samples = samples;
        int n = samples.size() / STEP;
        while (n > 0) {
            float[] low = new float[n];
            float[] high = new float[n];
            int level = lows.size();
            for (int i = 0; i < n; i++) {
                Range r = new Range();
                for (int k = i * STEP; k < (i + 1) * STEP; k++) {
                    take(r, level, k);
                }
                low[i] = down(r.low);
                high[i] = up(r.high);
            }
            lows.add(low);
            highs.add(high);
            n /= STEP;
        }
    }

    /** A float never above the value, so that no peak is lost. */
    private static float down(double value) {
        float f = (float) value;
        return f > value ? Math.nextDown(f) : f;
    }

    private static float up(double value) {
        float f = (float) value;
        return f < value ? Math.nextUp(f) : f;
    }

    /**
     * The extremes of the samples {@code from} (inclusive) to {@code to} (exclusive), to seven digits, outwards.
     *
     * @return least and greatest; both NaN where the stretch holds no value
     */
    public double[] range(int from, int to) {
        Range r = new Range();
        int a = Math.max(0, from);
        int b = Math.min(samples.size(), to);
        int level = 0;
        while (a < b) {
            boolean top = level == lows.size();
            while (a < b && (top || a % STEP != 0)) {
                take(r, level, a++);
            }
            while (b > a && b % STEP != 0) {
                take(r, level, --b);
            }
            a /= STEP;
            b /= STEP;
            level++;
        }
        return r.low <= r.high ? new double[] {r.low, r.high} : new double[] {Double.NaN, Double.NaN};
    }

    private void take(Range r, int level, int index) {
        double low = level == 0 ? samples.get(index) : lows.get(level - 1)[index];
        double high = level == 0 ? low : highs.get(level - 1)[index];
        r.low = low < r.low ? low : r.low;
        r.high = high > r.high ? high : r.high;
    }

    private static final class Range {
        private double low = Double.POSITIVE_INFINITY;
        private double high = Double.NEGATIVE_INFINITY;
    }
}
