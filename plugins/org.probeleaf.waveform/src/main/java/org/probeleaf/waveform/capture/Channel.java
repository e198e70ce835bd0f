// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.capture;

/**
 * One trace of a capture.
 *
 * @param name       as in the file, or made up from its place; never empty
 * @param unit       of the values: {@code V}, {@code A}, or empty where the file does not tell; never with a prefix
 * @param times      when each sample was taken
 * @param samples    the values, in {@code unit}; NaN where one is missing
 * @param resolution the step of the converter, in {@code unit}; NaN where it is not known
 * @param held       whether a value holds until the next one, rather than running straight to it
 * @param jitter     by how much the time of a sample may be out, either way, in seconds; 0 where times are as good as the
 *                   instrument
 */
public record Channel(String name, String unit, TimeBase times, Samples samples, double resolution, boolean held,
        double jitter) {

    /** A channel of which times are as good as the instrument. */
    public Channel(String name, String unit, TimeBase times, Samples samples, double resolution, boolean held) {
        this(name, unit, times, samples, resolution, held, 0);
    }

    /** A channel of which the step is not known, running straight from sample to sample. */
    public static Channel of(String name, String unit, TimeBase times, Samples samples) {
        return new Channel(name, unit, times, samples, Double.NaN, false);
    }

    /** A channel in volts with samples at even distances, the first at 0 s. */
    public static Channel volts(String name, double interval, double... volts) {
        return of(name, "V", new TimeBase.Uniform(0, interval, volts.length), Samples.of(volts));
    }

    /** How many samples it has. */
    public int size() {
        return samples.size();
    }

    /** From the first sample to the last, in seconds; 0 for fewer than two. */
    public double duration() {
        return size() < 2 ? 0 : times.at(size() - 1) - times.at(0);
    }
}
