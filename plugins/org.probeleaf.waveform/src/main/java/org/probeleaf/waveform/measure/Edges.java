// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import java.util.Arrays;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;

/**
 * Where a waveform goes from one state to the other. Rising and falling alternate. Between two states lies a band that
 * noise does not cross; an edge is taken when the waveform has left the band on the other side.
 */
final class Edges {

    private static final double BAND = 0.1;
    private static final double WIDEST = 0.35;

    private int[] before = new int[64];
    private int[] after = new int[64];
    private int count;
    private boolean firstRises;

    private Edges() {
    }

    static Edges of(Channel channel, StateLevels levels, Noise noise) {
        Edges edges = new Edges();
        Samples samples = channel.samples();
        double band = Math.min(WIDEST, Math.max(BAND, 3 * noise.sigma() / levels.amplitude())) * levels.amplitude();
        double middle = levels.reference(50);
        double up = middle + band;
        double down = middle - band;
        int state = 0;
        int last = 0;
        int n = samples.size();
        for (int i = 0; i < n; i++) {
            double v = samples.get(i);
            int now = v > up ? 1 : v < down ? -1 : 0;
            if (now != 0) {
                if (state != 0 && now != state) {
                    edges.add(last, i, now > 0);
                }
                state = now;
                last = i;
            }
        }
        return edges;
    }

    private void add(int from, int to, boolean rises) {
        if (count == 0) {
            firstRises = rises;
        }
        if (count == before.length) {
            before = Arrays.copyOf(before, count * 2);
            after = Arrays.copyOf(after, count * 2);
        }
        before[count] = from;
        after[count++] = to;
    }

    int count() {
        return count;
    }

    boolean rises(int edge) {
        return edge % 2 == 0 == firstRises;
    }

    /** The last sample in the old state. */
    int before(int edge) {
        return before[edge];
    }

    /** The first sample in the new state. */
    int after(int edge) {
        return after[edge];
    }
}
