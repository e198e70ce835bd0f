// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * A direction along the page's axes with a place to start from: into a body, along a pin. Distances come as along
 * (positive forwards) and across.
 *
 * @param from where it starts
 * @param dx   -1, 0 or 1
 * @param dy   -1, 0 or 1; one of the two is 0
 */
record Axis(Point from, int dx, int dy) {

    /** The axis from {@code from} that runs most nearly towards {@code to}. */
    static Axis towards(Point from, Point to) {
        double x = to.x() - from.x();
        double y = to.y() - from.y();
        return Math.abs(x) >= Math.abs(y) ? new Axis(from, x >= 0 ? 1 : -1, 0) : new Axis(from, 0, y >= 0 ? 1 : -1);
    }

    /** The same direction from another place. */
    Axis at(Point place) {
        return new Axis(place, dx, dy);
    }

    boolean horizontal() {
        return dx != 0;
    }

    /** How far along the nearest part of {@code box} begins. */
    double nearest(Box box) {
        return dx > 0 ? box.x0() - from.x() : dx < 0 ? from.x() - box.x1()
                : dy > 0 ? box.y0() - from.y() : from.y() - box.y1();
    }

    /** How far along the farthest part of {@code box} ends. */
    double farthest(Box box) {
        return dx > 0 ? box.x1() - from.x() : dx < 0 ? from.x() - box.x0()
                : dy > 0 ? box.y1() - from.y() : from.y() - box.y0();
    }

    /** How far the middle of {@code box} lies to the side. */
    double aside(Box box) {
        return horizontal() ? Math.abs(box.centre().y() - from.y()) : Math.abs(box.centre().x() - from.x());
    }
}
