// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

/** How a part hands a signal on. */
public enum StepKind {
    /** Through a part that does nothing of itself: a resistor, a capacitor, a diode, a fuse, a pair of contacts. */
    SERIES,
    /** Through a transistor. */
    TRANSISTOR,
    /** Through a section of a chip, from an input to an output. */
    GATE,
    /** From a clock, a select, an enable or a reset of a section to what it works on. */
    CONTROL,
    /** From the pin that switches a three-state output on and off, or turns a transceiver round, to that output. */
    ENABLE;

    /** Whether the part does nothing of itself. */
    public boolean passive() {
        return this == SERIES;
    }
}
