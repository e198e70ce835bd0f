// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.judge;

import java.util.Locale;

import org.probeleaf.schematic.partbook.LogicLevels;

/**
 * What the next stage needs.
 *
 * @param name      of the family, or of the threshold, for a person
 * @param low       at and below this it is taken for low, in volts
 * @param high      at and above this it is taken for high, in volts; equal to {@code low} for a plain threshold
 * @param slowest   the longest an edge may take from {@code low} to {@code high}, in seconds; NaN where none is known
 * @param assumed   whether nobody said so, and it is only taken to tell high from low
 */
public record Thresholds(String name, double low, double high, double slowest, boolean assumed) {

    /** Inputs of 74HC at 4.5 V (data sheets, from memory); TTL inputs are commonly held to the same. */
    private static final double LOGIC = 500e-9;
    /** Clock inputs of the 4000B series at 5 V (data sheets, from memory). */
    private static final double SLOW_CMOS = 15e-6;

    /** The input levels of a family or a chip. */
    public static Thresholds of(LogicLevels levels) {
        boolean slow = levels.name().toUpperCase(Locale.ROOT).startsWith("4000");
        return new Thresholds(levels.name(), levels.vilMax(), levels.vihMin(), slow ? SLOW_CMOS : LOGIC, false);
    }

    /** One voltage that the signal must pass both ways. */
    public static Thresholds plain(double volts) {
        return new Thresholds("a threshold of " + org.probeleaf.waveform.measure.Si.text(volts, "V"), volts, volts, Double.NaN,
                false);
    }

    /** TTL levels, where nothing was said. */
    public static Thresholds usual() {
        return new Thresholds("TTL", 0.8, 2.0, Double.NaN, true);
    }

    /** Whether low and high are apart, so that there is a band between. */
    public boolean band() {
        return high > low;
    }
}
