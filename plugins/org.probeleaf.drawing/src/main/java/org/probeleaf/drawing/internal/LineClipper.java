// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Cuts off what of a line lies farther from the page than the page is large. Only damaged files have such lines, but
 * each of them would otherwise have to be looked at near every place that it passes over.
 */
final class LineClipper {

    private final Box near;

    /** @param page what is seen of the page */
    LineClipper(Box page) {
        near = page.grow(Math.max(page.width(), page.height()));
    }

    /** Whether nothing has to be cut off a line, given the box round it. */
    boolean holds(Box line) {
        return near.contains(line);
    }

    /**
     * What is left of a line, as one or more lines; none where all of it is far away.
     *
     * @param corners two or more
     * @param closed  whether the last is joined to the first
     */
    List<List<Point>> clipped(List<Point> corners, boolean closed) {
        List<List<Point>> runs = new ArrayList<>();
        List<Point> run = new ArrayList<>();
        int lines = closed ? corners.size() : corners.size() - 1;
        for (int i = 0; i < lines; i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double[] part = visible(a, b);
            if (part == null || part[0] > 0 && !run.isEmpty()) {
                end(run, runs);
                run = new ArrayList<>();
            }
            if (part == null) {
                continue;
            }
            if (run.isEmpty()) {
                run.add(at(a, b, part[0]));
            }
            run.add(at(a, b, part[1]));
            if (part[1] < 1) {
                end(run, runs);
                run = new ArrayList<>();
            }
        }
        end(run, runs);
        return runs;
    }

    private static void end(List<Point> run, List<List<Point>> runs) {
        if (run.size() > 1) {
            runs.add(run);
        }
    }

    /** From where to where between two points a line is near, as shares of it, or null; after Liang and Barsky (1984). */
    private double[] visible(Point a, Point b) {
        double[] part = {0, 1};
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        boolean any = cut(-dx, a.x() - near.x0(), part) && cut(dx, near.x1() - a.x(), part)
                && cut(-dy, a.y() - near.y0(), part) && cut(dy, near.y1() - a.y(), part);
        return any ? part : null;
    }

    /** Cuts with one side: how fast the line goes out through it, and how far inside it begins. */
    private static boolean cut(double out, double inside, double[] part) {
        if (out == 0) {
            return inside >= 0;
        }
        double t = inside / out;
        if (out < 0) {
            part[0] = Math.max(part[0], t);
        } else {
            part[1] = Math.min(part[1], t);
        }
        return part[0] <= part[1];
    }

    private static Point at(Point a, Point b, double t) {
        return t <= 0 ? a : t >= 1 ? b : new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
    }
}
