// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.measure.Crossings.Instant;

/** Measures a channel. Immutable; any thread may use it. */
public final class WaveMeasurer {

    private static final int DETAILED = 2000;
    private static final double PERCENT = 100;
    private static final double SIGMAS = 4;

    private final double nearPercent;

    private WaveMeasurer(double nearPercent) {
        this.nearPercent = nearPercent;
    }

    /** Transition durations from 10 to 90 %. */
    public static WaveMeasurer standard() {
        return new WaveMeasurer(10);
    }

    /** Transition durations from {@code percent} to 100 less {@code percent}, as 20 to 80. */
    public WaveMeasurer from(double percent) {
        return new WaveMeasurer(percent);
    }

    /** All figures of a channel. */
    public Measures measure(Channel channel) {
        Extremes extremes = Extremes.of(channel.samples());
        Noise noise = Noise.of(channel.samples(), channel.resolution());
        if (extremes.count == 0) {
            return nothing(channel, noise);
        }
        StateLevels levels = new LevelFinder(channel.samples(), noise, extremes.min, extremes.max).find();
        Sheet sheet = new Sheet(channel, noise, extremes, levels);
        return sheet.fill();
    }

    private static Measures nothing(Channel channel, Noise noise) {
        Figure none = Figure.none("there is no sample");
        return new Measures(channel.size(), channel.size(), channel.times().interval(), noise, null, none, none, none, none,
                none, none, none, none, none, none, none, none, none, none, none, none, none, none, 0, List.of(), 0,
                new double[0]);
    }

    /** Least and greatest sample. */
    private record Extremes(double min, double max, int minAt, int maxAt, int count) {

        static Extremes of(Samples samples) {
            double min = Double.POSITIVE_INFINITY;
            double max = Double.NEGATIVE_INFINITY;
            int minAt = -1;
            int maxAt = -1;
            int count = 0;
            for (int i = 0; i < samples.size(); i++) {
                double v = samples.get(i);
                if (v < min) {
                    min = v;
                    minAt = i;
                }
                if (v > max) {
                    max = v;
                    maxAt = i;
                }
                count += Double.isNaN(v) ? 0 : 1;
            }
            return new Extremes(min, max, minAt, maxAt, count);
        }
    }

    /** The work on one channel. */
    private final class Sheet {

        private final Channel channel;
        private final Noise noise;
        private final Extremes extremes;
        private final StateLevels levels;
        private final List<Transition> transitions = new ArrayList<>();
        private Rhythm rhythm = new Rhythm(new double[0], new double[0], true);

        Sheet(Channel channel, Noise noise, Extremes extremes, StateLevels levels) {
            this.channel = channel;
            this.noise = noise;
            this.extremes = extremes;
            this.levels = levels;
        }

        Measures fill() {
            if (levels.two()) {
                edges();
            }
            Figure period = rhythm.period();
            Figure[] averages = averages(period);
            Figure one = levels.two() ? null
                    : Figure.none("it stays at one level, " + Si.text(levels.low(), channel.unit()));
            double unsure = levels.lowUnsure() + levels.highUnsure();
            return new Measures(channel.size(), channel.size() - extremes.count, channel.times().interval(), noise, levels,
                    one == null ? Figure.of(levels.low(), levels.lowUnsure()) : one,
                    one == null ? Figure.of(levels.high(), levels.highUnsure()) : one,
                    one == null ? Figure.of(levels.amplitude(), unsure) : one,
                    extreme(extremes.minAt), extreme(extremes.maxAt), averages[0], averages[1], averages[2], averages[3],
                    one == null ? period : one, one == null ? frequency(period) : one, one == null ? rhythm.duty() : one,
                    one == null ? rhythm.pulse() : one, one == null ? rhythm.separation() : one,
                    one == null ? duration(true) : one, one == null ? duration(false) : one,
                    one == null ? aberration(Transition::above, true) : one,
                    one == null ? aberration(Transition::below, false) : one,
                    whole(period) ? rhythm.periods().length : 0, transitions, rhythm.instants().length, rhythm.instants());
        }

        private void edges() {
            Edges edges = Edges.of(channel, levels, noise);
            TransitionFinder finder = new TransitionFinder(channel, edges, levels, noise, nearPercent);
            double[] at = new double[edges.count()];
            double[] unsure = new double[edges.count()];
            // An odd stride takes rising and falling edges alike.
            int stride = Math.max(1, edges.count() / DETAILED) | 1;
            for (int i = 0; i < edges.count(); i++) {
                Instant middle = finder.middle(i);
                at[i] = middle.at();
                unsure[i] = middle.unsure();
                if (i % stride == 0) {
                    transitions.add(finder.transition(i));
                }
            }
            rhythm = new Rhythm(at, unsure, edges.count() == 0 || edges.rises(0));
        }

