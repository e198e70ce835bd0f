// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.reading;

import org.probeleaf.photo.graticule.Corners;
import org.probeleaf.photo.graticule.Divisions;
import org.probeleaf.photo.trace.TraceColour;

/**
 * What a person says of the photograph of a screen.
 *
 * @param volts     per division, above zero; NaN where not said
 * @param seconds   per division, above zero; NaN where not said
 * @param divisions how many there are; null to try the usual numbers
 * @param corners   of the graticule, in pixels of the upright picture; null to find them
 * @param zero      how many divisions above the centre 0 V lies, below it negative
 * @param colour    of the trace; null to find it
 */
public record PhotoOptions(double volts, double seconds, Divisions divisions, Corners corners, double zero,
        TraceColour colour) {

    public PhotoOptions {
        if (volts <= 0 || seconds <= 0 || Double.isInfinite(volts) || Double.isInfinite(seconds)) {
            throw new IllegalArgumentException("volts and time per division are above zero, as 1V,20us");
        }
        if (!(Math.abs(zero) <= 20)) {
            throw new IllegalArgumentException("0 V lies at most 20 divisions from the centre of the screen");
        }
    }

    /** So much a division, and all else is found or usual. */
    public static PhotoOptions of(double volts, double seconds) {
        return new PhotoOptions(volts, seconds, null, null, 0, null);
    }

    /** Nothing is said yet. */
    public static PhotoOptions none() {
        return of(Double.NaN, Double.NaN);
    }

    /** Whether volts and time per division are both said. */
    public boolean scaled() {
        return volts > 0 && seconds > 0;
    }

    public PhotoOptions withDivisions(Divisions to) {
        return new PhotoOptions(volts, seconds, to, corners, zero, colour);
    }

    public PhotoOptions withCorners(Corners to) {
        return new PhotoOptions(volts, seconds, divisions, to, zero, colour);
    }

    public PhotoOptions withZero(double to) {
        return new PhotoOptions(volts, seconds, divisions, corners, to, colour);
    }

    public PhotoOptions withColour(TraceColour to) {
        return new PhotoOptions(volts, seconds, divisions, corners, zero, to);
    }

    public PhotoOptions withScale(double v, double s) {
        return new PhotoOptions(v, s, divisions, corners, zero, colour);
    }
}
