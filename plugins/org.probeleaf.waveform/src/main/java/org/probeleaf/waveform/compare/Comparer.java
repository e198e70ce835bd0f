// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;
import org.probeleaf.waveform.compare.Overlay.Stretch;
import org.probeleaf.waveform.measure.Figure;
import org.probeleaf.waveform.measure.Fourier;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.Si;

/**
 * Lays a capture over a reference. Where it fits best is where the two correlate best, which the Fourier transform tells for
 * all shifts at once; of shifts that are as good, as those of a periodic signal are, the least counts.
 */
public final class Comparer {

    private static final int MOST = 1 << 17;
    private static final double AS_GOOD = 0.99;
    private static final double LEAST_OVERLAP = 0.5;
    private static final double WORTH_A_WORD = 0.05;

    private final Channel channel;
    private final Measures measures;
    private final Channel reference;
    private final Measures known;
    private final Tolerance tolerance;
    private double interval;
    private double[] y;
    private double[] r;

    private Comparer(Channel channel, Measures measures, Channel reference, Measures known, Tolerance tolerance) {
        this.channel = channel;
        this.measures = measures;
        this.reference = reference;
        this.known = known;
        this.tolerance = tolerance;
    }

    /**
     * Compares a channel with a reference of the same net.
     *
     * @param measures of the channel
     * @param known    of the reference
     */
    public static Comparison compare(Channel channel, Measures measures, Channel reference, Measures known,
            Tolerance tolerance) {
        return new Comparer(channel, measures, reference, known, tolerance).compare();
    }

    private Comparison compare() {
        if (measures.levels() == null || known.levels() == null || channel.size() < 2 || reference.size() < 2) {
            return new Comparison(reference.name(), Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN,
                    Double.NaN, Double.NaN, false, List.of("One of the two has fewer than two samples."), null);
        }
        double longest = Math.max(channel.duration(), reference.duration());
        interval = Math.max(Math.min(channel.times().interval(), reference.times().interval()), longest / (MOST - 1));
        y = Grid.of(channel, interval, MOST);
        r = Grid.of(reference, interval, MOST);
        boolean still = !measures.levels().two() && !known.levels().two();
        int shift = still ? 0 : shift();
        int from = Math.max(0, -shift);
        int to = Math.min(r.length, y.length - shift);
        Fit fit = fit(shift, from, to);
        double span = Math.max(known.peakToPeak(), 1e-9 * Math.abs(known.max().value()) + Double.MIN_NORMAL);
        double level = tolerance.level() * (still ? Math.max(span, Math.abs(known.mean().value())) : span)
                + 3 * (known.noise().sigma() + measures.noise().sigma());
        double period = known.period().known() ? known.period().value()
                : known.pulse().known() ? 2 * known.pulse().value() : reference.duration();
        int wide = (int) Math.max(2, Math.ceil(tolerance.time() * period / interval));
        boolean[] out = outside(shift, from, to, level, wide);
        int count = 0;
        for (boolean o : out) {
            count += o ? 1 : 0;
        }
        double outside = (double) count / out.length;
        boolean same = outside <= tolerance.out();
        List<String> reasons = reasons(fit, outside, same, level, wide * interval, still);
        return new Comparison(reference.name(), shift * interval, fit.correlation, fit.gain, fit.offset, fit.rms,
                fit.scaled / span, fit.max, outside, same, reasons,
                overlay(shift, from, to, level, wide * interval, out));
    }

    /** By how many steps of the grid the channel is late against the reference. */
    private int shift() {
        int n = Integer.highestOneBit(Math.max(y.length, r.length) * 2 - 1) * 2;
        double[] ar = centred(y, n);
        double[] ai = new double[n];
        double[] br = centred(r, n);
        double[] bi = new double[n];
        Fourier.forward(ar, ai);
        Fourier.forward(br, bi);
        for (int k = 0; k < n; k++) {
            double re = ar[k] * br[k] + ai[k] * bi[k];
            ai[k] = ai[k] * br[k] - ar[k] * bi[k];
            ar[k] = re;
        }
        Fourier.inverse(ar, ai);
        int least = (int) (LEAST_OVERLAP * Math.min(y.length, r.length));
        double best = Double.NEGATIVE_INFINITY;
        for (int s = least - r.length; s <= y.length - least; s++) {
            best = Math.max(best, at(ar, s));
        }
        int found = 0;
        boolean any = false;
        for (int s = least - r.length; s <= y.length - least; s++) {
            double here = at(ar, s);
            boolean peak = here >= at(ar, s - 1) && here >= at(ar, s + 1);
            if (here >= AS_GOOD * best && peak && (!any || Math.abs(s) < Math.abs(found))) {
                found = s;
                any = true;
            }
        }
        return found;
    }

    /** The correlation for a shift. It is a sum and no mean, so that a shift cannot win by hiding what differs. */
    private static double at(double[] sums, int shift) {
        return sums[Math.floorMod(shift, sums.length)];
    }

