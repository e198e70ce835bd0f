// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import java.util.Locale;

/** Which way a pin works on its net. */
public enum PinDirection {
    /** It listens: a load. */
    IN,
    /** It drives, always or when enabled. */
    OUT,
    /** It drives or listens by turns. */
    BIDIR,
    /** It does neither of itself: a resistor's end, a connector's contact. */
    PASSIVE,
    /** It takes or gives the supply. */
    POWER,
    /** Nobody has said. */
    UNKNOWN;

    /** The word that documents use: {@code in}, {@code out}, {@code bidir}, {@code passive}, … */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
