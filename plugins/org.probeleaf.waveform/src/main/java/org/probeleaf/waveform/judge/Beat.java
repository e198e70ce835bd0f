// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.judge;

import java.util.Arrays;

/**
 * The beat of edges: whether it is even, and what is left out.
 *
 * @param even    whether all periods are about the same
 * @param usual   the usual period, in seconds; NaN where there is none
 * @param missing how many beats are left out of an otherwise even beat
 * @param longest the longest gap, in seconds
 */
record Beat(boolean even, double usual, int missing, double longest) {

    private static final double NEAR = 0.15;
    private static final double MOST = 0.6;
    private static final int FEW = 4;

    /** Of 50 % instants, rising and falling by turns, in seconds. */
    static Beat of(double[] instants) {
        int n = Math.max(0, (instants.length - 1) / 2);
        if (n == 0) {
            return new Beat(false, Double.NaN, 0, 0);
        }
        Beat one = like(instants, 0);
        Beat other = like(instants, 1);
        return other.missing > one.missing ? other : one;
    }

    private static Beat like(double[] instants, int from) {
        int n = Math.max(0, (instants.length - from - 1) / 2);
        double[] p = new double[n];
        for (int i = 0; i < n; i++) {
            p[i] = instants[from + 2 * i + 2] - instants[from + 2 * i];
        }
        if (n == 0) {
            return new Beat(false, Double.NaN, 0, 0);
        }
        double[] sorted = p.clone();
        Arrays.sort(sorted);
        double usual = sorted[n / 2];
        int near = 0;
        int missing = 0;
        for (double x : p) {
            double beats = x / usual;
            near += Math.abs(beats - 1) <= NEAR ? 1 : 0;
            boolean whole = beats > 1.5 && Math.abs(beats - Math.rint(beats)) <= NEAR;
            missing += whole ? (int) Math.min(1_000_000, Math.rint(beats) - 1) : 0;
        }
        boolean even = sorted[n - 1] - sorted[0] <= 2 * NEAR * usual;
        return new Beat(even, usual, n >= FEW && near >= MOST * n ? missing : 0, sorted[n - 1]);
    }
}
