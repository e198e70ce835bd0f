// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.compare;

import java.util.List;

import org.probeleaf.waveform.capture.Channel;

/**
 * How a capture lies on its reference, for drawing. Times are those of the capture.
 *
 * @param laid       what is to be added to the reference's times, in seconds
 * @param level      how far the capture may be off, up and down, in its unit
 * @param time       how far to either side, in seconds
 * @param outside    stretches that leave the tolerance, in order
 * @param difference the capture less the reference, where both are
 */
public record Overlay(double laid, double level, double time, List<Stretch> outside, Channel difference) {

    public Overlay {
        outside = List.copyOf(outside);
    }

    /**
     * From one sample to another, in seconds.
     *
     * @param from the first that is outside
     * @param to   the last
     */
    public record Stretch(double from, double to) {
    }
}
