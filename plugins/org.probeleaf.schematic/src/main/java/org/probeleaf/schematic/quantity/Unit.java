// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

/** The units that bench values come in. Values are held in exactly these, without prefix. */
public enum Unit {
    /** A plain number. */
    NONE(""),
    VOLT("V"),
    AMPERE("A"),
    OHM("\u03a9"),
    FARAD("F"),
    HERTZ("Hz"),
    SECOND("s"),
    /** Degrees Celsius, a unit of the SI; temperatures are held in it as they are read on the bench. */
    DEGREE_CELSIUS("\u00b0C");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    /** As printed after a value ({@code "V"}); empty for a plain number. */
    public String symbol() {
        return symbol;
    }
}
