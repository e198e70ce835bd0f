// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.format.Imported;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.WaveMeasurer;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.PlotTrace;

/**
 * A capture of the job, read and measured.
 *
 * @param mark     the mark
 * @param read     what is in its file, or null where it cannot be read
 * @param traces   its channels, ready to be drawn
 * @param measures of each channel, in the same order
 * @param problem  why it cannot be read, in a sentence, or null
 */
public record LoadedCapture(CaptureMark mark, Imported read, List<PlotTrace> traces, List<Measures> measures,
        String problem) {

    static LoadedCapture of(CaptureMark mark, Imported read) {
        List<PlotTrace> traces = new ArrayList<>();
        List<Measures> measures = new ArrayList<>();
        List<Channel> channels = new ArrayList<>(read.capture().channels());
        if (channels.isEmpty()) {
            channels.addAll(StateLines.of(read.capture().digital()));
        }
        for (Channel channel : channels) {
            traces.add(PlotTrace.of(channel.name(), channel, Ink.trace(traces.size())));
            measures.add(WaveMeasurer.standard().measure(channel));
        }
        return new LoadedCapture(mark, read, List.copyOf(traces), List.copyOf(measures), null);
    }

    static LoadedCapture unreadable(CaptureMark mark, String problem) {
        return new LoadedCapture(mark, null, List.of(), List.of(), problem);
    }
}
