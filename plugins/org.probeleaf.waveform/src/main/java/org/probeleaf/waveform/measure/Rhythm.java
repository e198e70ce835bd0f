// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import java.util.Arrays;

/**
 * The beat of a waveform: its 50 % instants, as they come.
 *
 * @param instants   when each edge passes 50 %, in seconds, in order
 * @param unsure     uncertainty of each, in seconds
 * @param firstRises whether the first edge goes up; they alternate
 */
record Rhythm(double[] instants, double[] unsure, boolean firstRises) {

    /** Periods that differ by less than this share count as even. */
    private static final double EVEN = 0.25;
    private static final double NEAR = 0.1;
    private static final double MOST = 0.6;

    /** The direction of which there are more edges, rising where equal: its first edge. */
    private int first() {
        return firstRises || instants.length % 2 == 1 ? 0 : 1;
    }

    /** Distances of like edges, in seconds. */
    double[] periods() {
        int n = Math.max(0, (instants.length - first() - 1) / 2);
        double[] periods = new double[n];
        for (int i = 0; i < n; i++) {
            periods[i] = instants[first() + 2 * i + 2] - instants[first() + 2 * i];
        }
        return periods;
    }

    /** The first like edge, in seconds. */
    double from() {
        return instants[first()];
    }

    /** The last like edge, in seconds. */
    double to() {
        return instants[first() + 2 * periods().length];
    }

    /** Whether all periods are about the same. */
    boolean even() {
        double[] p = periods();
        Arrays.sort(p);
        return p.length > 0 && p[p.length - 1] - p[0] <= EVEN * p[p.length / 2] + 2 * worst();
    }

    private double worst() {
        double worst = 0;
        for (double u : unsure) {
            worst = Math.max(worst, u);
        }
        return worst;
    }

    /** The waveform period: the mean of even periods; of others their median, where most are near it. */
    Figure period() {
        double[] p = periods();
        if (p.length == 0) {
            return Figure.none(instants.length == 0 ? "it does not go from one level to the other"
                    : "the capture holds no whole period");
        }
        if (even()) {
            double ends = unsure[first()] + unsure[first() + 2 * p.length];
            return Figure.of((to() - from()) / p.length, ends / p.length);
        }
        double median = Noise.median(p.clone());
        long near = Arrays.stream(p).filter(x -> Math.abs(x - median) <= NEAR * median).count();
        if (near < MOST * p.length) {
            Arrays.sort(p);
            return Figure.none("its edges come at uneven distances, " + Si.text(p[0], "s") + " to "
                    + Si.text(p[p.length - 1], "s"));
        }
        return Figure.of(median, 2 * worst());
    }

    /** How many periods are not near the usual one. */
    int odd() {
        double[] p = periods();
        double median = Noise.median(p.clone());
        return (int) Arrays.stream(p).filter(x -> Math.abs(x - median) > EVEN * median + 2 * worst()).count();
    }

    /** The pulse duration, of positive pulses: the median where they differ, the mean where they do not. */
    Figure pulse() {
        return between(firstRises ? 0 : 1, "the capture holds no whole pulse");
    }

    /** The pulse separation: how long it stays low between pulses. */
    Figure separation() {
        return between(firstRises ? 1 : 0, "the capture holds no whole space between pulses");
    }

    private Figure between(int from, String none) {
        int n = Math.max(0, (instants.length - from) / 2);
        if (n == 0) {
            return Figure.none(instants.length == 0 ? "it does not go from one level to the other" : none);
        }
        double[] d = new double[n];
        double sum = 0;
        double worst = 0;
        for (int i = 0; i < n; i++) {
            d[i] = instants[from + 2 * i + 1] - instants[from + 2 * i];
            worst = Math.max(worst, unsure[from + 2 * i] + unsure[from + 2 * i + 1]);
            sum += d[i];
        }
        double median = Noise.median(d.clone());
        Arrays.sort(d);
        boolean alike = d[n - 1] - d[0] <= EVEN * median + 2 * worst;
        return Figure.of(alike ? sum / n : median, worst);
    }

    /** Duty factor: pulse duration by period. */
    Figure duty() {
        Figure period = period();
        Figure pulse = pulse();
        if (!period.known() || !pulse.known()) {
            return Figure.none(period.known() ? pulse.reason() : period.reason());
        }
        double duty = pulse.value() / period.value();
        return Figure.of(duty, (pulse.uncertainty() + duty * period.uncertainty()) / period.value());
    }
}
