// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.List;

import org.probeleaf.waveform.plot.PlotShape.Area;
import org.probeleaf.waveform.plot.PlotShape.Lean;
import org.probeleaf.waveform.plot.PlotShape.Line;
import org.probeleaf.waveform.plot.PlotShape.Words;

/** What is painted of one pane, from the back to the front. */
final class PaneShapes {

    /** Room that the words at an axis take, along it. */
    private static final double TIME_WORDS = 90;
    private static final double VALUE_WORDS = 34;
    private static final double SAMPLE = 22;

    private final List<PlotShape> all;
    private final PlotPane pane;
    private final PlotFrame f;

    private PaneShapes(List<PlotShape> all, PlotPane pane, PlotFrame frame) {
        this.all = all;
        this.pane = pane;
        this.f = frame;
    }

    /** @param last whether the words of the times stand below it */
    static void add(List<PlotShape> all, PlotPane pane, PlotFrame frame, boolean bare, boolean last) {
        new PaneShapes(all, pane, frame).add(bare, last);
    }

    private void add(boolean bare, boolean last) {
        pane.bands().forEach(this::band);
        if (pane.mask() != null) {
            all.addAll(MaskShapes.band(pane.mask(), f));
        }
        if (!bare) {
            times(last);
            if (!pane.lane()) {
                values();
            }
        }
        for (PlotLevel level : pane.levels()) {
            if (level.value() >= f.window().low() && level.value() <= f.window().high()) {
                all.add(line(f.left(), f.y(level.value()), f.right(), f.y(level.value()), level.ink()));
            }
        }
        for (PlotTrace trace : pane.traces()) {
            all.addAll(new TraceLine(f, trace, pane.lane()).shapes());
        }
        if (pane.mask() != null) {
            all.addAll(MaskShapes.outside(pane.mask(), f));
        }
        if (!bare) {
            edge();
        }
    }

    private void band(PlotBand band) {
        double low = Math.max(f.window().low(), band.low());
        double high = Math.min(f.window().high(), band.high());
        if (high > low) {
            all.add(Area.box(f.left(), f.y(high), f.right(), f.y(low), band.ink()));
        }
    }

    private void times(boolean words) {
        Ticks times = new Ticks(f.window().from(), f.window().to(), (int) Math.max(1, f.width() / TIME_WORDS), "s");
        for (double t : times.values()) {
            all.add(line(f.x(t), f.top(), f.x(t), f.bottom(), Ink.GRID));
            if (words) {
                all.add(new Words(f.x(t), f.bottom() + 12, times.words(t), Lean.MIDDLE, false, Ink.SCALE));
            }
        }
    }

    private void values() {
        Ticks values = new Ticks(f.window().low(), f.window().high(), (int) Math.max(1, f.height() / VALUE_WORDS),
                pane.unit());
        for (double v : values.values()) {
            all.add(line(f.left(), f.y(v), f.right(), f.y(v), Ink.GRID));
            all.add(new Words(f.left() - 6, f.y(v), values.words(v), Lean.END, false, Ink.SCALE));
        }
    }

    private void edge() {
        if (pane.lane()) {
            String name = pane.traces().isEmpty() ? "" : pane.traces().get(0).title();
            all.add(new Words(f.left() - 6, (f.top() + f.bottom()) / 2, name, Lean.END, true,
                    pane.traces().isEmpty() ? Ink.SCALE : pane.traces().get(0).ink()));
            return;
        }
        all.add(new Line(new double[] {f.left(), f.top(), f.right(), f.top(), f.right(), f.bottom(), f.left(),
            f.bottom(), f.left(), f.top()}, Ink.FRAME));
        all.addAll(GutterWords.of(pane.levels(), f));
        names();
    }

    /** Each trace's name with a piece of its line. */
    private void names() {
        double x = f.left();
        double y = f.top() - PaneLayout.HEAD + 10;
        for (PlotTrace trace : pane.traces()) {
            all.add(line(x, y, x + SAMPLE, y, trace.ink()));
            all.add(new Words(x + SAMPLE + 6, y, trace.title(), Lean.START, true, trace.ink()));
            x += SAMPLE + 6 + trace.title().length() * PaneLayout.LETTER + 22;
        }
    }

    private static Line line(double x1, double y1, double x2, double y2, Ink ink) {
        return new Line(new double[] {x1, y1, x2, y2}, ink);
    }
}
