// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import org.probeleaf.example.tl8.symbol.Symbol;
import org.probeleaf.example.tl8.symbol.SymbolPin;
import org.probeleaf.schematic.geometry.Box;

/**
 * A part, or a unit of one, at its place.
 *
 * @param ref    designator without unit letter
 * @param unit   unit letter, or null for a part in one piece
 * @param value  printed value, or null
 * @param symbol its symbol, already turned
 * @param origin where the symbol's origin is
 * @param words  where designator and value are printed
 */
public record Placed(String ref, String unit, String value, Symbol symbol, Spot origin, Words words) {

    /** Where the designator and the value of a part are printed. */
    public enum Words {
        /** Designator above the body, value below it, both flush with its left edge. */
        ABOVE_AND_BELOW,
        /** Designator above the body, value below it, both centred. */
        CENTRED,
        /** Designator and value one above the other, both above the body, centred. */
        BOTH_ABOVE,
        /** Designator and value one above the other, both below the body, centred. */
        BOTH_BELOW,
        /** Both to the right of the body, designator first. */
        RIGHT,
        /** Both to the left of the body, designator first. */
        LEFT
    }

    /** The designator as printed. */
    public String title() {
        return unit == null ? ref : ref + unit;
    }

    /** The spot of the pin with the given number. */
    public Spot pin(String number) {
        return symbol.pins().stream().filter(p -> number.equals(p.number())).findFirst().map(this::spot)
                .orElseThrow(() -> new IllegalArgumentException(title() + " has no pin " + number));
    }

    /** The spot of one end of a part without pin numbers: 0 the first, 1 the second. */
    public Spot end(int index) {
        return spot(symbol.pins().get(index));
    }

    /** Where a wire meets the given pin of this part. */
    public Spot spot(SymbolPin pin) {
        return new Spot(origin.x() + (int) Math.round(pin.end().x()), origin.y() + (int) Math.round(pin.end().y()));
    }

    /** Round the body, in points. */
    public Box box() {
        Box b = symbol.body();
        double g = Symbol.GRID;
        return new Box((b.x0() + origin.x()) * g, (b.y0() + origin.y()) * g, (b.x1() + origin.x()) * g,
                (b.y1() + origin.y()) * g);
    }
}
