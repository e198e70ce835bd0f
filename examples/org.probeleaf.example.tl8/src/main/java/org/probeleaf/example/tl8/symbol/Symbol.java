// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.symbol;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.example.tl8.ink.Ink;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * A drawn symbol, in grid steps round its origin. The lines of the pins are not part of {@code shapes}; they follow
 * from the pins.
 *
 * @param body   round the shapes, without the pins
 * @param shapes the drawing; lengths in grid steps
 * @param pins   the pins
 */
public record Symbol(Box body, List<Ink> shapes, List<SymbolPin> pins) {
    /** One grid step in points. */
    public static final double GRID = 5;

    public Symbol {
        shapes = List.copyOf(shapes);
        pins = List.copyOf(pins);
    }

    static Point p(double x, double y) {
        return new Point(x, y);
    }

    /** The same symbol turned. */
    public Symbol turned(Turn turn) {
        Point a = turn.of(p(body.x0(), body.y0()));
        Point b = turn.of(p(body.x1(), body.y1()));
        List<SymbolPin> turnedPins = pins.stream()
                .map(q -> new SymbolPin(q.number(), q.name(), turn.of(q.end()), turn.of(q.root()),
                        q.role())).toList();
        return new Symbol(Box.of(a.x(), a.y(), b.x(), b.y()),
                shapes.stream().map(s -> map(s, 1, turn::of)).toList(), turnedPins);
    }

    /** The shapes and pin lines on paper, in points, with the origin at grid step ({@code x}, {@code y}). */
    public List<Ink> ink(int x, int y) {
        Mapping onPaper = q -> p((q.x() + x) * GRID, (q.y() + y) * GRID);
        List<Ink> result = new ArrayList<>();
        shapes.forEach(s -> result.add(map(s, GRID, onPaper)));
        for (SymbolPin pin : pins) {
            if (!pin.end().equals(pin.root())) {
                result.add(Ink.Line.thin(onPaper.of(pin.end()), onPaper.of(pin.root())));
            }
        }
        return result;
    }

    private interface Mapping {
        Point of(Point p);
    }

    private static Ink map(Ink ink, double scale, Mapping m) {
        if (ink instanceof Ink.Line line) {
            return new Ink.Line(line.points().stream().map(m::of).toList(), line.width(), line.closed(), line.filled());
        }
        if (ink instanceof Ink.Curve c) {
            return new Ink.Curve(m.of(c.from()), m.of(c.c1()), m.of(c.c2()), m.of(c.to()));
        }
        if (ink instanceof Ink.Disc d) {
            return new Ink.Disc(m.of(d.centre()), d.radius() * scale, d.filled());
        }
        Ink.Words w = (Ink.Words) ink;
        return new Ink.Words(w.text(), m.of(w.at()), w.anchor(), w.size(), w.upward());
    }
}
