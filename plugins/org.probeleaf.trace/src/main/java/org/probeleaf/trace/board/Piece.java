// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import org.probeleaf.schematic.geometry.Point;

/**
 * A straight piece of drawn wire, or a point where both ends are one.
 *
 * @param page 1-based page
 * @param a    one end, in points
 * @param b    the other end
 */
record Piece(int page, Point a, Point b) {

    double distance(Point p) {
        return p.nearestOn(a, b).distance(p);
    }

    boolean endsAt(Point p, double within) {
        return a.distance(p) <= within || b.distance(p) <= within;
    }

    /** Whether two pieces run in the same or in opposite directions, within some 15 degrees. */
    boolean alongside(Piece o) {
        double ax = b.x() - a.x();
        double ay = b.y() - a.y();
        double bx = o.b.x() - o.a.x();
        double by = o.b.y() - o.a.y();
        return Math.abs(ax * by - ay * bx) <= 0.26 * Math.hypot(ax, ay) * Math.hypot(bx, by);
    }

    /** Where two pieces cross, or null. */
    Point crossing(Piece o) {
        double rx = b.x() - a.x();
        double ry = b.y() - a.y();
        double sx = o.b.x() - o.a.x();
        double sy = o.b.y() - o.a.y();
        double d = rx * sy - ry * sx;
        if (Math.abs(d) < 1e-9) {
            return null;
        }
        double t = ((o.a.x() - a.x()) * sy - (o.a.y() - a.y()) * sx) / d;
        double u = ((o.a.x() - a.x()) * ry - (o.a.y() - a.y()) * rx) / d;
        return t < 0 || t > 1 || u < 0 || u > 1 ? null : new Point(a.x() + t * rx, a.y() + t * ry);
    }

    /** Whether the boxes round two pieces come within a distance of each other. */
    boolean mayTouch(Piece o, double within) {
        return Math.max(a.x(), b.x()) + within >= Math.min(o.a.x(), o.b.x())
                && Math.max(o.a.x(), o.b.x()) + within >= Math.min(a.x(), b.x())
                && Math.max(a.y(), b.y()) + within >= Math.min(o.a.y(), o.b.y())
                && Math.max(o.a.y(), o.b.y()) + within >= Math.min(a.y(), b.y());
    }

    /** The least distance between two pieces of one page, in points. */
    double distance(Piece o) {
        if (crossing(o) != null) {
            return 0;
        }
        return Math.min(Math.min(o.distance(a), o.distance(b)), Math.min(distance(o.a), distance(o.b)));
    }
}
