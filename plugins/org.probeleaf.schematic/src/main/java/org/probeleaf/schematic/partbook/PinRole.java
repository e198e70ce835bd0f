// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

/** What a pin of a type of part is there for, as the part book writes it. */
public enum PinRole {
    IN("in", PinDirection.IN),
    OUT("out", PinDirection.OUT),
    /** An output that can let go of its net. */
    THREE_STATE("tri", PinDirection.OUT),
    /** An output that only pulls down; something else pulls its net up. */
    OPEN_COLLECTOR("oc", PinDirection.OUT),
    BIDIR("io", PinDirection.BIDIR),
    /** For an outside resistor or capacitor. */
    TIMING("timing", PinDirection.PASSIVE),
    SUPPLY("power", PinDirection.POWER),
    GROUND("ground", PinDirection.POWER),
    NOT_CONNECTED("nc", PinDirection.PASSIVE);

    private final String word;
    private final PinDirection direction;

    PinRole(String word, PinDirection direction) {
        this.word = word;
        this.direction = direction;
    }

    /** The word for it in the part book. */
    public String word() {
        return word;
    }

    public PinDirection direction() {
        return direction;
    }
}
