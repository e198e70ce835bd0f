// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.drive;

/**
 * The resistor that pulls up a net whose outputs only pull down (open collector or drain):
 * R<sub>max</sub> = (V<sub>CC</sub> - V<sub>OH</sub>) / (n<sub>out</sub> I<sub>leak</sub> + n<sub>in</sub> I<sub>IH</sub>) and
 * R<sub>min</sub> = (V<sub>CC</sub> - V<sub>OL</sub>) / (I<sub>OL</sub> - n<sub>in</sub> I<sub>IL</sub>), as data books of
 * TTL and textbooks have it (T. L. Floyd, Digital Fundamentals, the chapter on integrated circuit technologies).
 *
 * @param least    in ohms; infinite where the inputs alone are too much for the output
 * @param greatest in ohms; infinite where nothing leaks
 */
public record PullUp(double least, double greatest) {

    /**
     * Works out the resistor.
     *
     * @param vcc    supply, in volts
     * @param voh    high that is wanted, in volts
     * @param vol    low that the output gives, in volts
     * @param iol    what an output takes while low, in amperes
     * @param leak   into all outputs that are off, in amperes
     * @param iih    into all inputs while high, in amperes
     * @param iil    out of all inputs while low, in amperes
     */
    public static PullUp of(double vcc, double voh, double vol, double iol, double leak, double iih, double iil) {
        double sink = iol - iil;
        return new PullUp(sink > 0 ? (vcc - vol) / sink : Double.POSITIVE_INFINITY, (vcc - voh) / (leak + iih));
    }

    /** Whether any resistor will do. */
    public boolean possible() {
        return least <= greatest;
    }

    /**
     * How long the net takes to rise, in seconds: R C ln(V<sub>CC</sub> / (V<sub>CC</sub> - V)).
     *
     * @param ohms   the resistor
     * @param farads the capacitance of the net
     * @param vcc    supply, in volts
     * @param volts  the level to reach, below the supply
     */
    public static double riseTime(double ohms, double farads, double vcc, double volts) {
        return ohms * farads * Math.log(vcc / (vcc - volts));
    }

    /** The time from 10 to 90 % of the supply, in seconds: R C ln 9. */
    public static double riseTime10To90(double ohms, double farads) {
        return ohms * farads * Math.log(9);
    }
}
