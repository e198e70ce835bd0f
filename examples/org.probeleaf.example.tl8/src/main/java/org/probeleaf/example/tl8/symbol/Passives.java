// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.symbol;

import static org.probeleaf.example.tl8.symbol.Symbol.p;

import java.util.List;

import org.probeleaf.example.tl8.ink.Ink;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Parts with two ends that have no direction, and electrolytic capacitors. The first end is the origin, the second
 * lies to the right on the same line. No pin numbers are printed on them.
 */
public final class Passives {

    private Passives() {
    }

    /** Resistor, 10 steps long: a box. */
    public static Symbol resistor() {
        return twoEnds(10, 2, 8, new Box(2, -0.9, 8, 0.9), List.of(rectangle(2, -0.9, 8, 0.9)));
    }

    /** Fuse, 10 steps long: a box with its wire showing. */
    public static Symbol fuse() {
        return twoEnds(10, 2, 8, new Box(2, -0.9, 8, 0.9),
                List.of(rectangle(2, -0.9, 8, 0.9), Ink.Line.thin(p(2, 0), p(8, 0))));
    }

    /** Capacitor, 6 steps long: two plates. */
    public static Symbol capacitor() {
        return twoEnds(6, 2.6, 3.4, new Box(2.6, -1.8, 3.4, 1.8), List.of(
                Ink.Line.thin(p(2.6, -1.8), p(2.6, 1.8)), Ink.Line.thin(p(3.4, -1.8), p(3.4, 1.8))));
    }

    /** Electrolytic capacitor, 6 steps long: the open plate, marked +, is the first end. */
    public static Symbol electrolytic() {
        return twoEnds(6, 2.2, 3.8, new Box(2.2, -1.8, 3.8, 1.8), List.of(
                rectangle(2.2, -1.8, 2.8, 1.8), Ink.Line.area(p(3.2, -1.8), p(3.8, -1.8), p(3.8, 1.8), p(3.2, 1.8)),
                Ink.Line.thin(p(0.7, -1.3), p(1.7, -1.3)), Ink.Line.thin(p(1.2, -1.8), p(1.2, -0.8))));
    }

    /** Crystal, 8 steps long: a slab between two plates. */
    public static Symbol crystal() {
        return twoEnds(8, 2.6, 5.4, new Box(2.6, -1.8, 5.4, 1.8), List.of(
                Ink.Line.thin(p(2.6, -1.4), p(2.6, 1.4)), Ink.Line.thin(p(5.4, -1.4), p(5.4, 1.4)),
                rectangle(3.3, -1.8, 4.7, 1.8)));
    }

    /** Push button, 8 steps long, normally open. */
    public static Symbol button() {
        return twoEnds(8, 2, 6, new Box(2, -2.4, 6, 0.4), List.of(
                new Ink.Disc(p(2.4, 0), 0.4, false), new Ink.Disc(p(5.6, 0), 0.4, false),
                Ink.Line.thin(p(2, -1.1), p(6, -1.1)), Ink.Line.thin(p(4, -1.1), p(4, -2.4)),
                Ink.Line.thin(p(3.2, -2.4), p(4.8, -2.4))));
    }

    /** Test point: a ring on a short line; the one end is the origin. */
    public static Symbol testPoint() {
        return new Symbol(new Box(2, -0.6, 3.2, 0.6), List.of(new Ink.Disc(p(2.6, 0), 0.6, false)),
                List.of(new SymbolPin(null, null, p(0, 0), p(2, 0))));
    }

    static Symbol twoEnds(int length, double left, double right, Box body, List<Ink> shapes) {
        Point a = p(0, 0);
        Point b = p(length, 0);
        return new Symbol(body, shapes,
                List.of(new SymbolPin(null, null, a, p(left, 0)), new SymbolPin(null, null, b, p(right, 0))));
    }

    private static Ink rectangle(double x0, double y0, double x1, double y1) {
        return Ink.Line.outline(p(x0, y0), p(x1, y0), p(x1, y1), p(x0, y1));
    }
}
