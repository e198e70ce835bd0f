// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.TimeBase;

/**
 * The spectrum of an evenly sampled channel, its mean taken off, through a Hann window.
 *
 * @param window    the name of the window, for a person
 * @param step      distance of lines, in hertz
 * @param rms       the amplitude of each line as root mean square, in the channel's unit; a steady sine of that strength
 *                  in the middle of a line reads right
 * @param reason    why there is none; null where there is one
 */
public record Spectrum(String window, double step, double[] rms, String reason) {

    private static final int MOST = 1 << 17;
    private static final int LEAST = 16;
    private static final double HANN_GAIN = 0.5;

    /**
     * Of the first so many samples that make a power of two, {@value #MOST} at most. Of an unevenly sampled channel and of
     * one with missing samples there is none.
     */
    public static Spectrum of(Channel channel) {
        int n = Integer.highestOneBit(Math.min(MOST, channel.size()));
        if (!(channel.times() instanceof TimeBase.Uniform even)) {
            return none("its samples are unevenly spaced");
        }
        if (n < LEAST) {
            return none("it has fewer than " + LEAST + " samples");
        }
        double mean = 0;
        for (int i = 0; i < n; i++) {
            mean += channel.samples().get(i) / n;
        }
        if (Double.isNaN(mean)) {
            return none("samples are missing");
        }
        double[] re = new double[n];
        double[] im = new double[n];
        for (int i = 0; i < n; i++) {
            re[i] = (channel.samples().get(i) - mean) * (0.5 - 0.5 * Math.cos(2 * Math.PI * i / n));
        }
        Fourier.forward(re, im);
        double[] rms = new double[n / 2];
        for (int k = 1; k < rms.length; k++) {
            rms[k] = Math.hypot(re[k], im[k]) * Math.sqrt(2) / (n * HANN_GAIN);
        }
        return new Spectrum("Hann", 1 / (n * even.interval()), rms, null);
    }

    private static Spectrum none(String reason) {
        return new Spectrum("Hann", Double.NaN, new double[0], reason);
    }

    /**
     * A line that stands out.
     *
     * @param hertz where its peak is, between lines by the ratio of the two highest (exact for a Hann window)
     * @param rms   how strong, in the channel's unit
     */
    public record Peak(double hertz, double rms) {
    }

    /** The strongest peaks, the strongest first. */
    public List<Peak> peaks(int most) {
        List<Peak> peaks = new ArrayList<>();
        for (int k = 2; k + 1 < rms.length; k++) {
            if (rms[k] > rms[k - 1] && rms[k] >= rms[k + 1]) {
                boolean right = rms[k + 1] > rms[k - 1];
                double ratio = right ? rms[k + 1] / rms[k] : rms[k - 1] / rms[k];
                // For a Hann window the offset d of a sine from its line makes the ratio (1 + d) / (2 - d).
                double d = Math.max(0, Math.min(0.5, (2 * ratio - 1) / (1 + ratio)));
                double loss = d == 0 ? 1 : Math.sin(Math.PI * d) / (Math.PI * d * (1 - d * d));
                peaks.add(new Peak((k + (right ? d : -d)) * step, rms[k] / loss));
            }
        }
        peaks.sort((a, b) -> Double.compare(b.rms, a.rms));
        return peaks.subList(0, Math.min(most, peaks.size()));
    }
}
