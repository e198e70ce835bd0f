// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Boxes along lines. The one box of a line drawn slantwise over the page holds all that is on the page; with a row of
 * small ones only what lies beside the line is found near it.
 */
final class LinePieces {

    /** A box with a side no longer than this, in points, is small. */
    private static final double SMALL = 24;
    /** Into how many pieces one line is cut at most, however large the page. */
    private static final int MOST = 128;

    private LinePieces() {
    }

    /**
     * Boxes that together hold a line.
     *
     * @param corners two or more
     * @param closed  whether the last is joined to the first
     * @param whole   the box round all of it
     */
    static List<Box> boxes(List<Point> corners, boolean closed, Box whole) {
        if (isSmall(whole)) {
            return List.of(whole);
        }
        List<Box> boxes = new ArrayList<>();
        Box open = Box.of(corners.get(0));
        int ends = closed ? corners.size() : corners.size() - 1;
        for (int i = 0; i < ends; i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            double across = Math.min(Math.abs(b.x() - a.x()), Math.abs(b.y() - a.y()));
            int steps = (int) Math.min(MOST, Math.max(1, Math.ceil(across / SMALL)));
            for (int k = 0; k < steps; k++) {
                Box piece = between(a, b, (double) k / steps, (double) (k + 1) / steps);
                Box longer = open.union(piece);
                if (!isSmall(longer)) {
                    boxes.add(open);
                    longer = piece;
                }
                open = longer;
            }
        }
        boxes.add(open);
        return boxes;
    }

    private static Box between(Point a, Point b, double from, double to) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        return Box.of(a.x() + from * dx, a.y() + from * dy, to == 1 ? b.x() : a.x() + to * dx,
                to == 1 ? b.y() : a.y() + to * dy);
    }

    private static boolean isSmall(Box box) {
        return Math.min(box.width(), box.height()) <= SMALL;
    }
}
