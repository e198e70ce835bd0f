// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.layout;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * A straight line from one point to another.
 *
 * @param a one end
 * @param b the other end
 */
public record Segment(Point a, Point b) {

    public double length() {
        return a.distance(b);
    }

    public Point middle() {
        return at(0.5);
    }

    /** The point at a share of the way, 0 at {@code a}, 1 at {@code b}. */
    public Point at(double share) {
        return new Point(a.x() + (b.x() - a.x()) * share, a.y() + (b.y() - a.y()) * share);
    }

    /** Whether it runs more across than down. */
    public boolean lies() {
        return Math.abs(b.x() - a.x()) >= Math.abs(b.y() - a.y());
    }

    /** The distance from a point to the nearest point of this. */
    public double distance(Point p) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy) / square;
        return at(Math.max(0, Math.min(1, t))).distance(p);
    }

    /** Whether this and another have a point in common, ends included. */
    public boolean crosses(Segment o) {
        return side(o.a) * side(o.b) <= 0 && o.side(a) * o.side(b) <= 0;
    }

    /** Whether any of this lies in a box. */
    public boolean enters(Box box) {
        if (box.contains(a) || box.contains(b)) {
            return true;
        }
        Point nw = new Point(box.x0(), box.y0());
        Point se = new Point(box.x1(), box.y1());
        Point ne = new Point(box.x1(), box.y0());
        Point sw = new Point(box.x0(), box.y1());
        return crosses(new Segment(nw, se)) || crosses(new Segment(ne, sw));
    }

    private double side(Point p) {
        return Math.signum((b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x()));
    }
}
