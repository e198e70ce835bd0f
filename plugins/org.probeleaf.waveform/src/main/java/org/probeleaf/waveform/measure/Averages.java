// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;

/**
 * Mean and root mean square over a stretch of time, by the trapezoidal rule on the samples and on their squares. Over
 * whole periods of an evenly sampled waveform that is exact for all its harmonics that sampling can show.
 */
final class Averages {

    private final Samples samples;
    private final TimeBase times;
    private final boolean held;

    Averages(Channel channel) {
        samples = channel.samples();
        times = channel.times();
        held = channel.held();
    }

    /**
     * Sums over a stretch.
     *
     * @param mean      of the values
     * @param square    mean of their squares
     * @param rectified mean of their amounts
     * @param count     samples in it
     */
    record Sums(double mean, double square, double rectified, int count) {
    }

    /** Over all samples: each counts alike where they are evenly spaced, else for the time it stands for. */
    Sums all() {
        if (!(times instanceof TimeBase.Uniform) && samples.size() > 1) {
            return over(times.at(0), times.at(samples.size() - 1), Double.NaN, 1);
        }
        return plain(0, 1);
    }

    /** The plain mean of every so many samples. */
    Sums plain(int from, int stride) {
        double sum = 0;
        double square = 0;
        double amount = 0;
        int n = 0;
        for (int i = from; i < samples.size(); i += stride) {
            double v = samples.get(i);
            if (!Double.isNaN(v)) {
                sum += v;
                square += v * v;
                amount += Math.abs(v);
                n++;
            }
        }
        return new Sums(sum / n, square / n, amount / n, n);
    }

    /**
     * Over a stretch of time whose ends lie between samples.
     *
     * @param from   in seconds
     * @param to     in seconds
     * @param at     the value at both ends; NaN to begin and end on samples
     * @param stride takes every so many samples only, to see what sampling does to the sums
     */
    Sums over(double from, double to, double at, int stride) {
        int first = Math.max(0, times.indexAt(from));
        double area = 0;
        double square = 0;
        double amount = 0;
        double time = 0;
        double t = from;
        double v = at;
        int n = 0;
        for (int i = Double.isNaN(at) ? first : first + 1; i < samples.size(); i += stride) {
            double next = times.at(i);
            double value = samples.get(i);
            if (Double.isNaN(value)) {
                continue;
            }
            if (next > to || next == to && !Double.isNaN(at)) {
                break;
            }
            double step = next - t;
            if (!Double.isNaN(v)) {
                area += step * (held ? v : (v + value) / 2);
                square += step * (held ? v * v : (v * v + value * value) / 2);
                amount += step * (held ? Math.abs(v) : (Math.abs(v) + Math.abs(value)) / 2);
                time += step;
            }
            t = next;
            v = value;
            n++;
        }
        if (!Double.isNaN(at)) {
            double step = to - t;
            area += step * (v + at) / 2;
            square += step * (v * v + at * at) / 2;
            amount += step * (Math.abs(v) + Math.abs(at)) / 2;
            time += step;
        }
        return time > 0 ? new Sums(area / time, square / time, amount / time, n) : plain(0, 1);
    }
}
