// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.compare;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;

/** A channel read at even distances, by straight lines between its samples. */
final class Grid {

    private Grid() {
    }

    /** From its first sample on, every {@code interval} seconds, {@code most} values at most. */
    static double[] of(Channel channel, double interval, int most) {
        int n = (int) Math.min(most, Math.floor(channel.duration() / interval * (1 + 1e-12)) + 1);
        TimeBase times = channel.times();
        Samples s = channel.samples();
        double start = times.at(0);
        double[] v = new double[n];
        int i = 0;
        for (int k = 0; k < n; k++) {
            double t = start + k * interval;
            while (i + 1 < s.size() && times.at(i + 1) <= t) {
                i++;
            }
            v[k] = value(channel, i, t);
        }
        fill(v);
        return v;
    }

    private static double value(Channel channel, int i, double t) {
        Samples s = channel.samples();
        double a = s.get(i);
        if (channel.held() || i + 1 >= s.size()) {
            return a;
        }
        double from = channel.times().at(i);
        double step = channel.times().at(i + 1) - from;
        return step > 0 ? a + (s.get(i + 1) - a) * (t - from) / step : a;
    }

    /** A missing value is that before it. */
    private static void fill(double[] v) {
        double last = 0;
        for (double x : v) {
            if (!Double.isNaN(x)) {
                last = x;
                break;
            }
        }
        for (int i = 0; i < v.length; i++) {
            last = Double.isNaN(v[i]) ? last : v[i];
            v[i] = last;
        }
    }
}
