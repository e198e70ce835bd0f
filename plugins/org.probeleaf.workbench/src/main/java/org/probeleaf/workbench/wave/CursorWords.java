// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.measure.Si;
import org.probeleaf.waveform.plot.PlotTrace;

/** What two cursors say of a trace, and their differences. */
final class CursorWords {

    private CursorWords() {
    }

    /**
     * In one line.
     *
     * @param a the time of the first cursor in seconds, NaN where it is not set
     * @param b the same of the second
     */
    static String of(PlotTrace trace, double a, double b) {
        if (Double.isNaN(a) && Double.isNaN(b)) {
            return "Click puts a cursor, Shift and click the other; drag moves, the wheel draws apart, Home shows all.";
        }
        StringBuilder words = new StringBuilder();
        one(words, "A", trace, a);
        one(words, "B", trace, b);
        if (!Double.isNaN(a) && !Double.isNaN(b)) {
            double dt = b - a;
            words.append("B\u2212A  ").append(Si.text(dt, "s"));
            if (dt != 0) {
                words.append(" (").append(Si.text(1 / Math.abs(dt), "Hz")).append(')');
            }
            double dv = value(trace, b) - value(trace, a);
            if (Double.isFinite(dv)) {
                words.append(", ").append(Si.text(dv, trace.channel().unit()));
            }
        }
        return words.toString().strip();
    }

    private static void one(StringBuilder words, String name, PlotTrace trace, double at) {
        if (!Double.isNaN(at)) {
            double v = value(trace, at);
            words.append(name).append("  ").append(Si.text(at, "s"))
                    .append(Double.isFinite(v) ? "  " + Si.text(v, trace.channel().unit()) : "").append("     ");
        }
    }

    /** The value of a trace at a time, on the line between its samples; NaN outside and in gaps. */
    static double value(PlotTrace trace, double seconds) {
        Channel c = trace.channel();
        int i = c.times().indexAt(seconds - trace.shift());
        if (i < 0 || i >= c.size() || i == c.size() - 1 && seconds - trace.shift() > c.times().at(i)) {
            return Double.NaN;
        }
        double before = c.samples().get(i);
        if (c.held() || i == c.size() - 1) {
            return before;
        }
        double share = (seconds - trace.shift() - c.times().at(i)) / (c.times().at(i + 1) - c.times().at(i));
        return Double.isFinite(share) ? before + share * (c.samples().get(i + 1) - before) : before;
    }
}
