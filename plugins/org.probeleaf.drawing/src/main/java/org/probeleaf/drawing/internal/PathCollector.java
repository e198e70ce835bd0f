// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/** Gathers the sub-paths of the path under construction, flattened, in displayed page coordinates. */
final class PathCollector {

    /** Straight pieces that stand for one Bezier curve: on sheets curves are small, so a fixed number serves. */
    static final int CURVE_PIECES = 8;

    /** A gathered sub-path. */
    static final class SubPath {
        final List<Point> points = new ArrayList<>();
        boolean closed;
        boolean curved;
    }

    private final List<SubPath> subPaths = new ArrayList<>();
    private SubPath open;
    private double currentX;
    private double currentY;

    void moveTo(double x, double y) {
        open = new SubPath();
        open.points.add(new Point(x, y));
        subPaths.add(open);
        setCurrent(x, y);
    }

    void lineTo(double x, double y) {
        ensureOpen(x, y);
        add(x, y);
    }

    void curveTo(double x1, double y1, double x2, double y2, double x3, double y3) {
        ensureOpen(x1, y1);
        double x0 = currentX;
        double y0 = currentY;
        for (int i = 1; i <= CURVE_PIECES; i++) {
            double t = (double) i / CURVE_PIECES;
            double u = 1 - t;
            add(u * u * u * x0 + 3 * u * u * t * x1 + 3 * u * t * t * x2 + t * t * t * x3,
                    u * u * u * y0 + 3 * u * u * t * y1 + 3 * u * t * t * y2 + t * t * t * y3);
        }
        open.curved = true;
    }

    void close() {
        if (open != null) {
            open.closed = true;
            Point first = open.points.get(0);
            setCurrent(first.x(), first.y());
            // What follows a close without a move starts anew at the same place.
            open = null;
        }
    }

    /** The point the path has come to, in displayed coordinates. */
    Point2D current() {
        return new Point2D.Double(currentX, currentY);
    }

    List<SubPath> subPaths() {
        return subPaths;
    }

    /** Round all points, or null where there are none. */
    Box bounds() {
        Box all = null;
        for (SubPath sub : subPaths) {
            Box box = Box.around(sub.points);
            all = all == null ? box : all.union(box);
        }
        return all;
    }

    void clear() {
        subPaths.clear();
        open = null;
    }

    private void ensureOpen(double x, double y) {
        if (open == null) {
            boolean resumed = !subPaths.isEmpty();
            moveTo(resumed ? currentX : x, resumed ? currentY : y);
        }
    }

    private void add(double x, double y) {
        Point last = open.points.get(open.points.size() - 1);
        if (last.x() != x || last.y() != y) {
            open.points.add(new Point(x, y));
        }
        setCurrent(x, y);
    }

    private void setCurrent(double x, double y) {
        currentX = x;
        currentY = y;
    }
}
