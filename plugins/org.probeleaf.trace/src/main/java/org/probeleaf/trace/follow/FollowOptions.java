// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

/**
 * What a signal is followed through, which way, and how far.
 *
 * @param flow    which way
 * @param series  through resistors, capacitors, coils, diodes, fuses, links, contacts, mating connectors
 * @param gates   through sections of chips that the part book knows, and through transistors
 * @param enables also from the enables of three-state outputs to these outputs; only with {@code gates}
 * @param fanOut  the most places to which it is followed from one net, at least 1; the first net is followed anyway
 * @param depth   the most parts it is followed through in a row, at least 0
 * @param nets    the most nets that are shown, at least 1
 */
public record FollowOptions(Flow flow, boolean series, boolean gates, boolean enables, int fanOut, int depth,
        int nets) {

    private static final int FAN_OUT = 16;
    private static final int DEPTH = 24;
    private static final int NETS = 400;

    public FollowOptions {
        if (fanOut < 1 || depth < 0 || nets < 1) {
            throw new IllegalArgumentException("fan-out and nets are at least 1, depth is at least 0");
        }
        depth = Math.min(depth, nets);
    }

    /** Downstream, through everything but enables, with the usual limits. */
    public static FollowOptions all() {
        return new FollowOptions(Flow.DOWNSTREAM, true, true, false, FAN_OUT, DEPTH, NETS);
    }

    /** Downstream, through passive parts only, with the usual limits. */
    public static FollowOptions seriesOnly() {
        return all().withGates(false);
    }

    /** Downstream, through nothing: the net alone. */
    public static FollowOptions netOnly() {
        return seriesOnly().withSeries(false);
    }

    public FollowOptions with(Flow other) {
        return new FollowOptions(other, series, gates, enables, fanOut, depth, nets);
    }

    public FollowOptions withSeries(boolean on) {
        return new FollowOptions(flow, on, gates, enables, fanOut, depth, nets);
    }

    public FollowOptions withGates(boolean on) {
        return new FollowOptions(flow, series, on, enables, fanOut, depth, nets);
    }

    public FollowOptions withEnables(boolean on) {
        return new FollowOptions(flow, series, gates, on, fanOut, depth, nets);
    }

    /** The same with other limits; see the record's components. */
    public FollowOptions withLimits(int mostPlaces, int mostParts, int mostNets) {
        return new FollowOptions(flow, series, gates, enables, mostPlaces, mostParts, mostNets);
    }

    /** Whether ways of this kind are followed. */
    public boolean takes(StepKind kind) {
        return switch (kind) {
            case SERIES -> series;
            case TRANSISTOR, GATE, CONTROL -> gates;
            case ENABLE -> gates && enables;
        };
    }
}
