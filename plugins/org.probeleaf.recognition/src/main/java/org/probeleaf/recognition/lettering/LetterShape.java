// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.Arrays;
import java.util.List;

/**
 * What a letter looks like, whatever its size: where its ink lies and which way its lines run, with its place on the
 * writing line. Lengths are in capital heights, v upwards from the base line.
 *
 * @param ink    amount of ink by direction and place, of unit length
 * @param bottom lowest v
 * @param top    highest v
 * @param width  along the line
 */
record LetterShape(float[] ink, double bottom, double top, double width) {

    private static final int CELLS = 7;
    private static final int DIRECTIONS = 4;
    /** The narrowest box that a letter is spread over, as a share of its other side; so a "1" stays a "1". */
    private static final double NARROWEST = 0.4;
    private static final double STEP = 0.04;

    /** The shape of a letter whose lines are given as corners (u, v). */
    static LetterShape of(List<double[][]> lines) {
        double u0 = Double.MAX_VALUE;
        double u1 = -Double.MAX_VALUE;
        double v0 = Double.MAX_VALUE;
        double v1 = -Double.MAX_VALUE;
        for (double[][] line : lines) {
            for (double[] p : line) {
                u0 = Math.min(u0, p[0]);
                u1 = Math.max(u1, p[0]);
                v0 = Math.min(v0, p[1]);
                v1 = Math.max(v1, p[1]);
            }
        }
        double w = u1 - u0;
        double h = v1 - v0;
        double spreadU = Math.max(Math.max(w, NARROWEST * h), 1e-6);
        double spreadV = Math.max(Math.max(h, NARROWEST * w), 1e-6);
        double fromU = (u0 + u1 - spreadU) / 2;
        double fromV = (v0 + v1 - spreadV) / 2;
        float[] ink = new float[DIRECTIONS * CELLS * CELLS];
        for (double[][] line : lines) {
            for (int i = 1; i < line.length; i++) {
                draw(ink, (line[i - 1][0] - fromU) / spreadU, (line[i - 1][1] - fromV) / spreadV,
                        (line[i][0] - fromU) / spreadU, (line[i][1] - fromV) / spreadV);
            }
        }
        return new LetterShape(unit(ink), v0, v1, w);
    }

    /** The same letter measured from another base line, in another capital height. */
    LetterShape placed(double base, double capital) {
        return new LetterShape(ink, (bottom - base) / capital, (top - base) / capital, width / capital);
    }

    double height() {
        return top - bottom;
    }

    /** How much of the ink of two letters lies alike, 0 to 1. */
    double likeness(LetterShape other) {
        float[] a = ink;
        float[] b = other.ink;
        float s0 = 0;
        float s1 = 0;
        float s2 = 0;
        float s3 = 0;
        for (int i = 0; i < a.length; i += 4) {
            s0 += a[i] * b[i];
            s1 += a[i + 1] * b[i + 1];
            s2 += a[i + 2] * b[i + 2];
            s3 += a[i + 3] * b[i + 3];
        }
        return s0 + s1 + s2 + s3;
    }

    /**
     * How strong the ink is in each row and each column, from which a bound of the likeness follows at a fraction of
     * its cost (Cauchy and Schwarz).
     *
     * @param rows    for each direction and row the length of the ink in it
     * @param columns for each direction and column the length of the ink in it
     */
    record Outline(float[] rows, float[] columns) {

        /** Room for what is lost in rounding. */
        private static final float SLACK = 1e-4f;

        /** What the likeness of the letters is at most. */
        float likenessAtMost(Outline other) {
            return Math.min(product(rows, other.rows), product(columns, other.columns)) + SLACK;
        }

        private static float product(float[] a, float[] b) {
            float s0 = 0;
            float s1 = 0;
            for (int i = 0; i < a.length; i += 2) {
                s0 += a[i] * b[i];
                s1 += a[i + 1] * b[i + 1];
            }
            return s0 + s1;
        }
    }

