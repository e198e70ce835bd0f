// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.format;

import java.util.Arrays;

import org.probeleaf.waveform.capture.TimeBase;

/**
 * Collects a column of times and tells at the end whether they are evenly spaced. Of very many only the first million are
 * kept while they are even.
 */
final class Clock {

    private static final int KEPT = 1 << 20;
    private static final double EVEN = 0.1;
    private static final double LEAP = 1.5;
    private static final double ROUNDED = 0.75;

    private double[] times = new double[1 << 10];
    private int size;
    private int kept;
    private double last = Double.NEGATIVE_INFINITY;
    private boolean dropping;
    private double interval;
    private boolean rounded;

    /** Takes the next time; false where it lies before the last one. */
    boolean add(double seconds) {
        if (seconds < last) {
            return false;
        }
        if (kept == KEPT && size == KEPT && fits(interval())) {
            dropping = true;
            interval = interval();
        }
        if (dropping && Math.abs(seconds - times[0] - size * interval) > 0.5 * interval) {
            restore();
        }
        if (!dropping) {
            if (kept == times.length) {
                times = Arrays.copyOf(times, kept * 2);
            }
            times[kept++] = seconds;
        }
        last = seconds;
        size++;
        return true;
    }

    /** The times that were dropped were even; they are made again. */
    private void restore() {
        dropping = false;
        int room = size + size / 2;
        double[] all = Arrays.copyOf(times, room);
        for (int i = kept; i < size; i++) {
            all[i] = times[0] + i * interval;
        }
        times = all;
        kept = size;
    }

    double last() {
        return last;
    }

    int size() {
        return size;
    }

    /** Whether the times were rounded so that their distances differ although the samples are even. */
    boolean rounded() {
        return rounded;
    }

    private double interval() {
        return (times[kept - 1] - times[0]) / (kept - 1);
    }

    /** Whether the kept times lie where even ones would, or as near as rounding leaves them. */
    private boolean fits(double step) {
        double worst = 0;
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = 1; i < kept; i++) {
            worst = Math.max(worst, Math.abs(times[i] - times[0] - i * step));
            least = Math.min(least, times[i] - times[i - 1]);
            most = Math.max(most, times[i] - times[i - 1]);
        }
        if (worst <= EVEN * step) {
            return true;
        }
        double quantum = most - least;
        rounded = worst <= ROUNDED * quantum && (twoSteps(least, most) || leaps(step));
        return rounded;
    }

    /** Rounding leaves distances of two lengths: so many steps of the last digit, and one more. */
    private boolean twoSteps(double least, double most) {
        double quanta = least / (most - least);
        double near = 0.01 * (most - least);
        if (Math.abs(quanta - Math.rint(quanta)) > 0.05) {
            return false;
        }
        for (int i = 1; i < kept; i++) {
            double d = times[i] - times[i - 1];
            if (d - least > near && most - d > near) {
                return false;
            }
        }
        return kept > 4;
    }

    /**
     * Times with a fixed number of digits get coarser as they grow: they stand still for some samples and then leap. A gap
     * is a leap with no standing still beside it.
     */
    private boolean leaps(double step) {
        boolean stood = false;
        for (int i = 1; i < kept; i++) {
            double d = times[i] - times[i - 1];
            boolean still = i > 1 && times[i - 1] == times[i - 2] || i + 1 < kept && times[i + 1] == times[i];
            stood |= d == 0;
            if (d > LEAP * step && !still) {
                return false;
            }
        }
        return stood;
    }

    /** The time base, or null where there are no two different times. */
    TimeBase build() {
        if (size < 2 || !(last > times[0])) {
            return null;
        }
        if (dropping) {
            return new TimeBase.Uniform(times[0], (last - times[0]) / (size - 1), size);
        }
        double step = interval();
        return fits(step) ? new TimeBase.Uniform(times[0], step, size) : new TimeBase.Stamped(Arrays.copyOf(times, size));
    }
}
