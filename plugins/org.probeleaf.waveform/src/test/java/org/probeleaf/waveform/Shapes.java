// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;

import org.probeleaf.waveform.capture.Channel;

/** Waveforms by formula. */
public final class Shapes {

    private Shapes() {
    }

    /** A function of time, sampled from 0 s on. */
    public static Channel sampled(DoubleUnaryOperator shape, double interval, int samples) {
        return sampled(shape, 0, interval, samples);
    }

    /** A function of time, sampled from {@code start} on; the channel's own time begins at 0. */
    public static Channel sampled(DoubleUnaryOperator shape, double start, double interval, int samples) {
        double[] v = new double[samples];
        for (int i = 0; i < samples; i++) {
            v[i] = shape.applyAsDouble(start + i * interval);
        }
        return Channel.volts("A", interval, v);
    }

    /** The same with Gaussian noise on it. */
    public static Channel noisy(Channel channel, double sigma, long seed) {
        Random random = new Random(seed);
        double[] v = channel.samples().toArray();
        for (int i = 0; i < v.length; i++) {
            v[i] += sigma * random.nextGaussian();
        }
        return Channel.volts(channel.name(), channel.times().interval(), v);
    }

    /** From 0 to 1 by a resistor and a capacitor, beginning at 0 s. */
    public static double rc(double t, double tau) {
        return t <= 0 ? 0 : 1 - Math.exp(-t / tau);
    }

    /** From 0 to 1 by a damped second order, natural frequency 1, beginning at 0 s. */
    public static double secondOrder(double t, double zeta) {
        if (t <= 0) {
            return 0;
        }
        double root = Math.sqrt(1 - zeta * zeta);
        return 1 - Math.exp(-zeta * t) * (Math.cos(root * t) + zeta / root * Math.sin(root * t));
    }

    /** 0 to 1: up over {@code rise}, there for {@code top}, down over {@code fall}, then 0; repeated. */
    public static double trapezoid(double t, double rise, double top, double fall, double period) {
        double p = t - Math.floor(t / period) * period;
        if (p < rise) {
            return p / rise;
        }
        if (p < rise + top) {
            return 1;
        }
        return p < rise + top + fall ? 1 - (p - rise - top) / fall : 0;
    }
}