    /** The ink in coarse steps: the same letter drawn again, elsewhere, has the same. */
    record Print(byte[] ink, int hash) {

        @Override
        public boolean equals(Object other) {
            return other instanceof Print p && hash == p.hash && Arrays.equals(ink, p.ink);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    Print print() {
        byte[] steps = new byte[ink.length];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = (byte) (ink[i] * 125 + 0.5f);
        }
        return new Print(steps, Arrays.hashCode(steps));
    }

    /** How strong the ink of each direction is, in the upper and the lower half. */
    double[] ways() {
        double[] ways = new double[2 * DIRECTIONS];
        int half = CELLS * CELLS / 2;
        for (int i = 0; i < ink.length; i++) {
            int direction = i / (CELLS * CELLS);
            ways[2 * direction + (i % (CELLS * CELLS) > half ? 1 : 0)] += ink[i] * ink[i];
        }
        for (int i = 0; i < ways.length; i++) {
            ways[i] = Math.sqrt(ways[i]);
        }
        return ways;
    }

    Outline outline() {
        float[] rows = new float[DIRECTIONS * CELLS];
        float[] columns = new float[DIRECTIONS * CELLS];
        for (int i = 0; i < ink.length; i++) {
            int direction = i / (CELLS * CELLS);
            rows[i / CELLS] += ink[i] * ink[i];
            columns[direction * CELLS + i % CELLS] += ink[i] * ink[i];
        }
        for (int i = 0; i < rows.length; i++) {
            rows[i] = (float) Math.sqrt(rows[i]);
            columns[i] = (float) Math.sqrt(columns[i]);
        }
        return new Outline(rows, columns);
    }

    private static void draw(float[] ink, double x0, double y0, double x1, double y1) {
        double length = Math.sqrt((x1 - x0) * (x1 - x0) + (y1 - y0) * (y1 - y0));
        if (length == 0) {
            return;
        }
        double turn = Math.atan2(y1 - y0, x1 - x0) / Math.PI * DIRECTIONS;
        turn = (turn % DIRECTIONS + DIRECTIONS) % DIRECTIONS;
        int d = (int) turn % DIRECTIONS;
        double between = turn - Math.floor(turn);
        int steps = Math.max(1, (int) Math.ceil(length / STEP));
        double part = length / steps;
        for (int i = 0; i < steps; i++) {
            double t = (i + 0.5) / steps;
            double x = x0 + t * (x1 - x0);
            double y = y0 + t * (y1 - y0);
            splat(ink, d, x, y, part * (1 - between));
            splat(ink, (d + 1) % DIRECTIONS, x, y, part * between);
        }
    }

    private static void splat(float[] ink, int direction, double x, double y, double amount) {
        double gx = Math.max(0, Math.min(1, x)) * (CELLS - 1);
        double gy = Math.max(0, Math.min(1, y)) * (CELLS - 1);
        int ix = Math.min(CELLS - 2, (int) gx);
        int iy = Math.min(CELLS - 2, (int) gy);
        double fx = gx - ix;
        double fy = gy - iy;
        int at = direction * CELLS * CELLS + iy * CELLS + ix;
        ink[at] += (float) (amount * (1 - fx) * (1 - fy));
        ink[at + 1] += (float) (amount * fx * (1 - fy));
        ink[at + CELLS] += (float) (amount * (1 - fx) * fy);
        ink[at + CELLS + 1] += (float) (amount * fx * fy);
    }

    private static float[] unit(float[] ink) {
        double sum = 0;
        for (int i = 0; i < ink.length; i++) {
            ink[i] = (float) Math.sqrt(ink[i]);
            sum += ink[i] * ink[i];
        }
        float scale = sum == 0 ? 0 : (float) (1 / Math.sqrt(sum));
        for (int i = 0; i < ink.length; i++) {
            ink[i] *= scale;
        }
        return ink;
    }
}
