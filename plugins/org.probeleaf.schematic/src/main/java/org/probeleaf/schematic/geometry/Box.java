// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.geometry;

/**
 * An upright rectangle on a page, in points from the top left of the page as displayed.
 *
 * @param x0 left edge
 * @param y0 top edge
 * @param x1 right edge, at least {@code x0}
 * @param y1 bottom edge, at least {@code y0}
 */
public record Box(double x0, double y0, double x1, double y1) {

    /** The smallest box that holds both corners, in whatever order they come. */
    public static Box of(double xa, double ya, double xb, double yb) {
        return new Box(Math.min(xa, xb), Math.min(ya, yb), Math.max(xa, xb), Math.max(ya, yb));
    }

    /**
     * The smallest box round points.
     *
     * @param points one or more
     */
    public static Box around(Iterable<Point> points) {
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        for (Point p : points) {
            x0 = Math.min(x0, p.x());
            y0 = Math.min(y0, p.y());
            x1 = Math.max(x1, p.x());
            y1 = Math.max(y1, p.y());
        }
        return new Box(x0, y0, x1, y1);
    }

    /** A box without extent at {@code p}. */
    public static Box of(Point p) {
        return new Box(p.x(), p.y(), p.x(), p.y());
    }

    public double width() {
        return x1 - x0;
    }

    public double height() {
        return y1 - y0;
    }

    public Point centre() {
        return new Point((x0 + x1) / 2, (y0 + y1) / 2);
    }

    /** The smallest box that holds this one and {@code other}. */
    public Box union(Box other) {
        return new Box(Math.min(x0, other.x0), Math.min(y0, other.y0), Math.max(x1, other.x1), Math.max(y1, other.y1));
    }

    /** This box with every edge moved outwards by {@code margin} points (inwards if negative). */
    public Box grow(double margin) {
        return new Box(x0 - margin, y0 - margin, x1 + margin, y1 + margin);
    }

    /** Whether {@code p} lies inside or on the edge. */
    public boolean contains(Point p) {
        return contains(p.x(), p.y());
    }

    /** Whether the place lies inside or on the edge. */
    public boolean contains(double x, double y) {
        return x >= x0 && x <= x1 && y >= y0 && y <= y1;
    }

    /** Whether {@code other} lies wholly inside this box, edges included. */
    public boolean contains(Box other) {
        return other.x0 >= x0 && other.x1 <= x1 && other.y0 >= y0 && other.y1 <= y1;
    }

    /** Whether the two boxes share at least a point. */
    public boolean intersects(Box other) {
        return other.x0 <= x1 && other.x1 >= x0 && other.y0 <= y1 && other.y1 >= y0;
    }

    /** The distance from {@code p} to the nearest point of this box, in points; 0 inside. */
    public double distance(Point p) {
        double dx = Math.max(0, Math.max(x0 - p.x(), p.x() - x1));
        double dy = Math.max(0, Math.max(y0 - p.y(), p.y() - y1));
        return Math.hypot(dx, dy);
    }

    /** The gap between this box and {@code other}, in points; 0 where they touch or overlap. */
    public double distance(Box other) {
        double dx = Math.max(0, Math.max(x0 - other.x1, other.x0 - x1));
        double dy = Math.max(0, Math.max(y0 - other.y1, other.y0 - y1));
        return Math.hypot(dx, dy);
    }
}
