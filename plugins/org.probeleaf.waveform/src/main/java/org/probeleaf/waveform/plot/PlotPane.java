// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.List;

/**
 * One of the rectangles of a plot, which lie one below the other over the same time.
 *
 * @param weight its share of the height, against the other panes that are no lanes
 * @param low    the value at the bottom
 * @param high   the value at the top, greater than {@code low}
 * @param lane   whether it is a line of logic states: low, with its name at the side and no scale
 * @param traces in the order of their names at the top
 * @param levels values drawn across
 * @param bands  values shaded across
 * @param mask   the tolerance about a reference, or null
 */
public record PlotPane(double weight, double low, double high, boolean lane, List<PlotTrace> traces,
        List<PlotLevel> levels, List<PlotBand> bands, PlotMask mask) {

    private static final double ROOM = 0.06;

    public PlotPane {
        if (!(high > low)) {
            throw new IllegalArgumentException("a pane needs room: " + low + " to " + high);
        }
        traces = List.copyOf(traces);
        levels = List.copyOf(levels);
        bands = List.copyOf(bands);
    }

    /** A pane of traces with room for all of their values and for the levels. */
    public static PlotPane of(List<PlotTrace> traces, List<PlotLevel> levels) {
        PlotWindow all = Plot.whole(traces);
        double room = (all.high() - all.low()) * ROOM;
        double low = levels.stream().mapToDouble(l -> l.value() - room).reduce(all.low(), Math::min);
        double high = levels.stream().mapToDouble(l -> l.value() + room).reduce(all.high(), Math::max);
        return new PlotPane(1, low, high, false, traces, levels, List.of(), null);
    }

    /** A line of logic states: 0 is low, 1 high, a half let go, NaN unknown. */
    public static PlotPane lane(PlotTrace trace) {
        return new PlotPane(1, -0.2, 1.2, true, List.of(trace), List.of(), List.of(), null);
    }

    /** The same with other values at bottom and top. */
    public PlotPane between(double otherLow, double otherHigh) {
        return new PlotPane(weight, otherLow, otherHigh, lane, traces, levels, bands, mask);
    }

    /** The same, as high against others as said. */
    public PlotPane weighing(double other) {
        return new PlotPane(other, low, high, lane, traces, levels, bands, mask);
    }

    /** The same with values shaded across. */
    public PlotPane with(List<PlotBand> otherBands) {
        return new PlotPane(weight, low, high, lane, traces, levels, otherBands, mask);
    }

    /** The same with the tolerance about a reference. */
    public PlotPane with(PlotMask other) {
        return new PlotPane(weight, low, high, lane, traces, levels, bands, other);
    }

    /** The unit of all traces, or none where they have several. */
    String unit() {
        List<String> units = traces.stream().map(t -> t.channel().unit()).distinct().toList();
        return units.size() == 1 ? units.get(0) : "";
    }
}
