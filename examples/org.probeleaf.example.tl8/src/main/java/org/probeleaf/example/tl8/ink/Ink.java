// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.ink;

import java.util.List;

import org.probeleaf.schematic.geometry.Point;

/** One mark on a page, all black. Lengths are points, origin at the top left of the page, y downwards. */
public sealed interface Ink {

    /** Line width of everything but buses and the frame. */
    double THIN = 0.7;
    /** Line width of a bus. */
    double THICK = 2.6;

    /**
     * Straight lines through two or more points.
     *
     * @param points its corners
     * @param width  line width
     * @param closed whether the last point is joined to the first
     * @param filled whether the inside is black
     */
    record Line(List<Point> points, double width, boolean closed, boolean filled) implements Ink {
        public Line {
            points = List.copyOf(points);
        }

        /** An open thin line. */
        public static Line thin(Point... points) {
            return new Line(List.of(points), THIN, false, false);
        }

        /** A closed thin outline. */
        public static Line outline(Point... points) {
            return new Line(List.of(points), THIN, true, false);
        }

        /** A black area. */
        public static Line area(Point... points) {
            return new Line(List.of(points), THIN, true, true);
        }
    }

    /**
     * A cubic curve, thin.
     *
     * @param from start
     * @param c1   first control point
     * @param c2   second control point
     * @param to   end
     */
    record Curve(Point from, Point c1, Point c2, Point to) implements Ink {
    }

    /**
     * A circle.
     *
     * @param centre its centre
     * @param radius its radius
     * @param filled a black disc rather than a thin ring
     */
    record Disc(Point centre, double radius, boolean filled) implements Ink {
    }

    /**
     * Words in one line.
     *
     * @param text   the words
     * @param at     where the base line starts, has its middle, or ends, as {@code anchor} says
     * @param anchor 0 starts there, 0.5 is centred there, 1 ends there
     * @param size   font size in points
     * @param upward whether it reads from bottom to top rather than from left to right
     */
    record Words(String text, Point at, double anchor, double size, boolean upward) implements Ink {
    }
}
