// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.probeleaf.waveform.plot.PlotCursor;

/** Two times that a person marks, A and B, of which the one moved last goes with the keys. */
final class Cursors {

    private static final String[] NAMES = {"A", "B"};

    private final double[] at = {Double.NaN, Double.NaN};
    private int active;

    /** The time of a cursor in seconds, NaN where it is not put; 0 is A, 1 is B. */
    double at(int index) {
        return at[index];
    }

    /** The cursor that goes with the keys. */
    int active() {
        return active;
    }

    /** Lets another go with the keys. */
    void activate(int index) {
        active = index;
    }

    /** Puts a cursor, which then goes with the keys. */
    void put(int index, double seconds) {
        at[index] = seconds;
        active = index;
    }

    /** Takes both away. */
    void clear() {
        Arrays.fill(at, Double.NaN);
        active = 0;
    }

    /** Moves the active one; where it is not put yet, it comes to a place first. */
    void step(double by, double first) {
        put(active, (Double.isNaN(at[active]) ? first : at[active]) + by);
    }

    /** The cursor nearest to a time, -1 where none is as near as said. */
    int near(double seconds, double within) {
        int found = -1;
        double nearest = within;
        for (int i = 0; i < at.length; i++) {
            double off = Math.abs(at[i] - seconds);
            if (off <= nearest) {
                found = i;
                nearest = off;
            }
        }
        return found;
    }

    /** Those that are put, for the plot. */
    List<PlotCursor> put() {
        List<PlotCursor> put = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            if (!Double.isNaN(at[i])) {
                put.add(new PlotCursor(NAMES[i], at[i]));
            }
        }
        return put;
    }

    /**
     * The edge next to a time.
     *
     * @param edges    in seconds, in order
     * @param later    the next one, else the one before
     * @return NaN where there is none
     */
    static double edge(double[] edges, double seconds, boolean later) {
        double hair = 1e-9 * Math.abs(seconds);
        int found = Arrays.binarySearch(edges, later ? seconds + hair : seconds - hair);
        int next = found >= 0 ? found + (later ? 1 : -1) : later ? -found - 1 : -found - 2;
        return next >= 0 && next < edges.length ? edges[next] : Double.NaN;
    }

    /** The edge nearest to a time, or the time itself where none is as near as said. */
    static double snapped(double[] edges, double seconds, double within) {
        int i = Arrays.binarySearch(edges, seconds);
        if (i >= 0) {
            return seconds;
        }
        double best = seconds;
        double nearest = within;
        for (int k = Math.max(0, -i - 2); k <= Math.min(edges.length - 1, -i - 1); k++) {
            if (Math.abs(edges[k] - seconds) <= nearest) {
                nearest = Math.abs(edges[k] - seconds);
                best = edges[k];
            }
        }
        return best;
    }
}
