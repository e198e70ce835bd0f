// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.drive;

import java.util.OptionalInt;

import org.probeleaf.schematic.partbook.LogicLevels;
import org.probeleaf.schematic.partbook.LogicLevels.Drive;

/**
 * One family's outputs against another's inputs: margins V<sub>OH</sub> - V<sub>IH</sub> and V<sub>IL</sub> -
 * V<sub>OL</sub>, and the fan-out, the whole number of inputs that I<sub>OH</sub> / I<sub>IH</sub> and I<sub>OL</sub> /
 * I<sub>IL</sub> allow (the usual reckoning with data sheets of TTL).
 *
 * @param drive      what the output guarantees, light where one input lets it
 * @param marginHigh noise margin of a high, in volts; negative where the input may not take it for high
 * @param marginLow  noise margin of a low, in volts
 * @param fanOutHigh how many inputs a high output carries; empty where a current is not known
 * @param fanOutLow  how many inputs a low output carries
 */
public record LogicLink(Drive drive, double marginHigh, double marginLow, OptionalInt fanOutHigh,
        OptionalInt fanOutLow) {

    /** Absorbs what division leaves over in binary fractions: 1.6 mA are four times 0.4 mA. */
    private static final double ROUNDING = 1 + 1e-9;

    /** Sets outputs of one family against inputs of another. */
    public static LogicLink of(LogicLevels from, LogicLevels to) {
        Drive drive = from.driveFor(known(to.iih()), known(to.iil()));
        return new LogicLink(drive, rounded(drive.vohMin() - to.vihMin()), rounded(to.vilMax() - drive.volMax()),
                times(drive.ioh(), to.iih()), times(drive.iol(), to.iil()));
    }

    /** How many inputs the output carries, high and low; empty where a current is not known. */
    public OptionalInt fanOut() {
        return fanOutHigh.isPresent() && fanOutLow.isPresent()
                ? OptionalInt.of(Math.min(fanOutHigh.getAsInt(), fanOutLow.getAsInt())) : OptionalInt.empty();
    }

    /** Whether both levels are understood and at least one input can be driven. */
    public boolean works() {
        return marginHigh >= 0 && marginLow >= 0 && fanOut().orElse(1) >= 1;
    }

    private static double known(double current) {
        return Double.isNaN(current) ? 0 : current;
    }

    private static OptionalInt times(double whole, double part) {
        return Double.isNaN(whole) || Double.isNaN(part) || part == 0 ? OptionalInt.empty()
                : OptionalInt.of((int) Math.floor(whole / part * ROUNDING));
    }

    /** To the microvolt: levels are given in hundredths of a volt. */
    static double rounded(double volts) {
        return Math.round(volts * 1e6) / 1e6;
    }
}
