// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.video;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;

/** The pulses below a level, with their edges between samples. */
final class SyncPulses {

    private static final double LINE_FROM = 3.2e-6;
    private static final double LINE_TO = 7.5e-6;
    private static final double BROAD = 12e-6;

    private SyncPulses() {
    }

    /**
     * A pulse.
     *
     * @param start when it falls through the level, in seconds
     * @param end   when it rises through it
     * @param first its first sample below the level
     * @param last  its last one
     */
    record Pulse(double start, double end, int first, int last) {

        double width() {
            return end - start;
        }

        /** As wide as line sync. */
        boolean line() {
            return width() >= LINE_FROM && width() <= LINE_TO;
        }

        /** Far wider than line sync: a part of field sync. */
        boolean broad() {
            return width() > BROAD;
        }
    }

    /** All whole pulses, in order. {@code margin} keeps noise from making two edges of one. */
    static List<Pulse> below(Channel channel, double level, double margin) {
        List<Pulse> pulses = new ArrayList<>();
        Samples s = channel.samples();
        boolean low = false;
        double start = Double.NaN;
        int first = 0;
        for (int i = 1; i < s.size(); i++) {
            double v = s.get(i);
            if (!low && v < level - margin) {
                low = true;
                int at = back(s, i, level, true);
                start = at < 1 ? Double.NaN : crossing(channel, at - 1, at, level);
                first = at;
            } else if (low && v > level + margin) {
                low = false;
                int at = back(s, i, level, false);
                if (!Double.isNaN(start)) {
                    pulses.add(new Pulse(start, crossing(channel, at - 1, at, level), first, at - 1));
                }
            }
        }
        return pulses;
    }

    /** The first sample on the new side of the level, going back from one that is clearly there. */
    private static int back(Samples s, int from, double level, boolean below) {
        int i = from;
        while (i > 0 && (below ? s.get(i - 1) < level : s.get(i - 1) >= level)) {
            i--;
        }
        return i;
    }

    private static double crossing(Channel channel, int a, int b, double level) {
        double va = channel.samples().get(a);
        double vb = channel.samples().get(b);
        double ta = channel.times().at(a);
        return va == vb ? ta : ta + (level - va) / (vb - va) * (channel.times().at(b) - ta);
    }
}
