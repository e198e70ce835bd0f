// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;

/**
 * Reference level instants: where a waveform passes a level, by a straight line between the two samples on either side of
 * it (IEEE Std 181, 5.3; clause from memory). Where noise makes it pass several times, the middle between the first and
 * the last time counts.
 */
final class Crossings {

    private final Samples samples;
    private final TimeBase times;
    private final boolean held;
    private final Noise noise;
    private final double jitter;

    Crossings(Channel channel, Noise noise) {
        samples = channel.samples();
        times = channel.times();
        held = channel.held();
        jitter = channel.jitter();
        this.noise = noise;
    }

    /**
     * An instant.
     *
     * @param at     in seconds; NaN where the level is not passed
     * @param unsure in seconds
     */
    record Instant(double at, double unsure) {

        static final Instant NONE = new Instant(Double.NaN, Double.NaN);

        boolean known() {
            return !Double.isNaN(at);
        }
    }

    /** Where a level is passed between two samples, which lie on different sides of it. */
    Instant between(double level, int from, int to, double levelUnsure) {
        Instant first = Instant.NONE;
        Instant last = Instant.NONE;
        int before = from;
        for (int i = from + 1; i <= to; i++) {
            double b = samples.get(i);
            if (Double.isNaN(b)) {
                continue;
            }
            double a = samples.get(before);
            if (a < level != b < level || a != b && b == level && i == to) {
                Instant here = pass(level, before, i, a, b, levelUnsure);
                first = first.known() ? first : here;
                last = here;
            }
            before = i;
        }
        return !first.known() ? Instant.NONE
                : new Instant((first.at + last.at) / 2, Math.max(first.unsure, last.unsure) + (last.at - first.at) / 2);
    }

    private Instant pass(double level, int i, int j, double a, double b, double levelUnsure) {
        double ta = times.at(i);
        double step = times.at(j) - ta;
        if (held) {
            return new Instant(times.at(j), jitter);
        }
        double slope = Math.abs(b - a);
        double bend = Math.max(bend(i), bend(j)) / 2;
        double vertical = bend + 3 * noise.sigma() + noise.step() / 2 + levelUnsure;
        return new Instant(ta + (level - a) / (b - a) * step, Math.min(step * (1 + levelUnsure / slope),
                vertical / slope * step) + jitter);
    }

    /** How far the waveform bends at a sample: the second difference. A straight line is out by half of it at most. */
    private double bend(int i) {
        if (i < 1 || i + 1 >= samples.size()) {
            return 0;
        }
        double d = samples.get(i - 1) - 2 * samples.get(i) + samples.get(i + 1);
        return Double.isNaN(d) ? 0 : Math.abs(d);
    }
}
