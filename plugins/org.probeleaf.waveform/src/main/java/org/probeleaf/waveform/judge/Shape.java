// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.judge;

import java.util.List;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.judge.Visits.Visit;
import org.probeleaf.waveform.measure.Measures;

/**
 * What is odd in the way a signal goes from zone to zone.
 *
 * @param runts      pulses that turn back between the zones
 * @param firstRunt  when the first of them is, in seconds; NaN where there is none
 * @param turned     how far that one got, in volts
 * @param rings      swings into the zone between, or over it, soon after an edge
 * @param plateaus   stays at a level between the zones
 * @param plateau    the level of the longest of them, in volts
 * @param plateauFor how long that lasts, in seconds
 */
record Shape(int runts, double firstRunt, double turned, int rings, int plateaus, double plateau, double plateauFor) {

    /** A pulse that turns back counts from this share of the way on. */
    private static final double ON_ITS_WAY = 0.3;
    private static final double REGION = 8;
    private static final int DWELLS = 4;
    private static final double FLAT = 0.35;

    static Shape of(Channel channel, Visits visits, Measures measures, double low, double high) {
        List<Visit> all = visits.list();
        double edge = edge(measures, channel);
        int runts = 0;
        int rings = 0;
        int plateaus = 0;
        double first = Double.NaN;
        double turned = Double.NaN;
        double plateau = Double.NaN;
        double longest = 0;
        double arrived = Double.NEGATIVE_INFINITY;
        for (int i = 1; i + 1 < all.size(); i++) {
            Visit v = all.get(i);
            int before = all.get(i - 1).zone();
            int after = all.get(i + 1).zone();
            if (v.zone() != Visits.BETWEEN) {
                arrived = all.get(i - 1).zone() == Visits.BETWEEN && i >= 2 && all.get(i - 2).zone() == v.zone()
                        ? arrived : channel.times().at(v.from());
                continue;
            }
            double from = channel.times().at(v.from());
            double lasts = channel.times().at(v.to()) - from;
            double way = before == Visits.LOW ? (v.max() - low) / (high - low) : (high - v.min()) / (high - low);
            if (before == after && from - arrived <= REGION * edge) {
                // Each swing follows the one before it.
                arrived = from + lasts;
                rings += way >= ON_ITS_WAY / 2 ? 1 : 0;
            } else if (flat(channel, v, high - low) && v.samples() >= DWELLS && lasts > DWELLS * edge) {
                plateaus++;
                plateau = lasts > longest ? middle(channel, v) : plateau;
                longest = Math.max(longest, lasts);
            } else if (before == after && way >= ON_ITS_WAY) {
                first = runts == 0 ? from : first;
                turned = runts == 0 ? before == Visits.LOW ? v.max() : v.min() : turned;
                runts++;
            }
        }
        return new Shape(runts, first, turned, rings, plateaus, plateau, longest);
    }

    /** How long an edge takes, in seconds: as measured, a sample at least. */
    private static double edge(Measures m, Channel channel) {
        double rise = m.rise().known() ? m.rise().value() : 0;
        double fall = m.fall().known() ? m.fall().value() : 0;
        double interval = channel.times().interval();
        return Math.max(Math.max(rise, fall), Double.isNaN(interval) ? 0 : interval);
    }

    /** Whether the inner part of a stay keeps to a level. */
    private static boolean flat(Channel channel, Visit v, double band) {
        int skip = v.samples() / 4;
        double min = Double.POSITIVE_INFINITY;
        double max = Double.NEGATIVE_INFINITY;
        for (int i = v.from() + skip; i <= v.to() - skip; i++) {
            min = Math.min(min, channel.samples().get(i));
            max = Math.max(max, channel.samples().get(i));
        }
        return max - min <= FLAT * band;
    }

    private static double middle(Channel channel, Visit v) {
        return channel.samples().get((v.from() + v.to()) / 2);
    }
}
