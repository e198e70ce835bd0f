// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.waveform.compare.Overlay;
import org.probeleaf.waveform.judge.Thresholds;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.Si;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.PlotBand;
import org.probeleaf.waveform.plot.PlotLevel;
import org.probeleaf.waveform.plot.PlotMask;
import org.probeleaf.waveform.plot.PlotMask.Span;
import org.probeleaf.waveform.plot.PlotPane;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.workbench.session.LoadedTrace;

/**
 * The panes of a plot of a capture: traces of one unit over each other or each by itself, the one that is measured with its
 * levels and the reference, then the difference, then the lines of logic states.
 *
 * @param traces     those that are shown, in the order of the file
 * @param measured   the one that is measured; it may be none of them
 * @param stacked    whether each trace of values has a pane of its own
 * @param thresholds what the next stage needs, or null
 * @param reference  what is compared with, or null
 * @param overlay    how the two lie on each other, or null while that is not known
 * @param difference whether the difference is shown
 */
record PlotPanes(List<LoadedTrace> traces, LoadedTrace measured, boolean stacked, Thresholds thresholds, PlotTrace reference,
        Overlay overlay, boolean difference) {

    private static final double STRIP = 0.42;

    /** From the top. */
    List<PlotPane> panes() {
        List<PlotPane> panes = new ArrayList<>();
        for (List<LoadedTrace> together : groups()) {
            panes.add(together.contains(measured) ? measuredPane(together) : PlotPane.of(plots(together), List.of()));
        }
        if (difference && overlay != null && panes.size() > 0) {
            panes.add(strip());
        }
        traces.stream().filter(LoadedTrace::logic).forEach(t -> panes.add(PlotPane.lane(t.plot())));
        return panes;
    }

    private List<List<LoadedTrace>> groups() {
        Map<Object, List<LoadedTrace>> groups = new LinkedHashMap<>();
        for (LoadedTrace t : traces) {
            if (!t.logic()) {
                groups.computeIfAbsent(stacked ? t : t.unit(), k -> new ArrayList<>()).add(t);
            }
        }
        return List.copyOf(groups.values());
    }

    private static List<PlotTrace> plots(List<LoadedTrace> traces) {
        return traces.stream().map(LoadedTrace::plot).toList();
    }

    private PlotPane measuredPane(List<LoadedTrace> together) {
        List<PlotTrace> plots = new ArrayList<>();
        PlotTrace laid = reference == null || overlay == null ? null : reference.shiftedBy(overlay.laid());
        if (laid != null) {
            plots.add(laid);
        }
        plots.addAll(plots(together));
        PlotPane pane = PlotPane.of(plots, levels());
        if (thresholds != null && thresholds.band()) {
            pane = pane.with(List.of(new PlotBand(thresholds.low(), thresholds.high(), Ink.NEITHER)));
        }
        if (laid != null) {
            pane = pane.with(new PlotMask(laid, overlay.level(), overlay.time(), overlay.outside().stream()
                    .map(s -> new Span(s.from(), s.to())).toList()));
        }
        return pane;
    }

    private List<PlotLevel> levels() {
        List<PlotLevel> levels = new ArrayList<>();
        Measures m = measured.measures();
        if (m.levels() != null && m.levels().two()) {
            levels.add(new PlotLevel(m.levels().low(), "low " + Si.text(m.levels().low(), measured.unit())));
            levels.add(new PlotLevel(m.levels().high(), "high " + Si.text(m.levels().high(), measured.unit())));
        }
        if (thresholds != null && thresholds.band()) {
            levels.add(new PlotLevel(thresholds.low(), "VIL " + Si.text(thresholds.low(), "V"), Ink.THRESHOLD));
            levels.add(new PlotLevel(thresholds.high(), "VIH " + Si.text(thresholds.high(), "V"), Ink.THRESHOLD));
        } else if (thresholds != null) {
            levels.add(new PlotLevel(thresholds.low(), "needs " + Si.text(thresholds.low(), "V"), Ink.THRESHOLD));
        }
        return levels;
    }

    /** The difference about zero, over what is allowed. */
    private PlotPane strip() {
        PlotTrace less = PlotTrace.of("difference", overlay.difference(), measured.plot().ink());
        double most = Math.max(1.2 * overlay.level(), Math.max(Math.abs(less.whole().low()), less.whole().high()));
        return PlotPane.of(List.of(less), List.of(
                new PlotLevel(overlay.level(), "+" + Si.text(overlay.level(), 2, measured.unit())),
                new PlotLevel(-overlay.level(), "\u2212" + Si.text(overlay.level(), 2, measured.unit())))).between(-most, most)
                .with(List.of(new PlotBand(-overlay.level(), overlay.level(), Ink.TOLERANCE))).weighing(STRIP);
    }
}
