// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import java.util.Arrays;

import org.probeleaf.waveform.capture.Samples;

/**
 * Finds state levels as IEEE Std 181 describes it: the histogram is split in the middle between the least and the greatest
 * value, and the mode of each half is its level. The mode is then made sharper than a bin: the median of the samples about
 * it, or, where these still settle, of the shortest half of them (the shorth).
 */
final class LevelFinder {

    private static final int BINS = 1024;
    private static final int KERNEL = 8;
    /** Half the width of the band of samples that make a level, as a share of the span. */
    private static final double BAND = 0.03;
    /** So much of its half must lie in the band for a level to be one. */
    private static final double DWELLS = 0.4;
    private static final double DWELLS_INSIDE = 0.2;
    private static final double APART = 0.25;
    /** So much fuller than a level histogram is the stretch about a single state. */
    private static final double RAMP = 1.5;
    /** A span of so many standard deviations is not made of noise. */
    private static final double NOISE = 16;
    private static final int GATHERED = 50_000;

    private final Samples samples;
    private final Noise noise;
    private final double min;
    private final double max;
    private final int[] counts = new int[BINS];

    LevelFinder(Samples samples, Noise noise, double min, double max) {
        this.samples = samples;
        this.noise = noise;
        this.min = min;
        this.max = max;
    }

    /** One level of a half. */
    private record Level(double value, double unsure, boolean dwells) {
    }

    StateLevels find() {
        double span = max - min;
        if (!(span > Math.max(Math.abs(max), Math.abs(min)) * 1e-9)) {
            double flat = (min + max) / 2;
            return one(flat, noise.step() / 2);
        }
        count(span);
        double lowMode = mode(0, BINS / 2);
        double highMode = mode(BINS / 2, BINS);
        if (highMode - lowMode < Math.max(4 * noise.sigma(), APART * span) && !ramps(lowMode, highMode)) {
            double[] all = gather(min, max);
            return one(Noise.median(all), 4 * noise.sigma() / Math.sqrt(all.length) + noise.step() / 2);
        }
        double middle = (min + max) / 2;
        double between = between(lowMode, highMode);
        Level low = level(lowMode, min, middle, between);
        Level high = level(highMode, middle, max, between);
        double extreme = 4 * noise.sigma() + noise.step() / 2;
        return new StateLevels(low.dwells ? low.value : min, high.dwells ? high.value : max,
                low.dwells ? LevelMethod.HISTOGRAM : LevelMethod.EXTREME,
                high.dwells ? LevelMethod.HISTOGRAM : LevelMethod.EXTREME,
                low.dwells ? low.unsure : extreme, high.dwells ? high.unsure : extreme, true);
    }

    private static StateLevels one(double level, double unsure) {
        return new StateLevels(level, level, LevelMethod.HISTOGRAM, LevelMethod.HISTOGRAM, unsure, unsure, false);
    }

    private void count(double span) {
        int n = samples.size();
        double scale = BINS / span;
        for (int i = 0; i < n; i++) {
            double v = samples.get(i);
            if (!Double.isNaN(v)) {
                counts[Math.min(BINS - 1, (int) ((v - min) * scale))]++;
            }
        }
    }

    /**
     * Whether modes that lie close together are none: of a ramp the histogram is level, and its fullest bins lie anywhere.
     * About the mode of a single state lie far more samples than a level histogram has there.
     */
    private boolean ramps(double lowMode, double highMode) {
        double near = APART / 2 * (max - min);
        double in = share(lowMode - near, highMode + near, min, max);
        return max - min > NOISE * noise.sigma() && in < RAMP * (highMode - lowMode + 2 * near) / (max - min);
    }

    /** The middle of the fullest bin, the histogram smoothed by a triangle so that a converter's steps leave no comb. */
    private double mode(int from, int to) {
        int best = from;
        long most = -1;
        for (int i = from; i < to; i++) {
            long sum = 0;
            for (int k = Math.max(from, i - KERNEL); k <= Math.min(to - 1, i + KERNEL); k++) {
                sum += (long) counts[k] * (KERNEL + 1 - Math.abs(k - i));
            }
            if (sum > most) {
                most = sum;
                best = i;
            }
        }
        return min + (best + 0.5) * (max - min) / BINS;
    }

