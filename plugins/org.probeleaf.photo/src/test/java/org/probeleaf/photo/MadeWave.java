// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo;

import java.util.Random;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;

/**
 * A waveform on a screen, in divisions.
 *
 * @param shape  0 sine, 1 square, 2 triangle, 3 a square behind a resistor and a capacitor
 * @param height peak to peak of the source, in divisions
 * @param period in divisions
 * @param phase  0 to 1
 * @param offset of its middle above the centre of the screen, in divisions
 */
record MadeWave(int shape, double height, double period, double phase, double offset) {

    static MadeWave of(Random random) {
        return new MadeWave(random.nextInt(4), 2 + 4 * random.nextDouble(), 1.2 + 3.2 * random.nextDouble(),
                random.nextDouble(), -0.6 + 1.2 * random.nextDouble());
    }

    /** Divisions above the centre of the screen, so many divisions from its left rim. */
    double at(double u) {
        double p = u / period + phase;
        double t = p - Math.floor(p);
        return offset + height / 2 * switch (shape) {
            case 0 -> Math.sin(2 * Math.PI * t);
            case 1 -> t < 0.45 ? 1 : -1;
            case 2 -> t < 0.5 ? 4 * t - 1 : 3 - 4 * t;
            default -> charge(t);
        };
    }

    /** Time constant of a tenth of the period, settled from period to period. */
    private static double charge(double t) {
        double tau = 0.1;
        double end = (1 - Math.exp(-0.5 / tau)) / (1 + Math.exp(-0.5 / tau));
        return t < 0.5 ? 1 - (1 + end) * Math.exp(-t / tau) : -1 + (1 + end) * Math.exp(-(t - 0.5) / tau);
    }

    /** What a fault-free scope would have sampled over a screen of that width. */
    Channel ideal(int across) {
        int n = 400 * across;
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = at((i + 0.5) / 400);
        }
        return Channel.of("ideal", "V", new TimeBase.Uniform(1 / 800.0, 1 / 400.0, n), Samples.of(values));
    }
}
