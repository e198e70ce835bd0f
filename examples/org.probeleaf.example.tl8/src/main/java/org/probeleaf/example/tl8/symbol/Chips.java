// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.symbol;

import static org.probeleaf.example.tl8.symbol.Symbol.p;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.example.tl8.ink.Ink;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Boxes with pins on their sides: chips, regulators, connectors. The body's top left corner is the origin; pins are
 * two steps apart, the first one two steps below the top.
 */
public final class Chips {
    private static final int LEAD = 4;

    private Chips() {
    }

    /**
     * A box.
     *
     * @param width  of the body
     * @param left   its left pins from top to bottom, "number name" each; "" leaves a gap
     * @param right  its right pins likewise
     * @param top    the pin at the middle of its top, or null
     * @param bottom the pin at the middle of its bottom, or null
     */
    public static Symbol box(int width, List<String> left, List<String> right, String top, String bottom) {
        int height = 2 * Math.max(left.size(), right.size()) + 2;
        List<SymbolPin> pins = new ArrayList<>();
        addSide(pins, left, -LEAD, 0);
        addSide(pins, right, width + LEAD, width);
        if (top != null) {
            pins.add(pin(top, p(width / 2, -LEAD), p(width / 2, 0)));
        }
        if (bottom != null) {
            pins.add(pin(bottom, p(width / 2, height + LEAD), p(width / 2, height)));
        }
        Ink outline = Ink.Line.outline(p(0, 0), p(width, 0), p(width, height), p(0, height));
        return new Symbol(new Box(0, 0, width, height), List.of(outline), pins);
    }

    private static void addSide(List<SymbolPin> pins, List<String> rows, int end, int root) {
        for (int i = 0; i < rows.size(); i++) {
            if (!rows.get(i).isEmpty()) {
                pins.add(pin(rows.get(i), p(end, 2 + 2 * i), p(root, 2 + 2 * i)));
            }
        }
    }

    private static SymbolPin pin(String text, Point end, Point root) {
        int space = text.indexOf(' ');
        String number = space < 0 ? text : text.substring(0, space);
        String name = space < 0 ? null : text.substring(space + 1);
        return new SymbolPin(number, name, end, root);
    }
}