    /** How many samples for each unit of the channel lie on the way from one level to the other. */
    private double between(double low, double high) {
        double scale = BINS / (max - min);
        int from = (int) ((low + (high - low) / 3 - min) * scale);
        int to = (int) ((high - (high - low) / 3 - min) * scale);
        long in = 0;
        for (int i = from; i < to; i++) {
            in += counts[i];
        }
        return in * scale / Math.max(1, to - from);
    }

    /**
     * A level about a mode. With noise the band is wide, and samples on the way to the other state lie in it on one side;
     * the quantile that counts as the median is moved by their share.
     */
    private Level level(double mode, double from, double to, double between) {
        double band = Math.max(BAND * (max - min), 2.5 * noise.sigma());
        double[] near = gather(Math.max(from, mode - band), Math.min(to, mode + band));
        double median = Noise.median(near);
        near = gather(Math.max(from, median - band), Math.min(to, median + band));
        median = Noise.median(near);
        double share = share(median - band, median + band, from, to);
        // A swing that dies away dwells little, but its mode lies inside, where that of a sine lies at its end.
        boolean inside = Math.min(median - min, max - median) > 2 * BAND * (max - min);
        boolean dwells = share >= (inside ? DWELLS_INSIDE : DWELLS);
        double[] off = new double[near.length];
        for (int i = 0; i < off.length; i++) {
            off[i] = Math.abs(near[i] - median);
        }
        double spread = 1.4826 * Noise.median(off);
        double statistical = 4 * noise.sigma() / Math.sqrt(near.length) + noise.step() / 2;
        if (spread <= 3 * noise.sigma() + noise.step()) {
            double strange = Math.min(0.5, between * band / Math.max(1, share * samples(from, to)));
            double fair = near[(int) ((near.length - 1) * (from == min ? 1 - strange : 1 + strange) / 2)];
            double corrected = strange * near.length < 2 ? median : fair;
            return new Level(corrected, statistical + Math.abs(corrected - median) / 2, dwells);
        }
        double settled = shorth(near);
        return new Level(settled, statistical + Math.abs(settled - median) / 2, dwells);
    }

    /** The median of the shortest stretch that holds half of the sorted values, taken twice. */
    private static double shorth(double[] sorted) {
        double[] left = sorted;
        for (int round = 0; round < 2 && left.length > 8; round++) {
            int half = left.length / 2 + 1;
            int best = 0;
            for (int i = 1; i + half <= left.length; i++) {
                if (left[i + half - 1] - left[i] < left[best + half - 1] - left[best]) {
                    best = i;
                }
            }
            left = Arrays.copyOfRange(left, best, best + half);
        }
        return Noise.median(left);
    }

    /** How much of the half of the histogram lies in a band. */
    private double share(double from, double to, double halfFrom, double halfTo) {
        double scale = BINS / (max - min);
        long in = 0;
        long all = 0;
        for (int i = (int) ((halfFrom - min) * scale + 0.5); i < Math.min(BINS, (int) ((halfTo - min) * scale + 0.5)); i++) {
            double at = min + (i + 0.5) / scale;
            all += counts[i];
            in += at >= from && at <= to ? counts[i] : 0;
        }
        return all == 0 ? 0 : (double) in / all;
    }

    private double samples(double from, double to) {
        double scale = BINS / (max - min);
        long in = 0;
        for (int i = (int) ((from - min) * scale + 0.5); i < Math.min(BINS, (int) ((to - min) * scale + 0.5)); i++) {
            in += counts[i];
        }
        return in;
    }

    /** The values of a band; of very many only some, evenly taken. */
    private double[] gather(double from, double to) {
        int n = samples.size();
        long inBand = 0;
        double scale = BINS / (max - min);
        for (int i = Math.max(0, (int) ((from - min) * scale)); i <= Math.min(BINS - 1, (int) ((to - min) * scale)); i++) {
            inBand += counts[i];
        }
        int stride = (int) Math.max(1, inBand / GATHERED);
        double[] values = new double[(int) (inBand / stride) + 2];
        int seen = 0;
        int count = 0;
        for (int i = 0; i < n && count < values.length; i++) {
            double v = samples.get(i);
            if (v >= from && v <= to && seen++ % stride == 0) {
                values[count++] = v;
            }
        }
        return Arrays.copyOf(values, count);
    }
}
