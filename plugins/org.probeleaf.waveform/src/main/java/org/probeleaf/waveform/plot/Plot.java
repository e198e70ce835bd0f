// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.plot.PlotShape.Lean;
import org.probeleaf.waveform.plot.PlotShape.Line;
import org.probeleaf.waveform.plot.PlotShape.Words;

/**
 * A plot of one or several traces over the same time. Immutable; {@link #shapes} says what is to be painted.
 *
 * @param width   in units of its own: pixels of a screen, points of a page
 * @param height  in the same
 * @param window  what is shown
 * @param traces  in the order of their names at the top
 * @param levels  values drawn across
 * @param cursors times drawn down, in seconds
 * @param bare    without scales and names: a thumbnail
 */
public record Plot(double width, double height, PlotWindow window, List<PlotTrace> traces, List<PlotLevel> levels,
        List<Double> cursors, boolean bare) {

    private static final double LEFT = 62;
    private static final double RIGHT = 12;
    private static final double TOP = 24;
    private static final double BOTTOM = 26;
    private static final double EDGE = 2;
    /** Room that the words at an axis take, along it. */
    private static final double TIME_WORDS = 90;
    private static final double VALUE_WORDS = 34;
    /** A letter is about so wide. */
    private static final double LETTER = 6.2;

    public Plot {
        traces = List.copyOf(traces);
        levels = List.copyOf(levels);
        cursors = List.copyOf(cursors);
    }

    /** A small picture of one trace, without scales. */
    public static Plot thumbnail(PlotTrace trace, double width, double height) {
        return new Plot(width, height, trace.whole(), List.of(trace), List.of(), List.of(), true);
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

    /** Where the traces are drawn. */
    public PlotFrame frame() {
        return bare ? new PlotFrame(window, EDGE, EDGE, width - EDGE, height - EDGE)
                : new PlotFrame(window, LEFT, TOP, Math.max(LEFT + 10, width - RIGHT),
                        Math.max(TOP + 10, height - BOTTOM));
    }

    /** Everything to paint, from the back to the front. */
    public List<PlotShape> shapes() {
        List<PlotShape> all = new ArrayList<>();
        PlotFrame f = frame();
        if (!bare) {
            scales(all, f);
        }
        for (PlotTrace trace : traces) {
            all.addAll(new TraceLine(f, trace).shapes());
        }
        for (PlotLevel level : levels) {
            level(all, f, level);
        }
        for (double cursor : cursors) {
            if (cursor >= window.from() && cursor <= window.to()) {
                all.add(line(f.x(cursor), f.top(), f.x(cursor), f.bottom(), Ink.CURSOR));
            }
        }
        if (!bare) {
            all.add(new Line(new double[] {f.left(), f.top(), f.right(), f.top(), f.right(), f.bottom(), f.left(),
                f.bottom(), f.left(), f.top()}, Ink.FRAME));
            names(all, f);
        }
        return all;
    }

    private void scales(List<PlotShape> all, PlotFrame f) {
        Ticks times = new Ticks(window.from(), window.to(), (int) Math.max(1, f.width() / TIME_WORDS), "s");
        for (double t : times.values()) {
            double x = f.x(t);
            all.add(line(x, f.top(), x, f.bottom(), Ink.GRID));
            all.add(new Words(x, f.bottom() + 12, times.words(t), Lean.MIDDLE, false, Ink.SCALE));
        }
        Ticks values = new Ticks(window.low(), window.high(), (int) Math.max(1, f.height() / VALUE_WORDS), unit());
        for (double v : values.values()) {
            double y = f.y(v);
            all.add(line(f.left(), y, f.right(), y, Ink.GRID));
            all.add(new Words(f.left() - 6, y, values.words(v), Lean.END, false, Ink.SCALE));
        }
    }

    /** The unit of all traces, or none where they have several. */
    private String unit() {
        List<String> units = traces.stream().map(t -> t.channel().unit()).distinct().toList();
        return units.size() == 1 ? units.get(0) : "";
    }

    private void level(List<PlotShape> all, PlotFrame f, PlotLevel level) {
        if (level.value() >= window.low() && level.value() <= window.high()) {
            double y = f.y(level.value());
            all.add(line(f.left(), y, f.right(), y, Ink.LEVEL));
            if (!bare) {
                all.add(new Words(f.right() - 4, y - 7, level.words(), Lean.END, false, Ink.LEVEL));
            }
        }
    }

    /** Each trace's name with a piece of its line. */
    private void names(List<PlotShape> all, PlotFrame f) {
        double x = f.left();
        for (PlotTrace trace : traces) {
            all.add(line(x, TOP / 2, x + 22, TOP / 2, trace.ink()));
            all.add(new Words(x + 28, TOP / 2, trace.title(), Lean.START, true, trace.ink()));
            x += 28 + trace.title().length() * LETTER + 22;
        }
    }

    private static Line line(double x1, double y1, double x2, double y2, Ink ink) {
        return new Line(new double[] {x1, y1, x2, y2}, ink);
    }
}
