// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

/** What kind of part a designator's letters stand for, and what that says of its pins. */
public enum PartClass {
    AMPLIFIER(PinDirection.UNKNOWN),
    ASSEMBLY(PinDirection.UNKNOWN),
    CAPACITOR(PinDirection.PASSIVE),
    CONNECTOR(PinDirection.PASSIVE),
    CRYSTAL(PinDirection.PASSIVE),
    DELAY(PinDirection.UNKNOWN),
    DIODE(PinDirection.PASSIVE),
    ELECTROMECHANICAL(PinDirection.PASSIVE),
    FILTER(PinDirection.PASSIVE),
    IC(PinDirection.UNKNOWN),
    INDICATOR(PinDirection.PASSIVE),
    INDUCTOR(PinDirection.PASSIVE),
    LINK(PinDirection.PASSIVE),
    MECHANICAL(PinDirection.PASSIVE),
    NETWORK(PinDirection.PASSIVE),
    OTHER(PinDirection.UNKNOWN),
    PROTECTION(PinDirection.PASSIVE),
    RELAY(PinDirection.PASSIVE),
    RESISTOR(PinDirection.PASSIVE),
    /** A battery, a supply, a generator. */
    SOURCE(PinDirection.UNKNOWN),
    SWITCH(PinDirection.PASSIVE),
    TESTPOINT(PinDirection.PASSIVE),
    TRANSDUCER(PinDirection.PASSIVE),
    TRANSFORMER(PinDirection.PASSIVE),
    TRANSISTOR(PinDirection.UNKNOWN),
    /** The letters mean one thing here and another there. */
    AMBIGUOUS(PinDirection.UNKNOWN),
    /** Letters that no list knows. */
    UNKNOWN(PinDirection.UNKNOWN);

    private final PinDirection pins;

    PartClass(PinDirection pins) {
        this.pins = pins;
    }

    /** Which way the pins of such a part work where nothing more is known of them. */
    public PinDirection pins() {
        return pins;
    }
}
