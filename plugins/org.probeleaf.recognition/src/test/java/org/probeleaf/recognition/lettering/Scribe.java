// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.SheetKind;

/** Writes words with single strokes, as a drawing program does, with a hand that is not quite the alphabet's. */
final class Scribe {

    private final List<Stroke> strokes = new ArrayList<>();
    private final Random random;
    private final double slant;
    private final double narrow;
    private final boolean cut;

    /**
     * @param seed of the hand's unsteadiness
     * @param cut  whether every stroke is drawn as many short ones
     */
    Scribe(long seed, boolean cut) {
        this.random = new Random(seed);
        this.slant = 0.1 * random.nextDouble();
        this.narrow = 0.85 + 0.3 * random.nextDouble();
        this.cut = cut;
    }

    /** Writes a word with capitals of the given height, its base line beginning at a point. */
    Scribe write(String words, double x, double y, double capital, Direction direction) {
        double u = 0;
        for (char c : words.toCharArray()) {
            if (c == ' ') {
                u += 0.7 * capital;
                continue;
            }
            double width = 0;
            for (double[][] line : Writing.of(c)) {
                List<Point> points = new ArrayList<>();
                for (double[] p : line) {
                    double along = u + capital * (narrow * p[0] + slant * p[1]) + jitter(capital);
                    double up = capital * p[1] + jitter(capital);
                    Point from = new Point(x, y);
                    points.add(direction.at(direction.u(from) + along, direction.v(from) + up));
                    width = Math.max(width, p[0]);
                }
                add(points);
            }
            u += capital * (narrow * width + 0.28);
        }
        return this;
    }

    /** Draws a bar over writing. */
    Scribe bar(double x0, double x1, double y) {
        strokes.add(stroke(List.of(new Point(x0, y), new Point(x1, y))));
        return this;
    }

    /** Draws a line that is no writing. */
    Scribe line(Point... points) {
        strokes.add(new Stroke(List.of(points), false, false, 0.4, 0x008000, false, true));
        return this;
    }

    Drawing page() {
        return new Drawing(1, 600, 400, SheetKind.VECTOR, strokes, List.of(), List.of(), List.of());
    }

    private double jitter(double capital) {
        return 0.012 * capital * random.nextGaussian();
    }

    private void add(List<Point> points) {
        if (!cut) {
            strokes.add(stroke(points));
            return;
        }
        for (int i = 1; i < points.size(); i++) {
            strokes.add(stroke(points.subList(i - 1, i + 1)));
        }
    }

    private static Stroke stroke(List<Point> points) {
        return new Stroke(points, false, false, 0.4, 0, false, true);
    }
}
