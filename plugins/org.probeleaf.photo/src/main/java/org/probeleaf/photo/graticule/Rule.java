// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

import java.util.Arrays;
import java.util.List;

/** Where the lines of a family pass the middle of the picture, laid against rules of even divisions seen aslant. */
final class Rule {

    private static final double NEAR = 0.13;
    /** How much wider divisions are at one end than in the middle: the depth of the one by that of the other, less 1. */
    private static final double[] ASLANT = {-0.24, -0.16, -0.08, 0, 0.08, 0.16, 0.24};
    private static final double TOO_MANY = 0.7;
    private static final double MOST = 1.3;

    private final int room;
    private final double[] at;
    private final double[] weight;
    /** For each pixel the line nearest to it. */
    private final int[] nearest;

    Rule(List<LineFinder.Line> lines, int room) {
        this.room = room;
        double usual = lines.isEmpty() ? 1 : lines.get(lines.size() / 3).strength();
        List<LineFinder.Line> sorted = lines.stream().sorted((a, b) -> Double.compare(a.x(), b.x())).toList();
        at = sorted.stream().mapToDouble(LineFinder.Line::x).toArray();
        weight = sorted.stream().mapToDouble(l -> Math.min(MOST, l.strength() / usual)).toArray();
        nearest = new int[Math.max(1, 2 * room)];
        for (int i = 0; i < nearest.length; i++) {
            int found = Arrays.binarySearch(at, i - room / 2.0);
            int after = found < 0 ? -found - 1 : found;
            nearest[i] = after == at.length || after > 0 && i - room / 2.0 - at[after - 1] < at[after] - i + room / 2.0
                    ? after - 1 : after;
        }
    }

    /** How many lines lie where a rule through two of them has its divisions, less what lies one division outside. */
    double support(double a, int atA, double b, int atB, int count) {
        double best = Double.NEGATIVE_INFINITY;
        for (double q : ASLANT) {
            double fa = aslant((double) atA / count, q);
            double length = (b - a) / (aslant((double) atB / count, q) - fa);
            double sum = 0;
            for (int k = -1; k <= count + 1; k++) {
                double x = a + length * (aslant((double) k / count, q) - fa);
                int i = (int) Math.rint(x + room / 2.0);
                if (i >= 0 && i < nearest.length) {
                    int line = nearest[i];
                    double off = Math.abs(at[line] - x) * count / length;
                    double here = off < NEAR ? weight[line] * (1 - off) : 0;
                    sum += k < 0 || k > count ? -TOO_MANY * here : here;
                }
            }
            best = Math.max(best, sum);
        }
        return best;
    }

    private static double aslant(double t, double q) {
        return t / (1 + q * (1 - t));
    }
}