        private static boolean whole(Figure period) {
            return period.known();
        }

        private Figure frequency(Figure period) {
            return period.known()
                    ? Figure.of(1 / period.value(), period.uncertainty() / (period.value() * period.value())) : period;
        }

        /** A sample, with what it may miss of the peak between samples. */
        private Figure extreme(int at) {
            Samples s = channel.samples();
            double missed = missed(at);
            return Figure.of(s.get(at), missed + SIGMAS * noise.sigma() + noise.step() / 2);
        }

        /** Mean, root mean square, the same of the alternating part, crest factor. */
        private Figure[] averages(Figure period) {
            Averages averages = new Averages(channel);
            Averages.Sums sums;
            Averages.Sums coarse;
            if (whole(period)) {
                double middle = levels.reference(50);
                sums = averages.over(rhythm.from(), rhythm.to(), middle, 1);
                coarse = averages.over(rhythm.from(), rhythm.to(), middle, 2);
            } else {
                sums = averages.all();
                coarse = averages.plain(0, 2);
            }
            double statistical = SIGMAS * noise.sigma() / Math.sqrt(Math.max(1, sums.count())) + noise.step() / 2;
            double meanUnsure = Math.abs(sums.mean() - coarse.mean()) + statistical;
            double rms = Math.sqrt(sums.square());
            double ac = Math.sqrt(Math.max(0, sums.square() - sums.mean() * sums.mean()));
            double bias = noise.sigma() * noise.sigma() / 2;
            double sampling = Math.abs(rms - Math.sqrt(coarse.square()));
            double peak = Math.max(Math.abs(extremes.min), Math.abs(extremes.max));
            Figure none = Figure.none("the signal is zero throughout");
            double rmsUnsure = rms == 0 ? 0 : sampling + statistical + Math.min(noise.sigma(), bias / rms);
            double acUnsure = ac == 0 ? 0 : sampling + statistical + Math.min(noise.sigma(), bias / ac);
            double peakUnsure = extreme(peak == Math.abs(extremes.max) ? extremes.maxAt : extremes.minAt).uncertainty();
            return new Figure[] {Figure.of(sums.mean(), meanUnsure), Figure.of(rms, rmsUnsure), Figure.of(ac, acUnsure),
                rms == 0 ? none : Figure.of(peak / rms, (peakUnsure + peak / rms * rmsUnsure) / rms)};
        }

        private Figure duration(boolean rising) {
            double[] d = transitions.stream().filter(t -> t.rises() == rising && t.whole())
                    .mapToDouble(Transition::duration).toArray();
            if (d.length == 0) {
                String kind = rising ? "rising" : "falling";
                boolean any = transitions.stream().anyMatch(t -> t.rises() == rising);
                return Figure.none(any ? "no " + kind + " edge reaches both reference levels"
                        : "the capture holds no " + kind + " edge");
            }
            double[] unsure = transitions.stream().filter(t -> t.rises() == rising && t.whole())
                    .mapToDouble(Transition::unsure).toArray();
            return Figure.of(Noise.median(d), Noise.median(unsure));
        }

        /** The median over the transitions of a direction, of both the greater. */
        private Figure aberration(ToDoubleFunction<Transition> of, boolean outward) {
            double most = Double.NaN;
            for (boolean rising : new boolean[] {true, false}) {
                double[] d = transitions.stream().filter(t -> t.rises() == rising && t.whole()).mapToDouble(of).toArray();
                if (d.length > 0) {
                    double median = Noise.median(d);
                    most = Double.isNaN(most) ? median : Math.max(most, median);
                }
            }
            if (Double.isNaN(most)) {
                return Figure.none("the capture holds no whole transition");
            }
            double unsure = peakBend(outward) + (SIGMAS + 2) * noise.sigma() + noise.step()
                    + Math.max(levels.lowUnsure(), levels.highUnsure());
            double amplitude = levels.amplitude();
            return Figure.of(most / amplitude * PERCENT, unsure / amplitude * PERCENT);
        }

        private double peakBend(boolean outward) {
            return missed(outward ? extremes.maxAt : extremes.minAt);
        }

        /** How far beyond a greatest or least sample the waveform may go between samples; nothing where it stays there. */
        private double missed(int at) {
            Samples s = channel.samples();
            if (at < 1 || at + 1 >= s.size() || stays(at, 1) || stays(at, -1)) {
                return 0;
            }
            double bend = s.get(at - 1) - 2 * s.get(at) + s.get(at + 1);
            return Double.isNaN(bend) ? 0 : Math.abs(bend) / 4;
        }

        private boolean stays(int at, int way) {
            int further = at + 2 * way;
            Samples s = channel.samples();
            return further >= 0 && further < s.size() && s.get(at + way) == s.get(at) && s.get(further) == s.get(at);
        }
    }
}
