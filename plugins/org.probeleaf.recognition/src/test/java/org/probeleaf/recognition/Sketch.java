// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Fill;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.SheetKind;

/** A sheet sketched by a test: a pitch of 10 points, wires of one colour, symbols of another. */
final class Sketch {

    private static final double WIDTH = 800;
    private static final double HEIGHT = 600;
    /** The colour of wires. */
    static final int WIRE = 0x007000;
    private static final int SYMBOL = 0x800000;
    private static final int BUS = 0x0000A0;

    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Fill> fills = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();

    /** A wire through the given corners: x, y, x, y ... */
    Sketch wire(double... xy) {
        for (int i = 2; i < xy.length; i += 2) {
            strokes.add(new Stroke(List.of(new Point(xy[i - 2], xy[i - 1]), new Point(xy[i], xy[i + 1])), false, false,
                    0.6, WIRE, false, false));
        }
        return this;
    }

    /** A junction dot. */
    Sketch dot(double x, double y) {
        List<Point> rim = new ArrayList<>();
        for (int i = 0; i < 16; i++) {
            double a = Math.PI * i / 8;
            rim.add(new Point(x + 1.5 * Math.cos(a), y + 1.5 * Math.sin(a)));
        }
        fills.add(new Fill(rim, true, WIRE, new Box(x - 1.5, y - 1.5, x + 1.5, y + 1.5)));
        return this;
    }

