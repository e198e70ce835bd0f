// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.judge.DigitalJudge;
import org.probeleaf.waveform.judge.Judge;
import org.probeleaf.waveform.judge.Judgement;
import org.probeleaf.waveform.judge.Thresholds;
import org.probeleaf.waveform.judge.Verdict;
import org.probeleaf.waveform.measure.DigitalMeasures;
import org.probeleaf.waveform.measure.Figure;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.WaveMeasurer;
import org.probeleaf.waveform.video.VideoAnalyser;
import org.probeleaf.waveform.video.VideoSignal;

/**
 * All that is said of one trace.
 *
 * @param name      of the channel or line
 * @param unit      of its values; empty where there is none
 * @param samples   how many samples, or changes of a logic trace
 * @param interval  usual distance of samples, in seconds; NaN for a logic trace
 * @param figures   by the name that the command line gives them, in order
 * @param measures  in full; null for a logic trace
 * @param judgement what is said of it
 * @param video     null where it is no composite video
 */
public record TraceReport(String name, String unit, int samples, double interval, Map<String, Figure> figures,
        Measures measures, Judgement judgement, VideoSignal video) {

    /** Measures and judges a channel; {@code thresholds} may be null. */
    public static TraceReport of(Channel channel, Thresholds thresholds) {
        Measures m = WaveMeasurer.standard().measure(channel);
        Optional<VideoSignal> video = VideoAnalyser.analyse(channel, m);
        Map<String, Figure> f = new LinkedHashMap<>();
        f.put("low_V", m.low());
        f.put("high_V", m.high());
        f.put("amplitude_V", m.amplitude());
        f.put("min_V", m.min());
        f.put("max_V", m.max());
        f.put("mean_V", m.mean());
        f.put("rms_V", m.rms());
        f.put("ac_rms_V", m.acRms());
        f.put("crest", m.crest());
        f.put("frequency_Hz", m.frequency());
        f.put("period_s", m.period());
        f.put("duty", m.duty());
        f.put("rise_s", m.rise());
        f.put("fall_s", m.fall());
        f.put("overshoot_pct", m.overshoot());
        f.put("undershoot_pct", m.undershoot());
        f.put("pulse_s", m.pulse());
        f.put("separation_s", m.separation());
        return new TraceReport(channel.name(), channel.unit(), m.samples(), m.interval(), f, m,
                judgement(channel, m, video.orElse(null), thresholds), video.orElse(null));
    }

    /**
     * What is said of a channel that is measured already.
     *
     * @param video      what is known of it as video, or null
     * @param thresholds what the next stage needs; null where nobody said: then composite video is not judged as logic
     */
    public static Judgement judgement(Channel channel, Measures measures, VideoSignal video, Thresholds thresholds) {
        return thresholds == null && video != null && video.composite() ? picture()
                : Judge.judge(channel, measures, thresholds);
    }

    private static Judgement picture() {
        return new Judgement(Verdict.VIDEO, List.of(Verdict.VIDEO),
                List.of("Its sync pulses have the beat of lines: composite video, which is not judged as logic."), Double.NaN,
                Double.NaN, null);
    }

    /** Measures and judges a line of logic states. */
    public static TraceReport of(DigitalChannel line) {
        DigitalMeasures m = DigitalMeasures.of(line);
        Figure volts = Figure.none("a logic trace has no volts");
        Figure edge = Figure.none("a logic trace has no edges of its own");
        Map<String, Figure> f = new LinkedHashMap<>();
        for (String key : List.of("low_V", "high_V", "amplitude_V", "min_V", "max_V", "mean_V", "rms_V")) {
            f.put(key, volts);
        }
        f.put("frequency_Hz", m.frequency());
        f.put("period_s", m.period());
        f.put("duty", m.duty());
        f.put("rise_s", edge);
        f.put("fall_s", edge);
        f.put("overshoot_pct", edge);
        f.put("undershoot_pct", edge);
        f.put("pulse_s", m.pulse());
        return new TraceReport(line.name(), "", line.size(), Double.NaN, f, null, DigitalJudge.judge(m), null);
    }

    /** Why figures are missing: {@code frequency_Hz, period_s: the capture holds no whole period}. */
    public List<String> missing() {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        figures.forEach((key, figure) -> {
            if (!figure.known()) {
                byReason.computeIfAbsent(figure.reason(), r -> new ArrayList<>()).add(key);
            }
        });
        List<String> lines = new ArrayList<>();
        byReason.forEach((reason, keys) -> lines.add(String.join(", ", keys) + ": " + reason));
        return lines;
    }
}
