// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.compare;

/**
 * How far a capture may be from its reference.
 *
 * @param level share of the reference's span, up and down
 * @param time  share of the reference's period to either side, or of two of its pulses where it has none, or of its length;
 *              never less than two samples
 * @param out   share of the samples that may lie outside all the same
 */
public record Tolerance(double level, double time, double out) {

    /** A twentieth up and down, a fiftieth of a period to either side, one sample in a hundred outside. */
    public static Tolerance usual() {
        return new Tolerance(0.05, 0.02, 0.01);
    }
}
