// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.judge;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;

/**
 * The zones that a signal is in, one after another: low, between, high. A margin for noise keeps it in the zone where it is
 * until it has clearly left it.
 */
final class Visits {

    static final int LOW = -1;
    static final int BETWEEN = 0;
    static final int HIGH = 1;
    private static final int MOST = 200_000;

    private final List<Visit> visits = new ArrayList<>();
    private final double[] time = new double[3];
    private boolean cut;

    private Visits() {
    }

    /**
     * A stay in a zone.
     *
     * @param zone where
     * @param from first sample
     * @param to   last sample
     * @param min  least value in it
     * @param max  greatest value in it
     */
    record Visit(int zone, int from, int to, double min, double max) {

        int samples() {
            return to - from + 1;
        }
    }

    static Visits of(Channel channel, double low, double high, double noise) {
        Visits all = new Visits();
        Samples s = channel.samples();
        int zone = Integer.MIN_VALUE;
        int from = 0;
        double min = Double.POSITIVE_INFINITY;
        double max = Double.NEGATIVE_INFINITY;
        int last = -1;
        for (int i = 0; i < s.size(); i++) {
            double v = s.get(i);
            if (Double.isNaN(v)) {
                continue;
            }
            int now = zone(v, low + (zone == LOW ? noise : 0) - (zone != LOW ? noise : 0),
                    high - (zone == HIGH ? noise : 0) + (zone != HIGH ? noise : 0), low, high, zone);
            if (now != zone && last >= 0) {
                all.add(channel, new Visit(zone, from, last, min, max), i);
                from = i;
                min = v;
                max = v;
            }
            zone = now;
            min = Math.min(min, v);
            max = Math.max(max, v);
            last = i;
        }
        if (last >= 0) {
            all.add(channel, new Visit(zone, from, last, min, max), last);
        }
        return all;
    }

    private static int zone(double v, double lowEdge, double highEdge, double low, double high, int before) {
        if (before == Integer.MIN_VALUE) {
            return v <= low ? LOW : v >= high ? HIGH : BETWEEN;
        }
        if (low == high) {
            // A plain threshold has no zone between: it stays where it was until it is clearly beyond.
            return before == LOW ? v > lowEdge ? HIGH : LOW : v < highEdge ? LOW : HIGH;
        }
        return v <= lowEdge ? LOW : v >= highEdge ? HIGH : BETWEEN;
    }

    private void add(Channel channel, Visit visit, int next) {
        time[visit.zone + 1] += channel.times().at(next) - channel.times().at(visit.from);
        if (visits.size() < MOST) {
            visits.add(visit);
        } else {
            cut = true;
        }
    }

    List<Visit> list() {
        return visits;
    }

    /** Whether there were too many to keep them all. */
    boolean cut() {
        return cut;
    }

    /** The share of the time in a zone, 0 to 1; of a single sample 1. */
    double share(int zone) {
        double all = time[0] + time[1] + time[2];
        return all > 0 ? time[zone + 1] / all : visits.isEmpty() || visits.get(0).zone != zone ? 0 : 1;
    }
}
