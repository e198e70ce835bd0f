// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

import java.util.Arrays;

/**
 * How well a graticule explains a picture: how much of its lines is seen, against what is seen half-way between them, one
 * division outside, and beyond their ends.
 *
 * @param value   greater is better; at most 2
 * @param present the share of lines that are plainly seen, 0 to 1
 * @param plain   how much more is seen on lines than between them, 0 to 1
 */
record GridScore(double value, double present, double plain) {

    private static final double OUTSIDE = 0.45;
    private static final double BEYOND = 0.6;

    /**
     * Looks at a graticule.
     *
     * @param upright ridges of upright lines
     * @param level   ridges of level lines, of the turned picture
     * @param samples how many places of each division are looked at
     */
    static GridScore of(GridMap map, Ridges upright, Ridges level, double samples) {
        Side across = side(map, upright, true, samples);
        Side down = side(map, level, false, samples);
        double value = across.value() + down.value();
        double present = (across.present + down.present) / (map.divisions().across() + map.divisions().up() + 2);
        double plain = Math.min(across.contrast(), down.contrast());
        return new GridScore(value, present, Math.max(0, Math.min(1, plain)));
    }

    /** One family of lines. */
    private record Side(double on, double between, double outside, double beyond, double present) {

        double value() {
            return on - between - OUTSIDE * outside - BEYOND * beyond;
        }

        double contrast() {
            return (on - Math.max(between, Math.max(0.7 * outside, beyond))) / Math.max(1e-6, on + between);
        }
    }

    private static Side side(GridMap map, Ridges ridges, boolean upright, double samples) {
        int lines = upright ? map.divisions().across() : map.divisions().up();
        int length = upright ? map.divisions().up() : map.divisions().across();
        double[] on = new double[lines + 1];
        double between = 0;
        double beyond = 0;
        for (int k = 0; k <= lines; k++) {
            on[k] = seen(map, ridges, upright, k, 0.05, length - 0.05, samples);
            beyond += seen(map, ridges, upright, k, -0.75, -0.2, samples * 2)
                    + seen(map, ridges, upright, k, length + 0.2, length + 0.75, samples * 2);
            if (k < lines) {
                between += seen(map, ridges, upright, k + 0.5, 0.05, length - 0.05, samples);
            }
        }
        double outside = seen(map, ridges, upright, -1, 0, length, samples)
                + seen(map, ridges, upright, lines + 1, 0, length, samples);
        between /= lines;
        double[] sorted = on.clone();
        Arrays.sort(sorted);
        // A bright frame must not make up for lines that are not there.
        double cap = 1.5 * sorted[sorted.length / 2];
        double mean = 0;
        int present = 0;
        for (double o : on) {
            mean += Math.min(o, cap) / on.length;
            present += o > between + 0.12 ? 1 : 0;
        }
        return new Side(mean, between, outside / 2, beyond / (2 * (lines + 1)), present);
    }

    private static double seen(GridMap map, Ridges ridges, boolean upright, double line, double from, double to,
            double samples) {
        int n = Math.max(2, (int) Math.round((to - from) * samples));
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double t = from + (to - from) * (i + 0.5) / n;
            Spot s = upright ? map.picture(line, t) : map.picture(t, line);
            sum += upright ? ridges.near(s.x(), s.y()) : ridges.near(s.y(), s.x());
        }
        return sum / n;
    }
}
