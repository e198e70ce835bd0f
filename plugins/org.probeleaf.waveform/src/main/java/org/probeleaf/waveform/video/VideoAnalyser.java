// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.video;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.measure.Figure;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.video.SyncPulses.Pulse;

/** Looks for composite video in a channel and measures it. */
public final class VideoAnalyser {

    private static final double FIRST_SLICE = 0.15;
    private static final double COARSEST = 1e-6;
    private static final int LEAST_LINES = 4;
    private static final double MOSTLY = 0.6;
    private static final double PORCH_FROM = 0.5e-6;
    private static final double PORCH_TO = 3.5e-6;
    private static final double PICTURE = 0.25;
    private static final double GUARD = 0.3e-6;

    private final Channel channel;
    private final Measures measures;
    private final Samples samples;
    private final double interval;
    private double tip;
    private double blank;
    private double white;
    private List<Pulse> pulses;

    private VideoAnalyser(Channel channel, Measures measures) {
        this.channel = channel;
        this.measures = measures;
        samples = channel.samples();
        interval = channel.times().interval();
    }

    /**
     * Measures a channel as video.
     *
     * @param measures of the same channel
     * @return nothing where it is no composite video: no sync pulses with the beat of lines
     */
    public static Optional<VideoSignal> analyse(Channel channel, Measures measures) {
        boolean may = measures.levels() != null && channel.times().interval() <= COARSEST
                && measures.peakToPeak() > 0.05 && (channel.unit().equals("V") || channel.unit().isEmpty());
        return may ? new VideoAnalyser(channel, measures).analyse() : Optional.empty();
    }

    private Optional<VideoSignal> analyse() {
        double span = measures.peakToPeak();
        double bottom = measures.min().value();
        pulses = SyncPulses.below(channel, bottom + FIRST_SLICE * span, 0.03 * span);
        if (!lines()) {
            return Optional.empty();
        }
        tip = median(pulses.stream().filter(Pulse::line).mapToDouble(p -> mean(p.start() + GUARD, p.end() - GUARD)).toArray());
        blank = median(pulses.stream().filter(Pulse::line).mapToDouble(this::porch).toArray());
        if (!(blank - tip > 0.04 * span)) {
            return Optional.empty();
        }
        pulses = SyncPulses.below(channel, (tip + blank) / 2, 0.15 * (blank - tip));
        if (!lines()) {
            return Optional.empty();
        }
        LineTiming timing = LineTiming.of(pulses, interval);
        white = measures.max().value();
        double[] widths = pulses.stream().filter(Pulse::line).mapToDouble(Pulse::width).toArray();
        double noise = 4 * measures.noise().sigma() / Math.sqrt(widths.length) + measures.noise().step() / 2;
        Figure sync = Figure.of(blank - tip, 2 * noise + 0.01 * (blank - tip));
        Figure width = Figure.of(median(widths), interval / 4 + 3 * deviation(widths) / Math.sqrt(widths.length));
        double picture = white - blank;
        boolean bright = picture > 0.3 * (blank - tip);
        Figure dark = Figure.none("there is no picture bright enough to tell where it ends");
        Figure front = bright ? porch(true) : dark;
        Figure back = bright ? porch(false) : dark;
        return Optional.of(new VideoVerdict(timing, sync, width, front, back, Figure.of(blank, noise + 0.005 * span),
                Figure.of(picture, measures.max().uncertainty() + noise), channel.unit()).signal());
    }

    /** Whether the pulses have the beat of lines. */
    private boolean lines() {
        LineTiming t = LineTiming.of(pulses, interval);
        return pulses.stream().filter(Pulse::line).count() >= LEAST_LINES && t.period() > 0 && t.even() >= MOSTLY;
    }

    /** The level behind a sync pulse, the mean taking the burst out. */
    private double porch(Pulse p) {
        return mean(p.end() + PORCH_FROM, p.end() + PORCH_TO);
    }

    private double mean(double from, double to) {
        int a = Math.max(0, channel.times().indexAt(from));
        int b = Math.min(samples.size() - 1, Math.max(a, channel.times().indexAt(to)));
        double sum = 0;
        for (int i = a; i <= b; i++) {
            sum += samples.get(i);
        }
        return sum / (b - a + 1);
    }

    /** From the picture to sync or from sync to the picture: the shortest that several lines show. */
    private Figure porch(boolean front) {
        double level = blank + PICTURE * (white - blank);
        double[] found = pulses.stream().filter(Pulse::line).mapToDouble(p -> front ? before(p, level) : after(p, level))
                .filter(d -> d > 0 && d < 12e-6).sorted().toArray();
        if (found.length < 3) {
            return Figure.none("the picture does not reach " + (front ? "its right" : "its left") + " edge in enough lines");
        }
        double low = found[found.length / 20];
        return Figure.of(low, 2 * interval + (found[found.length / 4] - low));
    }

    private double before(Pulse p, double level) {
        int i = p.first() - 1;
        int stop = Math.max(0, i - (int) (14e-6 / interval));
        while (i > stop && !(samples.get(i) > level)) {
            i--;
        }
        return i > stop ? p.start() - channel.times().at(i) : Double.NaN;
    }

    private double after(Pulse p, double level) {
        int i = p.last() + 1;
        int stop = Math.min(samples.size() - 1, i + (int) (14e-6 / interval));
        while (i < stop && !(samples.get(i) > level)) {
            i++;
        }
        return i < stop ? channel.times().at(i) - p.end() : Double.NaN;
    }

    private static double median(double[] values) {
        double[] v = values.clone();
        Arrays.sort(v);
        return v.length == 0 ? Double.NaN : v[v.length / 2];
    }

    private static double deviation(double[] values) {
        double mean = Arrays.stream(values).average().orElse(0);
        return Math.sqrt(Arrays.stream(values).map(x -> (x - mean) * (x - mean)).average().orElse(0));
    }
}
