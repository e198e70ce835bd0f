// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.symbol;

import org.probeleaf.schematic.geometry.Point;

/**
 * A pin of a symbol, in grid steps from the symbol's origin.
 *
 * @param number as printed beside its line, or null where none is printed
 * @param name   as printed inside the body, or null where none is printed
 * @param end    where a wire meets it; whole grid steps
 * @param root   where its line meets the body
 * @param role   what the shape of the symbol says that it is, such as a diode's cathode; null where it says nothing
 */
public record SymbolPin(String number, String name, Point end, Point root, String role) {

    SymbolPin(String number, String name, Point end, Point root) {
        this(number, name, end, root, null);
    }

    /** What a reader of the sheet calls the pin beside its number: its printed name, else its role; or null. */
    public String calledBy() {
        return name != null ? name : role;
    }
}
