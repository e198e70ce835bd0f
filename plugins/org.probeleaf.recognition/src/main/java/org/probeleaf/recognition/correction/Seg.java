// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import org.probeleaf.schematic.geometry.Point;

/**
 * A straight piece of wire.
 *
 * @param page 1-based page
 * @param a    one end, in points
 * @param b    the other end
 */
record Seg(int page, Point a, Point b) {

    /** The nearest point of this piece to {@code p}. */
    Point nearest(Point p) {
        return p.nearestOn(a, b);
    }

    double distance(Point p) {
        return nearest(p).distance(p);
    }

    double length() {
        return a.distance(b);
    }

    /** Whether the two lie in the same or in opposite directions, within some 15 degrees. */
    boolean parallel(Seg o) {
        double ax = b.x() - a.x();
        double ay = b.y() - a.y();
        double bx = o.b.x() - o.a.x();
        double by = o.b.y() - o.a.y();
        return Math.abs(ax * by - ay * bx) <= 0.26 * Math.hypot(ax, ay) * Math.hypot(bx, by);
    }

    /** Where the two lines cross within both pieces, or null. */
    Point crossing(Seg o) {
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
}
