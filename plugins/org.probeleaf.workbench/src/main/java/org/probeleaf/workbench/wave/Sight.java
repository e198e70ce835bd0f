// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.PlotPane;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.waveform.plot.PlotWindow;

/** What of some panes is in sight: one stretch of time for all, and a stretch of values for each that was drawn apart. */
final class Sight {

    /** Nobody captures closer than this, in seconds. */
    private static final double SHORTEST = 1e-13;
    private static final double FARTHEST = 4;

    private List<PlotPane> panes = List.of();
    private PlotWindow all = Plot.whole(List.of());
    private double from = all.from();
    private double to = all.to();
    private final Map<Integer, double[]> values = new HashMap<>();

    /** Other panes; the sight stays, but for values where there are more or fewer panes than before. */
    void of(List<PlotPane> other) {
        if (other.size() != panes.size()) {
            values.clear();
        }
        panes = other;
        all = Plot.whole(other.stream().flatMap(p -> p.traces().stream()).toList());
    }

    /** All of it. */
    void showAll() {
        from = all.from();
        to = all.to();
        values.clear();
    }

    double from() {
        return from;
    }

    double to() {
        return to;
    }

    /** The panes as they are seen. */
    List<PlotPane> panes() {
        List<PlotPane> seen = new ArrayList<>();
        for (int i = 0; i < panes.size(); i++) {
            double[] range = values.get(i);
            seen.add(range == null ? panes.get(i) : panes.get(i).between(range[0], range[1]));
        }
        return seen;
    }

    /** Moves along by a share of what is seen; positive shows later times. */
    void move(double share) {
        show(from + share * (to - from), to + share * (to - from));
    }

    /** Shows some times, but never so that nothing of the traces is left in sight. */
    void show(double first, double last) {
        double length = last - first;
        double least = all.from() - 0.9 * length;
        double most = all.to() - 0.1 * length;
        from = Math.max(least, Math.min(most, first));
        to = from + length;
    }

    /** Draws apart about a time that stays where it is; a factor over 1 shows less. */
    void zoom(double factor, double about) {
        PlotWindow next = new PlotWindow(from, to, 0, 1).zoomed(factor, about);
        double length = next.to() - next.from();
        if (length > SHORTEST && length <= FARTHEST * (all.to() - all.from())) {
            show(next.from(), next.to());
        }
    }

    /** The same with the values of a pane. Lanes stay as they are. */
    void zoomValues(int pane, double factor, double about) {
        if (pane >= 0 && pane < panes.size() && !panes.get(pane).lane()) {
            PlotPane p = panes().get(pane);
            double low = about - (about - p.low()) / factor;
            double high = about + (p.high() - about) / factor;
            double whole = panes.get(pane).high() - panes.get(pane).low();
            if (high - low > 1e-6 * whole && high - low < 100 * whole) {
                values.put(pane, new double[] {low, high});
            }
        }
    }

    /** Moves a pane's values by a share of what is seen; positive shows higher ones. */
    void moveValues(int pane, double share) {
        if (pane >= 0 && pane < panes.size() && !panes.get(pane).lane()) {
            PlotPane p = panes().get(pane);
            double by = share * (p.high() - p.low());
            values.put(pane, new double[] {p.low() + by, p.high() + by});
        }
    }

    /** The traces of all panes. */
    List<PlotTrace> traces() {
        return panes.stream().flatMap(p -> p.traces().stream()).toList();
    }
}
