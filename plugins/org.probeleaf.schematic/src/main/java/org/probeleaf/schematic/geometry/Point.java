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
        return Math.hypot(other.x - x, other.y - y);
    }

    /** This point moved by the given points. */
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }
}
