// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/** Which way a line is written; u runs along it, v from its base line to the tops of its letters. */
enum Direction {
    RIGHT(0), UP(270), DOWN(90), LEFT(180);

    private final double angle;

    Direction(double angle) {
        this.angle = angle;
    }

    /** In degrees, clockwise as seen, as a text's. */
    double angle() {
        return angle;
    }

    /** The way that a line turned upside down is written. */
    Direction opposite() {
        return switch (this) {
            case RIGHT -> LEFT;
            case UP -> DOWN;
            case DOWN -> UP;
            case LEFT -> RIGHT;
        };
    }

    double u(Point p) {
        return switch (this) {
            case RIGHT -> p.x();
            case UP -> -p.y();
            case DOWN -> p.y();
            case LEFT -> -p.x();
        };
    }

    double v(Point p) {
        return switch (this) {
            case RIGHT -> -p.y();
            case UP -> -p.x();
            case DOWN -> p.x();
            case LEFT -> p.y();
        };
    }

    /** The point of the page at u and v. */
    Point at(double u, double v) {
        return switch (this) {
            case RIGHT -> new Point(u, -v);
            case UP -> new Point(-v, -u);
            case DOWN -> new Point(v, u);
            case LEFT -> new Point(-u, v);
        };
    }

    /** A box of the page, as a box with u for x and v for y. */
    Box turned(Box b) {
        Point p = new Point(b.x0(), b.y0());
        Point q = new Point(b.x1(), b.y1());
        return new Box(Math.min(u(p), u(q)), Math.min(v(p), v(q)), Math.max(u(p), u(q)), Math.max(v(p), v(q)));
    }
}
