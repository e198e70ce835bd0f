// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.compare.Comparer;
import org.probeleaf.waveform.compare.Comparison;
import org.probeleaf.waveform.compare.Tolerance;
import org.probeleaf.waveform.format.ImportNotes;
import org.probeleaf.waveform.format.Imported;
import org.probeleaf.waveform.judge.Thresholds;
import org.probeleaf.waveform.measure.WaveMeasurer;

/**
 * All that is said of a capture.
 *
 * @param notes      what was assumed in reading it
 * @param traces     in the order of the file
 * @param difference of the first trace of values from that of the reference; null where there is none
 */
public record CaptureReport(ImportNotes notes, List<TraceReport> traces, Comparison difference) {

    /**
     * Measures, judges and compares.
     *
     * @param name       of one trace; null for all
     * @param thresholds what the next stage needs; null where nobody said
     * @param reference  a capture of the same net on a board that works; null for none
     * @throws IllegalArgumentException with one sentence where there is no such trace, or nothing to compare
     */
    public static CaptureReport of(Imported imported, String name, Thresholds thresholds, Imported reference) {
        Capture capture = imported.capture();
        List<TraceReport> traces = new ArrayList<>();
        List<Channel> chosen = new ArrayList<>();
        for (Channel c : capture.channels()) {
            if (name == null || c.name().equalsIgnoreCase(name)) {
                chosen.add(c);
                traces.add(TraceReport.of(c, thresholds));
            }
        }
        for (DigitalChannel bus : capture.digital()) {
            for (DigitalChannel line : bus.lines()) {
                if (name == null || line.name().equalsIgnoreCase(name) || bus.name().equalsIgnoreCase(name)) {
                    traces.add(TraceReport.of(line));
                }
            }
        }
        if (traces.isEmpty()) {
            throw new IllegalArgumentException("there is no channel \"" + name + "\"; there are "
                    + String.join(", ", capture.names()));
        }
        Comparison difference = reference == null ? null : difference(chosen, traces, reference.capture());
        return new CaptureReport(imported.notes(), traces, difference);
    }

    private static Comparison difference(List<Channel> chosen, List<TraceReport> traces, Capture reference) {
        if (chosen.isEmpty() || reference.channels().isEmpty()) {
            throw new IllegalArgumentException("traces of logic states are not compared; both captures need a channel of values");
        }
        Channel channel = chosen.get(0);
        Optional<Channel> same = reference.channel(channel.name());
        Channel known = same.orElse(reference.channels().get(0));
        return Comparer.compare(channel, traces.get(0).measures(), known, WaveMeasurer.standard().measure(known),
                Tolerance.usual());
    }
}
