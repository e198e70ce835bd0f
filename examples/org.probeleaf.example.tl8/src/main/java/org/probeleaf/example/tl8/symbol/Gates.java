// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.symbol;

import static org.probeleaf.example.tl8.symbol.Symbol.p;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.example.tl8.ink.Ink;
import org.probeleaf.schematic.geometry.Box;

/** Logic gates in their distinctive shapes. The origin is the middle of the input side; the output points right. */
public final class Gates {
    private static final double BUBBLE = 0.7;

    private Gates() {
    }

    /** Two-input OR: inputs 2 steps above and below the middle, output 13 steps to the right. */
    public static Symbol or(String in1, String in2, String out) {
        List<Ink> shapes = List.of(
                new Ink.Curve(p(0, -4), p(1.7, -1.5), p(1.7, 1.5), p(0, 4)),
                Ink.Line.thin(p(0, -4), p(2.5, -4)),
                Ink.Line.thin(p(0, 4), p(2.5, 4)),
                new Ink.Curve(p(2.5, -4), p(5.5, -4), p(7.6, -2.4), p(9, 0)),
                new Ink.Curve(p(2.5, 4), p(5.5, 4), p(7.6, 2.4), p(9, 0)));
        return new Symbol(new Box(0, -4, 9, 4), shapes, List.of(
                new SymbolPin(in1, null, p(-4, -2), p(0.95, -2)),
                new SymbolPin(in2, null, p(-4, 2), p(0.95, 2)),
                new SymbolPin(out, null, p(13, 0), p(9, 0))));
    }

    /** Two-input NAND: inputs 2 steps above and below the middle, output 13 steps to the right. */
    public static Symbol nand(String in1, String in2, String out) {
        double k = 4 * 0.5522847498;
        List<Ink> shapes = List.of(
                Ink.Line.thin(p(4, -4), p(0, -4), p(0, 4), p(4, 4)),
                new Ink.Curve(p(4, -4), p(4 + k, -4), p(8, -k), p(8, 0)),
                new Ink.Curve(p(4, 4), p(4 + k, 4), p(8, k), p(8, 0)),
                new Ink.Disc(p(8 + BUBBLE, 0), BUBBLE, false));
        return new Symbol(new Box(0, -4, 9.4, 4), shapes, List.of(
                new SymbolPin(in1, null, p(-4, -2), p(0, -2)),
                new SymbolPin(in2, null, p(-4, 2), p(0, 2)),
                new SymbolPin(out, null, p(13, 0), p(8 + 2 * BUBBLE, 0))));
    }

    /** Inverter: input 4 steps to the left of the origin, output 12 to the right. */
    public static Symbol not(String in, String out) {
        return inverter(in, out, List.of());
    }

    /** Inverter with hysteresis, like {@link #not}. */
    public static Symbol schmittNot(String in, String out) {
        return inverter(in, out, List.of(
                Ink.Line.thin(p(1.1, 0.8), p(2.7, 0.8), p(2.7, -0.8), p(3.5, -0.8)),
                Ink.Line.thin(p(1.9, 0.8), p(1.9, -0.8), p(2.7, -0.8))));
    }

    private static Symbol inverter(String in, String out, List<Ink> extra) {
        List<Ink> shapes = new ArrayList<>(extra);
        shapes.add(Ink.Line.outline(p(0, -3.5), p(6.6, 0), p(0, 3.5)));
        shapes.add(new Ink.Disc(p(6.6 + BUBBLE, 0), BUBBLE, false));
        return new Symbol(new Box(0, -3.5, 8, 3.5), shapes, List.of(
                new SymbolPin(in, null, p(-4, 0), p(0, 0)),
                new SymbolPin(out, null, p(12, 0), p(6.6 + 2 * BUBBLE, 0))));
    }
}
