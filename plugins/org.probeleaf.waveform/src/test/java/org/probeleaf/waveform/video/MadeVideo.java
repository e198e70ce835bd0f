// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.video;

import org.probeleaf.waveform.capture.Channel;

/**
 * Composite video by formula. Pulse widths of field sync and the numbers of its pulses are those of SMPTE 170M and BT.470,
 * from memory; the rest is what the tests say.
 */
final class MadeVideo {

    static final double RATE = 20e6;
    private static final double EDGE = 0.14e-6;
    private static final double BROAD_GAP = 4.7e-6;

    private final double linePeriod;
    private final double linesPerField;
    private final int pulses;
    private final double syncWidth;
    private final double frontPorch;
    private final double syncToPicture;
    private final double sync;
    private final double white;
    private double bright = 1;
    private double burst;
    private double carrier;

    MadeVideo(double lineRate, double linesPerField, int pulses, double syncToPicture, double sync, double white) {
        this(lineRate, linesPerField, pulses, 4.7e-6, 1.5e-6, syncToPicture, sync, white);
    }

    MadeVideo(double lineRate, double linesPerField, int pulses, double syncWidth, double frontPorch, double syncToPicture,
            double sync, double white) {
        linePeriod = 1 / lineRate;
        this.linesPerField = linesPerField;
        this.pulses = pulses;
        this.syncWidth = syncWidth;
        this.frontPorch = frontPorch;
        this.syncToPicture = syncToPicture;
        this.sync = sync;
        this.white = white;
    }

    /** The system of 625 lines, interlaced. */
    static MadeVideo lines625() {
        return new MadeVideo(15625, 312.5, 5, 10.5e-6, 0.3, 0.7).withBurst(0.15, 4.43361875e6);
    }

    /** The colour system of 525 lines, interlaced. */
    static MadeVideo lines525() {
        return new MadeVideo(4.5e6 / 286, 262.5, 6, 9.4e-6, 0.285714, 0.714286).withBurst(0.142857, 39.375e6 / 11);
    }

    MadeVideo withBurst(double amplitude, double hertz) {
        burst = amplitude;
        carrier = hertz;
        return this;
    }

    MadeVideo withBrightness(double share) {
        bright = share;
        return this;
    }

    /** A stretch of it. */
    Channel channel(double seconds, double gain, double offset) {
        double[] v = new double[(int) (seconds * RATE)];
        for (int i = 0; i < v.length; i++) {
            v[i] = offset + gain * at(100e-6 + i / RATE);
        }
        return Channel.volts("video", 1 / RATE, v);
    }

    /** Volts above blanking. */
    private double at(double t) {
        double inField = t % (linesPerField * linePeriod);
        double half = inField / (linePeriod / 2);
        int n = (int) half;
        double inHalf = (half - n) * linePeriod / 2;
        if (n < 3 * pulses) {
            boolean broad = n >= pulses && n < 2 * pulses;
            return -sync * pulse(inHalf, 0, broad ? linePeriod / 2 - BROAD_GAP : 2.35e-6);
        }
        // Lines go on from a whole number of lines, so that an odd field begins in the middle of one.
        double fieldEnd = linesPerField * linePeriod;
        double toEnd = fieldEnd - inField;
        double p = linePeriod - toEnd % linePeriod;
        p = p >= linePeriod ? 0 : p;
        boolean picture = n > 40;
        double y = -sync * pulse(p, 0, syncWidth);
        if (burst > 0 && p > 5.6e-6 && p < 7.8e-6) {
            y += burst * Math.sin(2 * Math.PI * carrier * t);
        }
        double x = (p - syncToPicture) / (linePeriod - syncToPicture - frontPorch);
        if (picture && x >= 0 && x <= 1) {
            y += white * bright * (x < 0.1 || x > 0.9 ? 1 : 0.2 + 0.6 * x);
        }
        return y;
    }

    /** 1 from {@code from} on for {@code width}, at half of its edges. */
    private static double pulse(double t, double from, double width) {
        double up = (t - from) / EDGE + 0.5;
        double down = (from + width - t) / EDGE + 0.5;
        return Math.max(0, Math.min(1, Math.min(up, down)));
    }
}