    private static double[] centred(double[] v, int n) {
        double mean = Arrays.stream(v).average().orElse(0);
        double[] all = new double[n];
        for (int i = 0; i < v.length; i++) {
            all[i] = v[i] - mean;
        }
        return all;
    }

    /** How the two lie on each other. */
    private record Fit(double gain, double offset, double correlation, double rms, double scaled, double max) {
    }

    /** Least squares of {@code y = gain r + offset} where they overlap. */
    private Fit fit(int shift, int from, int to) {
        int n = to - from;
        double my = 0;
        double mr = 0;
        for (int k = from; k < to; k++) {
            my += y[k + shift] / n;
            mr += r[k] / n;
        }
        double yy = 0;
        double rr = 0;
        double yr = 0;
        double square = 0;
        double max = 0;
        for (int k = from; k < to; k++) {
            double a = y[k + shift] - my;
            double b = r[k] - mr;
            yy += a * a;
            rr += b * b;
            yr += a * b;
            double d = y[k + shift] - r[k];
            square += d * d;
            max = Math.max(max, Math.abs(d));
        }
        double gain = rr > 0 ? yr / rr : Double.NaN;
        double correlation = rr > 0 && yy > 0 ? yr / Math.sqrt(rr * yy) : Double.NaN;
        double left = Math.max(0, yy - (rr > 0 ? yr * yr / rr : 0));
        return new Fit(gain, my - (rr > 0 ? gain : 1) * mr, correlation, Math.sqrt(square / n), Math.sqrt(left / n), max);
    }

    /** Which samples leave the band about the reference, widened in time as well as in level. */
    private boolean[] outside(int shift, int from, int to, double level, int wide) {
        boolean[] out = new boolean[to - from];
        for (int k = from; k < to; k++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            boolean in = false;
            for (int j = Math.max(0, k - wide); j <= Math.min(r.length - 1, k + wide) && !in; j++) {
                low = Math.min(low, r[j]);
                high = Math.max(high, r[j]);
                in = y[k + shift] >= low - level && y[k + shift] <= high + level;
            }
            out[k - from] = !in;
        }
        return out;
    }

    private Overlay overlay(int shift, int from, int to, double level, double time, boolean[] out) {
        double start = channel.times().at(0);
        double first = start + (from + shift) * interval;
        double[] difference = new double[to - from];
        List<Stretch> stretches = new ArrayList<>();
        int begun = -1;
        for (int i = 0; i < difference.length; i++) {
            difference[i] = y[from + i + shift] - r[from + i];
            begun = out[i] && begun < 0 ? i : begun;
            if (begun >= 0 && (!out[i] || i == difference.length - 1)) {
                stretches.add(new Stretch(first + begun * interval, first + (out[i] ? i : i - 1) * interval));
                begun = -1;
            }
        }
        Channel less = Channel.of("difference", channel.unit(), new TimeBase.Uniform(first, interval, difference.length),
                Samples.of(difference));
        return new Overlay(start - reference.times().at(0) + shift * interval, level, time, stretches, less);
    }

    private List<String> reasons(Fit fit, double outside, boolean same, double level, double time, boolean still) {
        List<String> reasons = new ArrayList<>();
        String mask = "the reference, " + Si.text(level, 2, channel.unit()) + " up and down"
                + (still ? "" : " and " + Si.text(time, 2, "s") + " to either side") + " allowed";
        reasons.add(same ? "It lies within " + mask + "."
                : Si.text(outside * 100, 3, "%") + " of it lies outside of " + mask + ".");
        if (known.levels().two() != measures.levels().two()) {
            reasons.add(known.levels().two() ? "It stays at one level where the reference moves."
                    : "It moves where the reference stays at one level.");
        }
        differs(reasons, "amplitude", measures.amplitude(), known.amplitude(), channel.unit());
        differs(reasons, "frequency", measures.frequency(), known.frequency(), "Hz");
        differs(reasons, "duty factor", measures.duty(), known.duty(), "");
        differs(reasons, "rise", measures.rise(), known.rise(), "s");
        differs(reasons, "fall", measures.fall(), known.fall(), "s");
        if (!Double.isNaN(fit.correlation) && fit.correlation < 0) {
            reasons.add("It is upside down against the reference.");
        }
        return reasons;
    }

    /** A figure that is not that of the reference, beyond what both are unsure by. */
    private static void differs(List<String> reasons, String name, Figure is, Figure was, String unit) {
        if (is.known() && was.known()) {
            double off = Math.abs(is.value() - was.value());
            if (off > is.uncertainty() + was.uncertainty() && off > WORTH_A_WORD * Math.abs(was.value())) {
                reasons.add("Its " + name + " is " + Si.text(is.value(), unit) + ", that of the reference "
                        + Si.text(was.value(), unit) + ".");
            }
        }
    }
}
