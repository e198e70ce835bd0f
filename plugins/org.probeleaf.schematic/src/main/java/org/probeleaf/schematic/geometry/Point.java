// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.geometry;

/**
 * A place on a page.
 *
 * @param x PDF points (1/72 in) from the left edge of the page as displayed
 * @param y PDF points from the top edge of the page as displayed, growing downwards
 */
public record Point(double x, double y) {

    /** The straight distance to {@code other}, in points. */
    public double distance(Point other) {
        double dx = other.x - x;
        double dy = other.y - y;
        // On a page nothing overflows, and hypot is many times slower.
        return Math.sqrt(dx * dx + dy * dy);
    }

    // Points are keys of maps all through the recogniser; the hash of a record is slow to start and mixes badly.
    @Override
    public int hashCode() {
        long bits = Double.doubleToLongBits(x) * 0x9E3779B97F4A7C15L + Double.doubleToLongBits(y);
        return (int) (bits ^ bits >>> 32);
    }

    /** The place nearest to this point on the straight line from {@code a} to {@code b}, ends included. */
    public Point nearestOn(Point a, Point b) {
        double dx = b.x - a.x;
        double dy = b.y - a.y;
        double square = dx * dx + dy * dy;
        if (square == 0) {
            return a;
        }
        double t = Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / square));
        return new Point(a.x + t * dx, a.y + t * dy);
    }

    /** This point moved by the given points. */
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
