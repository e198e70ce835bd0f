// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.plot.PlotShape.Area;
import org.probeleaf.waveform.plot.PlotShape.Lean;
import org.probeleaf.waveform.plot.PlotShape.Line;
import org.probeleaf.waveform.plot.PlotShape.Words;

/**
 * A plot of traces over the same time, in one pane or several. Immutable; {@link #shapes} says what is to be painted.
 *
 * @param width   in units of its own: pixels of a screen, points of a page
 * @param height  in the same
 * @param from    the time at the left edge, in seconds
 * @param to      the time at the right edge, later than {@code from}
 * @param panes   from the top
 * @param cursors times drawn down
 * @param bare    without scales and names: a thumbnail
 */
public record Plot(double width, double height, double from, double to, List<PlotPane> panes, List<PlotCursor> cursors,
        boolean bare) {

    private static final double FLAG = 13;

    public Plot {
        if (!(to > from)) {
            throw new IllegalArgumentException("a plot needs room: " + from + " to " + to);
        }
        panes = List.copyOf(panes);
        cursors = List.copyOf(cursors);
    }

    /** A small picture of one trace, without scales. */
    public static Plot thumbnail(PlotTrace trace, double width, double height) {
        return bare(trace, trace.whole(), width, height);
    }

    /** One trace in a window, without scales. */
    public static Plot bare(PlotTrace trace, PlotWindow window, double width, double height) {
        PlotPane pane = PlotPane.of(List.of(trace), List.of()).between(window.low(), window.high());
        return new Plot(width, height, window.from(), window.to(), List.of(pane), List.of(), true);
    }

    /** All of several traces in one pane, with scales. */
    public static Plot of(List<PlotTrace> traces, List<PlotLevel> levels, double width, double height) {
        PlotWindow all = whole(traces);
        return new Plot(width, height, all.from(), all.to(), List.of(PlotPane.of(traces, levels)), List.of(), false);
    }

    /** The window that holds all of several traces. */
    public static PlotWindow whole(List<PlotTrace> traces) {
        PlotWindow all = null;
        for (PlotTrace trace : traces) {
            PlotWindow one = trace.whole();
            all = all == null ? one : new PlotWindow(Math.min(all.from(), one.from()), Math.max(all.to(), one.to()),
                    Math.min(all.low(), one.low()), Math.max(all.high(), one.high()));
        }
        return all == null ? new PlotWindow(0, 1e-6, 0, 1) : all;
    }

    /** Where the traces of each pane are drawn, in their order. */
    public List<PlotFrame> frames() {
        return new PaneLayout(this).frames();
    }

    /** Where the traces of the first pane are drawn; the times of all panes are the same. */
    public PlotFrame frame() {
        List<PlotFrame> frames = frames();
        return frames.isEmpty() ? new PlotFrame(new PlotWindow(from, to, 0, 1), 0, 0, width, height) : frames.get(0);
    }

    /** Everything to paint, from the back to the front. */
    public List<PlotShape> shapes() {
        List<PlotShape> all = new ArrayList<>();
        List<PlotFrame> frames = frames();
        for (int i = 0; i < panes.size(); i++) {
            boolean last = i == panes.size() - 1;
            PaneShapes.add(all, panes.get(i), frames.get(i), bare, last);
        }
        if (!frames.isEmpty()) {
            cursors.forEach(c -> cursor(all, c, frames.get(0), frames.get(frames.size() - 1)));
        }
        return all;
    }

    /** Down from a flag with its name, which stands above lanes: these have no room in them. */
    private void cursor(List<PlotShape> all, PlotCursor cursor, PlotFrame first, PlotFrame last) {
        if (cursor.at() < from || cursor.at() > to) {
            return;
        }
        double x = first.x(cursor.at());
        all.add(new Line(new double[] {x, first.top(), x, last.bottom()}, Ink.CURSOR));
        boolean right = x + FLAG <= first.right();
        double side = right ? x : x - FLAG;
        double top = panes.get(0).lane() ? first.top() - FLAG : first.top();
        all.add(Area.box(side, top, side + FLAG, top + FLAG, Ink.CURSOR));
        all.add(new Words(side + FLAG / 2, top + FLAG / 2, cursor.name(), Lean.MIDDLE, true, Ink.PAPER));
    }
}
