// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import java.util.ArrayList;
import java.util.List;

/** Draws one wire of level and upright lines that hops over others in half circles. */
final class HopPen {

    private static final int STEPS = 8;

    private final Sketch sketch;
    private final double radius;
    private final boolean oneStyle;
    private final boolean oneStroke;
    private final List<Double> all = new ArrayList<>();
    private double x;
    private double y;

    /**
     * @param oneStyle  whether wires are drawn like symbols
     * @param oneStroke whether all of the wire is one stroke, else lines and arcs are strokes of their own
     */
    HopPen(Sketch sketch, double radius, boolean oneStyle, boolean oneStroke, double x, double y) {
        this.sketch = sketch;
        this.radius = radius;
        this.oneStyle = oneStyle;
        this.oneStroke = oneStroke;
        this.x = x;
        this.y = y;
        all.addAll(List.of(x, y));
    }

    void level(double toX) {
        line(toX, y);
    }

    void upright(double toY) {
        line(x, toY);
    }

    /** Goes on along the column to a level wire and hops over it to the right. */
    void hop(double over) {
        double side = over > y ? -1 : 1;
        line(x, over + side * radius);
        double[] arc = new double[2 * (STEPS + 1)];
        for (int k = 0; k <= STEPS; k++) {
            double a = Math.PI * k / STEPS;
            arc[2 * k] = x + radius * Math.sin(a);
            arc[2 * k + 1] = over + side * radius * Math.cos(a);
        }
        arc[2 * STEPS] = x;
        if (oneStroke) {
            for (int k = 2; k < arc.length; k++) {
                all.add(arc[k]);
            }
        } else if (oneStyle) {
            sketch.curve(arc);
        } else {
            sketch.wireArc(arc);
        }
        y = arc[arc.length - 1];
    }

    private void line(double toX, double toY) {
        if (toX == x && toY == y) {
            return;
        }
        if (oneStroke) {
            all.addAll(List.of(toX, toY));
        } else if (oneStyle) {
            sketch.line(x, y, toX, toY);
        } else {
            sketch.wire(x, y, toX, toY);
        }
        x = toX;
        y = toY;
    }

    void end() {
        if (oneStroke) {
            sketch.wireArc(all.stream().mapToDouble(d -> d).toArray());
        }
    }
}
