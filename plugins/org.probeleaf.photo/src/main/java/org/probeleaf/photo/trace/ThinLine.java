// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.trace;

import java.util.Arrays;

/**
 * The line that a thick pen drew. A round pen of radius r covers in each column what the line passes within r to both
 * sides, and r more above and below: the upper outline less r is the greatest value of the line in that neighbourhood
 * (a dilation), the lower outline the least (an erosion). Undone by their opposites, both outlines meet in the line on
 * slopes; on a peak the upper one keeps it, in a valley the lower one (morphological closing and opening; Serra, Image
 * Analysis and Mathematical Morphology, 1982; from memory).
 */
final class ThinLine {

    private static final double FLAT = 1.12;
    /** Outlines that differ by less, in pens, are one. */
    private static final double ALIKE = 0.25;
    /** The slope is taken over so many columns to both sides. */
    private static final int LOOK = 2;

    /** Middle of the line in each column, in pixels from the upper rim; NaN where there is none. */
    final double[] middle;
    /** How thick the pen is, in pixels. */
    final double pen;

    private ThinLine(double[] middle, double pen) {
        this.middle = middle;
        this.pen = pen;
    }

    static ThinLine of(Strokes.Stroke[] strokes) {
        double pen = pen(strokes);
        int n = strokes.length;
        int reach = (int) Math.max(0, Math.round((pen - 1) / 2));
        double[] upper = new double[n];
        double[] lower = new double[n];
        for (int x = 0; x < n; x++) {
            Strokes.Stroke s = strokes[x];
            if (s == null) {
                upper[x] = Double.NaN;
                lower[x] = Double.NaN;
            } else if (s.length() <= FLAT * pen) {
                upper[x] = s.middle();
                lower[x] = s.middle();
            } else {
                upper[x] = s.top() + pen / 2;
                lower[x] = s.bottom() - pen / 2;
            }
        }
        // y runs down: the upper outline holds the least value of the neighbourhood, which its greatest one undoes.
        double[] closed = window(upper, reach, true);
        double[] opened = window(lower, reach, false);
        double[] middle = new double[n];
        for (int x = 0; x < n; x++) {
            middle[x] = strokes[x] == null ? Double.NaN : between(closed, opened, x, pen);
        }
        return new ThinLine(middle, pen);
    }

    private static double between(double[] closed, double[] opened, int x, double pen) {
        double c = closed[x];
        double o = opened[x];
        // On a slope and in a sharp edge they pass each other, by the same on both sides of the line.
        if (o - c <= ALIKE * pen) {
            return (c + o) / 2;
        }
        double here = c + o;
        int aside = (int) Math.ceil(pen) + 1;
        double before = sum(closed, opened, x, -aside);
        double after = sum(closed, opened, x, aside);
        double bend = (before + after) / 2 - here;
        return Double.isNaN(bend) || Math.abs(bend) < ALIKE * pen ? here / 2 : bend > 0 ? Math.min(c, o) : Math.max(c, o);
    }

    private static double sum(double[] closed, double[] opened, int x, int off) {
        int at = x + off;
        return at < 0 || at >= closed.length ? Double.NaN : closed[at] + opened[at];
    }

    private static double[] window(double[] in, int reach, boolean greatest) {
        double[] out = new double[in.length];
        for (int x = 0; x < in.length; x++) {
            double best = in[x];
            for (int k = Math.max(0, x - reach); k <= Math.min(in.length - 1, x + reach); k++) {
                if (!Double.isNaN(in[k])) {
                    best = greatest ? Math.max(best, in[k]) : Math.min(best, in[k]);
                }
            }
            out[x] = best;
        }
        return out;
    }

    /**
     * A stroke is as long as the pen is thick where the trace runs level, and longer by the root of 1 and the square of the
     * slope where it does not; about peaks and edges yet longer, so a low quantile counts.
     */
    private static double pen(Strokes.Stroke[] strokes) {
        double[] thick = new double[strokes.length];
        int n = 0;
        for (int x = LOOK; x + LOOK < strokes.length; x++) {
            Strokes.Stroke before = strokes[x - LOOK];
            Strokes.Stroke after = strokes[x + LOOK];
            if (before != null && strokes[x] != null && after != null) {
                double slope = (after.middle() - before.middle()) / (2 * LOOK);
                thick[n++] = strokes[x].length() / Math.sqrt(1 + slope * slope);
            }
        }
        Arrays.sort(thick, 0, n);
        return n == 0 ? 1 : Math.max(1, thick[n * 3 / 10]);
    }
}
