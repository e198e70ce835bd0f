// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.symbol;

import static org.probeleaf.example.tl8.symbol.Symbol.p;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.example.tl8.ink.Ink;
import org.probeleaf.schematic.geometry.Box;

/** Diodes and transistors. The pins of a transistor are printed as B, C and E. */
public final class Semiconductors {

    private Semiconductors() {
    }

    /** Diode, 8 steps long, anode at the origin. */
    public static Symbol diode() {
        return anodeFirst(Passives.twoEnds(8, 2.6, 5.4, new Box(2.6, -1.6, 5.4, 1.6), diodeShapes()));
    }

    /** Light-emitting diode, 8 steps long, anode at the origin; its arrows point away from it upwards. */
    public static Symbol led() {
        List<Ink> shapes = new ArrayList<>(diodeShapes());
        shapes.addAll(ray(3.4, -2.0));
        shapes.addAll(ray(4.8, -2.0));
        return anodeFirst(Passives.twoEnds(8, 2.6, 5.4, new Box(2.6, -4, 6.5, 1.6), shapes));
    }

    /** The same symbol with its first end known as the anode, its second as the cathode. */
    private static Symbol anodeFirst(Symbol symbol) {
        SymbolPin a = symbol.pins().get(0);
        SymbolPin k = symbol.pins().get(1);
        return new Symbol(symbol.body(), symbol.shapes(), List.of(
                new SymbolPin(null, null, a.end(), a.root(), "A"), new SymbolPin(null, null, k.end(), k.root(), "K")));
    }

    private static List<Ink> diodeShapes() {
        return List.of(Ink.Line.outline(p(2.6, -1.6), p(5.4, 0), p(2.6, 1.6)),
                Ink.Line.thin(p(5.4, -1.6), p(5.4, 1.6)));
    }

    private static List<Ink> ray(double x, double y) {
        return List.of(Ink.Line.thin(p(x, y), p(x + 1.2, y - 1.6)),
                Ink.Line.area(p(x + 1.5, y - 2.0), p(x + 1.35, y - 1.15), p(x + 0.75, y - 1.6)));
    }

    /** NPN transistor: base at the origin, collector 6 right and 6 up, emitter 6 right and 6 down. */
    public static Symbol npn() {
        List<Ink> shapes = List.of(
                new Ink.Disc(p(5, 0), 3.2, false),
                Ink.Line.thin(p(3.8, -1.9), p(3.8, 1.9)),
                Ink.Line.thin(p(3.8, -0.8), p(6, -2.4)),
                Ink.Line.thin(p(3.8, 0.8), p(6, 2.4)),
                Ink.Line.area(p(5.9, 2.3), p(4.75, 2.05), p(5.3, 1.25)));
        return new Symbol(new Box(1.8, -3.2, 8.2, 3.2), shapes, List.of(
                new SymbolPin("B", null, p(0, 0), p(3.8, 0)),
                new SymbolPin("C", null, p(6, -6), p(6, -2.4)),
                new SymbolPin("E", null, p(6, 6), p(6, 2.4))));
    }
}
