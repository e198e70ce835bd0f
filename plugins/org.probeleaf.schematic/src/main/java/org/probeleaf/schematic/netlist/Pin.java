// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import org.probeleaf.schematic.geometry.Point;

/**
 * One pin of a part.
 *
 * @param number  as printed ({@code "21"}, {@code "A1"}), or null where the sheet prints none
 * @param name    as printed ({@code "/RD"}) or as the symbol tells it ({@code "K"} of a diode), or null where neither does
 * @param unit    the unit of the part that the pin belongs to ({@code "A"}), or null for a part in one piece
 * @param page    1-based page the pin is drawn on
 * @param at      where a wire meets the pin, or null for an implied pin
 * @param net     id of the pin's net, or null where the pin is drawn unconnected
 * @param implied true where the sheet does not draw the pin but the part book knows it
 */
public record Pin(String number, String name, String unit, int page, Point at, String net, boolean implied) {

    /** A drawn pin. */
    public static Pin drawn(String number, String name, String unit, int page, Point at, String net) {
        return new Pin(number, name, unit, page, at, net, false);
    }

    /** What a person calls the pin: its number, else its name, else {@code "?"}; never null. */
    public String label() {
        return number != null ? number : name != null ? name : "?";
    }
}
