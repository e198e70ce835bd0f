// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import java.util.List;

/**
 * What a logic family, or a chip, guarantees of its inputs and outputs. Currents are amounts: what flows into an input
 * that is high and out of one that is low, what an output gives when high and takes when low. A current that is not
 * known is NaN.
 *
 * @param name      as typed and shown ({@code "74LS"}, {@code "74HC@4.5V"}, {@code "Z80"})
 * @param title     what it is
 * @param chip      whether it is a single chip rather than a family
 * @param supplyMin least supply, in volts
 * @param supply    usual supply, in volts
 * @param supplyMax greatest supply, in volts
 * @param vihMin    lowest voltage that an input takes for high
 * @param vilMax    highest voltage that an input takes for low
 * @param iih       current into a high input, in amperes
 * @param iil       current out of a low input, in amperes
 * @param drives    what an output gives at one load and at others, at least one; the first is what the family is known by
 * @param leak      current into an output that is switched off, in amperes
 * @param source    where the numbers are from
 */
public record LogicLevels(String name, String title, boolean chip, double supplyMin, double supply, double supplyMax,
        double vihMin, double vilMax, double iih, double iil, List<Drive> drives, double leak, String source) {

    public LogicLevels {
        drives = List.copyOf(drives);
    }

    /**
     * What an output guarantees at a load.
     *
     * @param vohMin least high, in volts, while it gives {@code ioh}
     * @param ioh    in amperes
     * @param volMax greatest low, in volts, while it takes {@code iol}
     * @param iol    in amperes
     */
    public record Drive(double vohMin, double ioh, double volMax, double iol) {
    }

    /** What an output of the family is known to give. */
    public Drive drive() {
        return drives.get(0);
    }

    /**
     * What an output guarantees while it carries loads: by the first of {@link #drives} that can, else the strongest.
     *
     * @param high current that the loads take from a high output, in amperes
     * @param low  current that they put into a low one, in amperes
     */
    public Drive driveFor(double high, double low) {
        Drive strongest = drive();
        for (Drive d : drives) {
            if (d.ioh >= high && d.iol >= low) {
                return d;
            }
            strongest = d.iol > strongest.iol ? d : strongest;
        }
        return strongest;
    }
}
