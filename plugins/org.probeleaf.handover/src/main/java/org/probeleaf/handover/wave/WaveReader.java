// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.wave;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.waveform.capture.Capture;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.format.Imported;
import org.probeleaf.waveform.judge.ThresholdWords;
import org.probeleaf.waveform.judge.Thresholds;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.waveform.plot.StateTrace;
import org.probeleaf.waveform.report.CaptureReport;

/** Reads, measures and judges captures. A capture that cannot be read says why instead. */
public final class WaveReader {

    private final WaveSource source;
    private final ThresholdWords words;

    /**
     * @param source reads files
     * @param words  says what a capture is held against
     */
    public WaveReader(WaveSource source, ThresholdWords words) {
        this.source = source;
        this.words = words;
    }

    /** Reads files of numbers, with the levels and parts that are shipped. */
    public static WaveReader standard() {
        return new WaveReader(WaveSource.FILES, new ThresholdWords(LevelBook.standard(), PartBook.standard()));
    }

    /** All captures of a job that is open, in the order in which they were pinned. */
    public List<Wave> all(Job job) {
        List<Wave> waves = new ArrayList<>();
        for (CaptureMark mark : job.state().captures()) {
            try {
                waves.add(read(mark, job.captureBytes(mark)));
            } catch (JobException e) {
                waves.add(Wave.unreadable(mark, "its file in the job is damaged"));
            }
        }
        return waves;
    }

    /** One capture from the bytes of its file. */
    public Wave read(CaptureMark mark, byte[] bytes) {
        try {
            Imported read = source.read(mark, bytes);
            Thresholds thresholds = words.parse(mark.judgedBy()).orElse(null);
            return new Wave(mark, CaptureReport.of(read, null, thresholds, null), traces(read.capture()),
                    lanes(read.capture()), thresholds, null);
        } catch (IOException | IllegalArgumentException e) {
            return Wave.unreadable(mark, e.getMessage());
        }
    }

    private static List<PlotTrace> traces(Capture capture) {
        List<PlotTrace> traces = new ArrayList<>();
        for (Channel channel : capture.channels()) {
            traces.add(PlotTrace.of(channel.name(), channel, Ink.trace(traces.size())));
        }
        return traces;
    }

    private static List<PlotTrace> lanes(Capture capture) {
        List<PlotTrace> lanes = new ArrayList<>();
        for (DigitalChannel bus : capture.digital()) {
            for (DigitalChannel line : bus.lines()) {
                lanes.add(StateTrace.of(line, Ink.TRACE_A));
            }
        }
        return lanes;
    }
}
