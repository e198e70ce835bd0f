// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

/**
 * One transition.
 *
 * @param rises       whether it goes up
 * @param start       when it passes the first reference level, in seconds; NaN where that is not in the capture
 * @param middle      when it passes 50 %, in seconds
 * @param end         when it passes the last reference level; NaN where it never does
 * @param unsure      uncertainty of {@code end - start}, in seconds
 * @param middleUnsure uncertainty of {@code middle}, in seconds
 * @param above       how far it goes above the state level it belongs to, in the regions before and after; 0 or more
 * @param below       the same below
 */
public record Transition(boolean rises, double start, double middle, double end, double unsure, double middleUnsure,
        double above, double below) {

    /** Whether both reference levels were passed. */
    public boolean whole() {
        return !Double.isNaN(start) && !Double.isNaN(end);
    }

    /** The transition duration, in seconds; NaN where it is not whole. */
    public double duration() {
        return end - start;
    }
}
