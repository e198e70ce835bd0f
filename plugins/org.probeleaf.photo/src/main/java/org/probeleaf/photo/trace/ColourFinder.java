// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.trace;

import java.util.Arrays;

/**
 * Which way a trace differs from the background in red, green and blue. By itself: the hue of which there is something in
 * most columns, in thin strokes and strong.
 */
final class ColourFinder {

    private static final int HUES = 12;
    /** Bright hues, dark hues, brighter grey, darker grey. */
    private static final int BINS = 2 * HUES + 2;
    private static final double GREY = 0.33;

    private final FlatScreen flat;
    private final float[] size;
    private final float floor;
    private float[] next;

    ColourFinder(FlatScreen flat) {
        this.flat = flat;
        size = new float[flat.width * flat.height];
        for (int i = 0; i < size.length; i++) {
            size[i] = length(flat.off[0][i], flat.off[1][i], flat.off[2][i]);
        }
        float[] sorted = size.clone();
        Arrays.sort(sorted);
        floor = Math.max(0.06f, 5 * sorted[sorted.length / 2]);
    }

    /** How much the colours of half of the pixels differ from the background, at most: noise. */
    float floor() {
        return floor;
    }

    /** A way of length 1; null where nothing stands out. */
    float[] find() {
        int[][] columns = new int[BINS][flat.width];
        double[] strength = new double[BINS];
        int[] count = new int[BINS];
        float[] strong = strongest();
        int rim = Math.max(2, flat.scale / 12);
        for (int y = rim; y < flat.height - rim; y++) {
            for (int x = rim; x < flat.width - rim; x++) {
                int i = y * flat.width + x;
                if (size[i] > floor && size[i] > 0.35f * strong[x]) {
                    int bin = bin(i);
                    columns[bin][x]++;
                    strength[bin] += size[i];
                    count[bin]++;
                }
            }
        }
        double[] score = new double[BINS];
        for (int b = 0; b < BINS; b++) {
            int[] together = columns[b].clone();
            if (b < 2 * HUES) {
                int[] before = columns[b / HUES * HUES + (b + HUES - 1) % HUES];
                int[] after = columns[b / HUES * HUES + (b + 1) % HUES];
                for (int x = 0; x < together.length; x++) {
                    together[x] += before[x] + after[x];
                }
            }
            double covered = Arrays.stream(together).filter(n -> n > 0).count() / (double) (flat.width - 2 * rim);
            score[b] = count[b] == 0 ? 0 : covered * covered * Math.sqrt(strength[b] / count[b])
                    * Math.sqrt(Math.min(1, count[b] / (double) flat.width));
        }
        int best = greatest(score);
        for (int b = 0; best >= 0 && b < BINS; b++) {
            score[b] = near(b, best) ? 0 : score[b];
        }
        int after = best < 0 ? -1 : greatest(score);
        next = after < 0 ? null : mean(after, strong, rim);
        return best < 0 ? null : mean(best, strong, rim);
    }

    /** The way of the next best colour, plainly another than the one that {@link #find} found; null for none. */
    float[] next() {
        return next;
    }

    private static int greatest(double[] score) {
        int best = -1;
        for (int b = 0; b < score.length; b++) {
            if (score[b] > (best < 0 ? 0 : score[best])) {
                best = b;
            }
        }
        return best;
    }

    /** Hues that are the same or stand beside each other, as of a trace and its rim. */
    private static boolean near(int a, int b) {
        int apart = Math.floorMod(a - b, HUES);
        return a == b || a < 2 * HUES && b < 2 * HUES && a / HUES == b / HUES && (apart <= 1 || apart == HUES - 1);
    }

    /** Of each column what stands out most, evened over columns, so that dim steep edges are seen beside bright tops. */
    private float[] strongest() {
        float[] all = new float[flat.width];
        for (int x = 0; x < flat.width; x++) {
            for (int y = 2; y < flat.height - 2; y++) {
                all[x] = Math.max(all[x], size[y * flat.width + x]);
            }
        }
        return all;
    }

    private float[] mean(int bin, float[] strong, int rim) {
        double[] sum = new double[3];
        for (int y = rim; y < flat.height - rim; y++) {
            for (int x = rim; x < flat.width - rim; x++) {
                int i = y * flat.width + x;
                if (size[i] > floor && size[i] > 0.5f * strong[x] && bin(i) == bin) {
                    for (int c = 0; c < 3; c++) {
                        sum[c] += flat.off[c][i];
                    }
                }
            }
        }
        return unit((float) sum[0], (float) sum[1], (float) sum[2]);
    }

    private int bin(int i) {
        float r = flat.off[0][i] / size[i];
        float g = flat.off[1][i] / size[i];
        float b = flat.off[2][i] / size[i];
        double grey = (r + g + b) / Math.sqrt(3);
        double alpha = (2 * r - g - b) / Math.sqrt(6);
        double beta = (g - b) / Math.sqrt(2);
        if (Math.hypot(alpha, beta) < GREY) {
            return 2 * HUES + (grey > 0 ? 0 : 1);
        }
        int hue = (int) Math.floor((Math.atan2(beta, alpha) / (2 * Math.PI) + 1) * HUES) % HUES;
        return (grey > -0.2 ? 0 : HUES) + hue;
    }

    /** The way to a colour that was named, from the median of the background. */
    float[] towards(int rgb) {
        float[] way = new float[3];
        for (int c = 0; c < 3; c++) {
            float[] ground = flat.ground[c].clone();
            Arrays.sort(ground);
            way[c] = (rgb >> 16 - 8 * c & 0xff) / 255f - ground[ground.length / 2];
        }
        return length(way[0], way[1], way[2]) < 0.05f ? null : unit(way[0], way[1], way[2]);
    }

    static float length(float r, float g, float b) {
        return (float) Math.sqrt(r * r + g * g + b * b);
    }

    private static float[] unit(float r, float g, float b) {
        float l = length(r, g, b);
        return l < 1e-6 ? null : new float[] {r / l, g / l, b / l};
    }
}
