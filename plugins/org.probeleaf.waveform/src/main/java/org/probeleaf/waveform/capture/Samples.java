// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.capture;

/** A row of values that nobody changes. A value that is missing is NaN. */
public sealed interface Samples {

    /** How many there are. */
    int size();

    /** The value at an index. */
    double get(int index);

    /** The values held exactly; the array is not copied and must not be changed any more. */
    static Samples of(double... values) {
        return new Exact(values);
    }

    /** The values held in half the room, with seven digits; the array must not be changed any more. */
    static Samples of(float[] values) {
        return new Compact(values);
    }

    /** A copy as an array. */
    default double[] toArray() {
        double[] all = new double[size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = get(i);
        }
        return all;
    }

    /** Held as doubles. */
    final class Exact implements Samples {

        private final double[] values;

        private Exact(double[] values) {
            this.values = values;
        }

        @Override
        public int size() {
            return values.length;
        }

        @Override
        public double get(int index) {
            return values[index];
        }
    }

    /** Held as floats: a converter of a scope has 16 bits at most, a float 24. */
    final class Compact implements Samples {

        private final float[] values;

        private Compact(float[] values) {
            this.values = values;
        }

        @Override
        public int size() {
            return values.length;
        }

        @Override
        public double get(int index) {
            return values[index];
        }
    }
}
