// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.capture;

import java.util.Arrays;

/** When the samples of a channel were taken, in seconds. */
public sealed interface TimeBase {

    /** The time of a sample, in seconds. */
    double at(int index);

    /** The usual distance of two samples, in seconds: their median; NaN where there are fewer than two. */
    double interval();

    /** The index of the last sample at or before a time; -1 before the first. */
    int indexAt(double seconds);

    /**
     * Samples at even distances.
     *
     * @param start    time of the first, in seconds
     * @param interval distance, in seconds; above zero
     * @param size     how many
     */
    record Uniform(double start, double interval, int size) implements TimeBase {

        public Uniform {
            if (!(interval > 0) || !Double.isFinite(start) || !Double.isFinite(interval)) {
                throw new IllegalArgumentException("the distance of samples must be a time above zero");
            }
        }

        @Override
        public double at(int index) {
            return start + index * interval;
        }

        @Override
        public int indexAt(double seconds) {
            return (int) Math.max(-1, Math.min(size - 1, Math.floor((seconds - start) / interval + 1e-9)));
        }
    }

    /** Samples with a time stamp each. */
    final class Stamped implements TimeBase {

        private final double[] times;
        private final double interval;

        /**
         * @param times in seconds, never falling; not copied, must not be changed any more
         */
        public Stamped(double[] times) {
            this.times = times;
            double[] steps = new double[Math.max(0, times.length - 1)];
            for (int i = 0; i < steps.length; i++) {
                steps[i] = times[i + 1] - times[i];
                if (!(steps[i] >= 0)) {
                    throw new IllegalArgumentException("time runs backwards after sample " + (i + 1));
                }
            }
            Arrays.sort(steps);
            interval = steps.length == 0 ? Double.NaN : steps[steps.length / 2];
        }

        @Override
        public double at(int index) {
            return times[index];
        }

        @Override
        public double interval() {
            return interval;
        }

        @Override
        public int indexAt(double seconds) {
            int found = Arrays.binarySearch(times, seconds);
            return found >= 0 ? found : -found - 2;
        }
    }
}
