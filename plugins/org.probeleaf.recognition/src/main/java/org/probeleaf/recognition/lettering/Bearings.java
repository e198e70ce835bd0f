// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How much room fonts leave before and after a letter, on the average, in capital heights. */
final class Bearings {

    private static final double USUAL = 0.1;

    private final Map<Character, double[]> room = new HashMap<>();

    /** From the letters of fonts. */
    static Bearings of(List<FontAlphabet.Sample> samples) {
        Map<Character, double[]> sums = new HashMap<>();
        for (FontAlphabet.Sample s : samples) {
            double from = Double.MAX_VALUE;
            double to = -Double.MAX_VALUE;
            for (double[][] line : s.outlines()) {
                for (double[] p : line) {
                    from = Math.min(from, p[0]);
                    to = Math.max(to, p[0]);
                }
            }
            double[] sum = sums.computeIfAbsent(s.letter(), k -> new double[3]);
            sum[0] += from;
            sum[1] += s.advance() - to;
            sum[2]++;
        }
        Bearings bearings = new Bearings();
        sums.forEach((letter, sum) -> bearings.put(letter, sum[0] / sum[2], sum[1] / sum[2]));
        return bearings;
    }

    void put(char letter, double before, double after) {
        room.put(letter, new double[] {before, after});
    }

    double before(char letter) {
        double[] r = room.get(letter);
        return r == null ? USUAL : r[0];
    }

    double after(char letter) {
        double[] r = room.get(letter);
        return r == null ? USUAL : r[1];
    }
}
