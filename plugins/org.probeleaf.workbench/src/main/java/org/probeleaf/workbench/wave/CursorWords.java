// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.measure.Si;
import org.probeleaf.waveform.plot.PlotTrace;

/** What two cursors say of a trace, and their differences. */
final class CursorWords {

    private static final String GAP = "      ";
    private static final double ROUNDING = 1e-9;
    private static final int LEAST = 4;
    private static final int MOST = 12;

    private CursorWords() {
    }

    /**
     * In one line.
     *
     * @param a     the time of the first cursor in seconds, NaN where it is not set
     * @param b     the same of the second
     * @param pixel how long a pixel is, in seconds; times are told as finely
     */
    static String of(PlotTrace trace, double a, double b, double pixel) {
        if (Double.isNaN(a) && Double.isNaN(b)) {
            return "Click puts cursor A, Shift and click cursor B; ? shows the keys.";
        }
        StringBuilder words = new StringBuilder(trace.channel().name()).append(GAP);
        one(words, "A", trace, a, pixel);
        one(words, "B", trace, b, pixel);
        if (!Double.isNaN(a) && !Double.isNaN(b)) {
            double dt = b - a;
            words.append("B\u2212A  ").append(signed(Si.text(dt, digits(dt, pixel), "s")));
            double dv = difference(value(trace, a), value(trace, b));
            if (Double.isFinite(dv)) {
                words.append("  ").append(signed(Si.text(dv, trace.channel().unit())));
            }
            if (dt != 0) {
                words.append(GAP).append("1/\u0394t  ").append(Si.text(1 / Math.abs(dt), "Hz"));
            }
        }
        return words.toString().strip();
    }

    private static void one(StringBuilder words, String name, PlotTrace trace, double at, double pixel) {
        if (!Double.isNaN(at)) {
            double v = value(trace, at);
            words.append(name).append("  ").append(signed(Si.text(at, digits(at, pixel), "s")))
                    .append(Double.isFinite(v) ? "  " + signed(Si.text(v, trace.channel().unit())) : "").append(GAP);
        }
    }

    /** What rounding leaves of two values that are the same is nothing. */
    private static double difference(double a, double b) {
        return Math.abs(b - a) <= ROUNDING * Math.max(Math.abs(a), Math.abs(b)) ? 0 : b - a;
    }

    private static String signed(String number) {
        return number.replace('-', '\u2212');
    }

    /** So many digits that the last is about a pixel. */
    static int digits(double value, double pixel) {
        double whole = Math.abs(value) / pixel;
        return whole > 1 ? (int) Math.max(LEAST, Math.min(MOST, Math.ceil(Math.log10(whole)) + 1)) : LEAST;
    }

    /** The value of a trace at a time, on the line between its samples; NaN outside and in gaps. */
    static double value(PlotTrace trace, double seconds) {
        Channel c = trace.channel();
        double at = seconds - trace.shift();
        int i = c.times().indexAt(at);
        if (i < 0 || i >= c.size() || i == c.size() - 1 && at > c.times().at(i)) {
            return Double.NaN;
        }
        double before = c.samples().get(i);
        if (c.held() || i == c.size() - 1) {
            return before;
        }
        double share = (at - c.times().at(i)) / (c.times().at(i + 1) - c.times().at(i));
        return Double.isFinite(share) ? before + share * (c.samples().get(i + 1) - before) : before;
    }
}
