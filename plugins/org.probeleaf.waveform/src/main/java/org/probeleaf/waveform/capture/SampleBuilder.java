// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.capture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Collects values one by one: exactly up to a million of them, and compactly from there on. Not for several threads. */
public final class SampleBuilder {

    /** Up to so many values are held exactly. */
    public static final int EXACT = 1 << 20;
    private static final int FIRST = 1 << 10;
    private static final int CHUNK = 1 << 16;

    private double[] exact = new double[FIRST];
    private List<float[]> chunks;
    private float[] last;
    private int inLast;
    private int size;

    /** Adds a value; NaN for one that is missing. */
    public void add(double value) {
        if (chunks == null) {
            if (size < exact.length) {
                exact[size++] = value;
                return;
            }
            grow();
            add(value);
            return;
        }
        if (inLast == CHUNK) {
            next();
        }
        last[inLast++] = (float) value;
        size++;
    }

    private void grow() {
        if (exact.length < EXACT) {
            exact = Arrays.copyOf(exact, Math.min(EXACT, exact.length * 2));
            return;
        }
        chunks = new ArrayList<>();
        next();
        double[] before = exact;
        exact = null;
        size = 0;
        for (double value : before) {
            add(value);
        }
    }

    private void next() {
        last = new float[CHUNK];
        inLast = 0;
        chunks.add(last);
    }

    /** How many were added. */
    public int size() {
        return size;
    }

    /** The values; the builder is not used after that. */
    public Samples build() {
        if (chunks == null) {
            return Samples.of(exact.length == size ? exact : Arrays.copyOf(exact, size));
        }
        float[] all = new float[size];
        for (int i = 0; i < chunks.size(); i++) {
            System.arraycopy(chunks.get(i), 0, all, i * CHUNK, Math.min(CHUNK, size - i * CHUNK));
            chunks.set(i, null);
        }
        return Samples.of(all);
    }
}
