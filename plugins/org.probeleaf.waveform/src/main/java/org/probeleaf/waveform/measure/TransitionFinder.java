// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;
import org.probeleaf.waveform.measure.Crossings.Instant;

/** Takes the figures of single transitions. */
final class TransitionFinder {

    /** Aberrations are looked for so many transition durations after a transition (IEEE Std 181's default, from memory). */
    private static final double REGION = 3;

    private final Samples samples;
    private final TimeBase times;
    private final Edges edges;
    private final StateLevels levels;
    private final Crossings crossings;
    private final double margin;
    private final double nearPercent;

    /**
     * @param nearPercent the reference level near the lower state, 10 as a rule
     */
    TransitionFinder(Channel channel, Edges edges, StateLevels levels, Noise noise, double nearPercent) {
        samples = channel.samples();
        times = channel.times();
        this.edges = edges;
        this.levels = levels;
        this.nearPercent = nearPercent;
        crossings = new Crossings(channel, noise);
        margin = Math.min(2.5 * noise.sigma(), 0.08 * levels.amplitude());
    }

    /** When an edge passes 50 %. */
    Instant middle(int edge) {
        return crossings.between(levels.reference(50), edges.before(edge), edges.after(edge),
                Math.max(levels.lowUnsure(), levels.highUnsure()));
    }

    /** All figures of an edge. */
    Transition transition(int edge) {
        boolean rises = edges.rises(edge);
        Instant middle = middle(edge);
        double first = levels.reference(rises ? nearPercent : 100 - nearPercent);
        double second = levels.reference(rises ? 100 - nearPercent : nearPercent);
        int from = outwards(edges.before(edge), -1, first, rises ? -1 : 1);
        int to = outwards(edges.after(edge), 1, second, rises ? 1 : -1);
        Instant start = from < 0 ? Instant.NONE : crossings.between(first, from, edges.after(edge),
                rises ? levels.lowUnsure() : levels.highUnsure());
        Instant end = to < 0 ? Instant.NONE : crossings.between(second, edges.before(edge), to,
                rises ? levels.highUnsure() : levels.lowUnsure());
        double[] beyond = beyond(edge, start, end);
        return new Transition(rises, start.at(), middle.at(), end.at(), start.unsure() + end.unsure(), middle.unsure(),
                beyond[0], beyond[1]);
    }

    /**
     * The first sample, going outwards, that lies clearly beyond a level.
     *
     * @param side 1 for above, -1 for below
     * @return its index, or -1 where the waveform turns back or the capture ends before that
     */
    private int outwards(int from, int direction, double level, int side) {
        double middle = levels.reference(50);
        int plain = -1;
        for (int i = from; i >= 0 && i < samples.size(); i += direction) {
            double v = samples.get(i);
            if ((v - level) * side >= 0 && plain < 0) {
                plain = i;
            }
            if ((v - level) * side >= margin) {
                return i;
            }
            if ((v - middle) * side < 0) {
                return plain;
            }
        }
        return plain;
    }

    /**
     * How far the waveform goes above and below the level it came to, until the region or the state ends. A swing that
     * has begun at the end of the region is seen to its end. What is short of the level counts only once the level has
     * been reached, or the edge itself would count.
     */
    private double[] beyond(int edge, Instant start, Instant end) {
        if (!start.known() || !end.known()) {
            return new double[] {Double.NaN, Double.NaN};
        }
        double until = end.at() + REGION * Math.max(end.at() - start.at(), 2 * times.interval());
        int side = edges.rises(edge) ? 1 : -1;
        double level = side > 0 ? levels.high() : levels.low();
        int last = lastSettled(edge, level, side);
        double over = 0;
        double back = 0;
        double before = 0;
        boolean reached = false;
        for (int i = edges.after(edge); i <= last; i++) {
            double off = (samples.get(i) - level) * side;
            if (times.at(i) > until && Math.signum(off) != Math.signum(before)) {
                break;
            }
            reached |= off >= 0;
            over = Math.max(over, off);
            back = reached ? Math.max(back, -off) : back;
            before = Double.isNaN(off) ? before : off;
        }
        return side > 0 ? new double[] {over, back} : new double[] {back, over};
    }

    /** The last sample of the state after an edge that is not yet part of the next transition. */
    private int lastSettled(int edge, double level, int side) {
        if (edge + 1 >= edges.count()) {
            return samples.size() - 1;
        }
        int i = edges.before(edge + 1);
        while (i > edges.after(edge) && !((samples.get(i) - level) * side >= 0)) {
            i--;
        }
        return i;
    }
}
