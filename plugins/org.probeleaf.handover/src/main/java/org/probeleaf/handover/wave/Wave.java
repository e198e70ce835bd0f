// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.wave;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.waveform.judge.Thresholds;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.PlotLevel;
import org.probeleaf.waveform.plot.PlotPane;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.waveform.plot.PlotWindow;
import org.probeleaf.waveform.report.CaptureReport;
import org.probeleaf.waveform.report.TraceReport;

/**
 * A capture, read, measured and judged.
 *
 * @param mark       where it was taken, and what file it is
 * @param report     what is said of each of its traces; null where it cannot be read
 * @param traces     its channels of values, ready to be drawn
 * @param lanes      its lines of logic states, ready to be drawn
 * @param thresholds what its levels were held against; null where nobody said
 * @param problem    why it cannot be read, in a sentence; null where it can
 */
public record Wave(CaptureMark mark, CaptureReport report, List<PlotTrace> traces, List<PlotTrace> lanes,
        Thresholds thresholds, String problem) {

    /** More lanes than these cannot be told apart in a plot. */
    private static final int MOST = 24;

    public Wave {
        traces = List.copyOf(traces);
        lanes = List.copyOf(lanes);
    }

    static Wave unreadable(CaptureMark mark, String why) {
        return new Wave(mark, null, List.of(), List.of(), null, why);
    }

    /** What is said of the first trace; empty where the capture cannot be read. */
    public Optional<TraceReport> first() {
        return report == null || report.traces().isEmpty() ? Optional.empty() : Optional.of(report.traces().get(0));
    }

    /** A small picture of the first trace; empty where there is none. */
    public Optional<Plot> thumbnail(double width, double height) {
        if (!traces.isEmpty()) {
            return Optional.of(Plot.thumbnail(traces.get(0), width, height));
        }
        return lanes.isEmpty() ? Optional.empty()
                : Optional.of(Plot.bare(lanes.get(0), window(-0.2, 1.2), width, height));
    }

    /** All of it with scales; empty where there is nothing to draw. */
    public Optional<Plot> plot(double width, double height) {
        List<PlotPane> panes = new ArrayList<>();
        if (!traces.isEmpty()) {
            panes.add(PlotPane.of(traces, levels()));
        }
        lanes.stream().limit(MOST).map(PlotPane::lane).forEach(panes::add);
        if (panes.isEmpty()) {
            return Optional.empty();
        }
        PlotWindow all = window(0, 1);
        return Optional.of(new Plot(width, height, all.from(), all.to(), panes, List.of(), false));
    }

    /** The whole time of all traces. */
    private PlotWindow window(double low, double high) {
        List<PlotTrace> all = new ArrayList<>(traces);
        all.addAll(lanes);
        PlotWindow whole = Plot.whole(all);
        return new PlotWindow(whole.from(), whole.to(), low, high);
    }

    /** The levels that the traces are held against. */
    private List<PlotLevel> levels() {
        if (thresholds == null) {
            return List.of();
        }
        return thresholds.band()
                ? List.of(new PlotLevel(thresholds.low(), "low at most", Ink.THRESHOLD),
                        new PlotLevel(thresholds.high(), "high at least", Ink.THRESHOLD))
                : List.of(new PlotLevel(thresholds.low(), "threshold", Ink.THRESHOLD));
    }
}
