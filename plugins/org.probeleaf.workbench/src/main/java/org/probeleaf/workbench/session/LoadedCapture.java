// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.format.Imported;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.PlotPane;
import org.probeleaf.waveform.plot.PlotWindow;

/**
 * A capture of the job, read and measured.
 *
 * @param mark    the mark
 * @param read    what is in its file, or null where it cannot be read
 * @param traces  its channels, then its lines of logic states
 * @param problem why it cannot be read, in a sentence, or null
 */
public record LoadedCapture(CaptureMark mark, Imported read, List<LoadedTrace> traces, String problem) {

    /** More lines of states than these cannot be told apart in a plot. */
    private static final int MOST = 32;
    private static final int IN_A_THUMBNAIL = 6;

    static LoadedCapture of(CaptureMark mark, Imported read) {
        List<LoadedTrace> traces = new ArrayList<>();
        for (Channel channel : read.capture().channels()) {
            traces.add(LoadedTrace.of(channel, Ink.trace(traces.size())));
        }
        List<DigitalChannel> lines = read.capture().digital().stream().flatMap(c -> c.lines().stream()).limit(MOST).toList();
        for (DigitalChannel line : lines) {
            traces.add(LoadedTrace.of(line, Ink.TRACE_A));
        }
        return new LoadedCapture(mark, read, List.copyOf(traces), null);
    }

    static LoadedCapture unreadable(CaptureMark mark, String problem) {
        return new LoadedCapture(mark, null, List.of(), problem);
    }

    /** Which of its traces another is compared with: that of the same name, else the first; both of values. */
    public Optional<LoadedTrace> comparableWith(LoadedTrace other) {
        if (other == null || other.logic()) {
            return Optional.empty();
        }
        List<LoadedTrace> values = traces.stream().filter(t -> !t.logic()).toList();
        return values.stream().filter(t -> t.name().equalsIgnoreCase(other.name())).findFirst()
                .or(() -> values.stream().findFirst());
    }

    /** A small picture: the first channel, or the first lines of states one below the other. */
    public Plot thumbnail(double width, double height) {
        LoadedTrace first = traces.get(0);
        if (!first.logic()) {
            return Plot.thumbnail(first.plot(), width, height);
        }
        List<PlotPane> lanes = traces.stream().filter(LoadedTrace::logic).limit(IN_A_THUMBNAIL)
                .map(t -> PlotPane.lane(t.plot())).toList();
        PlotWindow all = Plot.whole(traces.stream().limit(IN_A_THUMBNAIL).map(LoadedTrace::plot).toList());
        return new Plot(width, height, all.from(), all.to(), lanes, List.of(), true);
    }
}