    /**
     * A box with pins 1, 2, ... down its left side and on down its right side, each on a lead of 20 points, 10 points
     * apart; pin 1 has its outer end at (x, y).
     */
    Sketch chip(String ref, double x, double y, int left, int right) {
        int rows = Math.max(left, right);
        double x0 = x + 20;
        double y0 = y - 10;
        double x1 = x0 + 60;
        double y1 = y0 + 10 * (rows + 1);
        strokes.add(new Stroke(List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)),
                true, false, 0.8, SYMBOL, false, false));
        for (int i = 0; i < left; i++) {
            lead(x, y + 10 * i, x0, y + 10 * i);
            text(String.valueOf(i + 1), x + 8, y + 10 * i - 1, 4);
        }
        for (int i = 0; i < right; i++) {
            lead(x1, y + 10 * i, x1 + 20, y + 10 * i);
            text(String.valueOf(left + i + 1), x1 + 8, y + 10 * i - 1, 4);
        }
        return text(ref, x0, y0 - 2, 6);
    }

    /** A lying resistor whose leads end at (x, y) and (x + 40, y). */
    Sketch resistor(String ref, double x, double y) {
        strokes.add(new Stroke(List.of(new Point(x + 10, y - 3), new Point(x + 30, y - 3), new Point(x + 30, y + 3),
                new Point(x + 10, y + 3)), true, false, 0.8, SYMBOL, false, false));
        lead(x, y, x + 10, y);
        lead(x + 30, y, x + 40, y);
        return text(ref, x + 14, y - 5, 6);
    }

    /** A supply bar at (x, y) met by a wire from below, its name above it. */
    Sketch supply(String name, double x, double y) {
        strokes.add(new Stroke(List.of(new Point(x - 4, y), new Point(x + 4, y)), false, false, 0.8, SYMBOL, false,
                false));
        return text(name, x - 5, y - 3, 6);
    }

    /** A flag that a wire from the left meets at (x, y). */
    Sketch flag(String name, double x, double y) {
        double end = x + 12 + 4 * name.length();
        strokes.add(new Stroke(List.of(new Point(x, y), new Point(x + 5, y - 5), new Point(end, y - 5),
                new Point(end, y + 5), new Point(x + 5, y + 5)), true, false, 0.5, SYMBOL, false, false));
        return text(name, x + 6, y + 2.2, 6);
    }

    /** Upright text whose base line starts at (x, y). */
    Sketch text(String text, double x, double y, double size) {
        double length = 0.6 * size * text.length();
        texts.add(new Text(text, new Point(x, y), 0, size, new Box(x, y - 0.72 * size, x + length, y + 0.2 * size),
                "Sans", 0, true));
        return this;
    }

    /** Text that is written upwards; its base line starts at (x, y). */
    Sketch upright(String text, double x, double y, double size) {
        double length = 0.6 * size * text.length();
        texts.add(new Text(text, new Point(x, y), 270, size, new Box(x - 0.72 * size, y - length, x + 0.2 * size, y),
                "Sans", 0, true));
        return this;
    }

    /** A line of a symbol through the given corners. */
    Sketch line(double... xy) {
        strokes.add(new Stroke(points(xy), false, false, 0.6, SYMBOL, false, false));
        return this;
    }

    /** A curve of a symbol, flattened to the given corners. */
    Sketch curve(double... xy) {
        strokes.add(new Stroke(points(xy), false, true, 0.6, SYMBOL, false, false));
        return this;
    }

    /** A wire with curves in it, flattened to the given corners, in one stroke. */
    Sketch wireArc(double... xy) {
        strokes.add(new Stroke(points(xy), false, true, 0.6, WIRE, false, false));
        return this;
    }

    /** A circle of a symbol. */
    Sketch ring(double x, double y, double radius) {
        double[] xy = new double[32];
        for (int i = 0; i < 16; i++) {
            xy[2 * i] = x + radius * Math.cos(Math.PI * i / 8);
            xy[2 * i + 1] = y + radius * Math.sin(Math.PI * i / 8);
        }
        strokes.add(new Stroke(points(xy), true, true, 0.6, SYMBOL, false, false));
        return this;
    }

    /** A closed outline of a symbol. */
    Sketch outline(double... xy) {
        strokes.add(new Stroke(points(xy), true, false, 0.6, SYMBOL, false, false));
        return this;
    }

    /** A thick line of a bus. */
    Sketch bus(double x0, double y0, double x1, double y1) {
        strokes.add(new Stroke(points(x0, y0, x1, y1), false, false, 2, BUS, false, false));
        return this;
    }

    /** A wire drawn as a filled rectangle. */
    Sketch thinFill(double x0, double y0, double x1, double y1) {
        double h = 0.3;
        double ex = x0 == x1 ? h : 0;
        double ey = y0 == y1 ? h : 0;
        fills.add(new Fill(points(x0 - ex, y0 - ey, x1 + ex, y0 - ey, x1 + ex, y1 + ey, x0 - ex, y1 + ey), false,
                WIRE, Box.of(x0 - ex, y0 - ey, x1 + ex, y1 + ey)));
        return this;
    }

    /** A wire drawn in one stroke through the given corners. */
    Sketch polyline(double... xy) {
        strokes.add(new Stroke(points(xy), false, false, 0.6, WIRE, false, false));
        return this;
    }

    /** A dot drawn as a thick stroke of no length with a round end. */
    Sketch roundCap(double x, double y) {
        strokes.add(new Stroke(points(x, y, x, y), false, false, 3, WIRE, false, true));
        return this;
    }

    /** A dot drawn as a filled polygon with eight corners. */
    Sketch polygonDot(double x, double y) {
        double[] xy = new double[16];
        for (int i = 0; i < 8; i++) {
            xy[2 * i] = x + 1.5 * Math.cos(Math.PI * i / 4);
            xy[2 * i + 1] = y + 1.5 * Math.sin(Math.PI * i / 4);
        }
        fills.add(new Fill(points(xy), false, WIRE, new Box(x - 1.5, y - 1.5, x + 1.5, y + 1.5)));
        return this;
    }

    private static List<Point> points(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return points;
    }

    private void lead(double x0, double y0, double x1, double y1) {
        strokes.add(new Stroke(List.of(new Point(x0, y0), new Point(x1, y1)), false, false, 0.6, SYMBOL, false,
                false));
    }

    Drawing page(int number) {
        return new Drawing(number, WIDTH, HEIGHT, SheetKind.VECTOR, strokes, fills, texts, List.of());
    }
}
