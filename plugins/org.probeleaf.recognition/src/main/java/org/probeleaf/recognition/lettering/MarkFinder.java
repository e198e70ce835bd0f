// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.recognition.ink.Groups;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/** Puts small strokes that touch each other together. */
final class MarkFinder {

    /** The largest letter, in points. */
    private static final double LARGEST = 24;

    /** What a stroke is drawn with. */
    private record Pen(int rgb, long width) {
    }

    private final List<Stroke> strokes;
    private final Box[] boxes;
    private final int[] style;
    private final Groups groups;
    private final Coordinate[][] corners;
    private final boolean[] touches;
    private final List<Mark> marks;

    MarkFinder(List<Stroke> strokes, boolean[] taken) {
        this.strokes = strokes;
        int n = strokes.size();
        boxes = new Box[n];
        style = new int[n];
        groups = new Groups(n);
        corners = new Coordinate[n][];
        touches = new boolean[n];
        Map<Pen, Integer> pens = new HashMap<>();
        List<Integer> ids = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Stroke s = strokes.get(i);
            boxes[i] = Box.around(s.points());
            style[i] = pens.computeIfAbsent(new Pen(s.rgb(), Math.round(s.width() * 20)), p -> pens.size());
            corners[i] = corners(s);
            if (!taken[i]) {
                ids.add(i);
            }
        }
        SpatialIndex<Integer> index = new SpatialIndex<>(ids, i -> boxes[i]);
        for (int i : ids) {
            if (isSmall(i)) {
                join(i, index);
            }
        }
        marks = collect(ids);
    }

    /** Marks in the order of painting. */
    List<Mark> marks() {
        return marks;
    }

    private boolean isSmall(int i) {
        return !strokes.get(i).dashed() && Math.max(boxes[i].width(), boxes[i].height()) <= LARGEST;
    }

    private void join(int i, SpatialIndex<Integer> index) {
        double reach = Math.max(0.06, 0.35 * strokes.get(i).width());
        for (int j : index.touching(boxes[i].grow(reach))) {
            if (j != i && (j > i || !isSmall(j)) && near(corners[i], corners[j], reach)) {
                if (isSmall(j) && style[j] == style[i]) {
                    groups.join(i, j);
                } else {
                    touches[i] = true;
                    touches[j] = true;
                }
            }
        }
    }

    private List<Mark> collect(List<Integer> ids) {
        Map<Integer, List<Integer>> together = new LinkedHashMap<>();
        for (int i : ids) {
            if (isSmall(i)) {
                together.computeIfAbsent(groups.find(i), k -> new ArrayList<>()).add(i);
            }
        }
        List<Mark> found = new ArrayList<>();
        for (List<Integer> group : together.values()) {
            Box box = boxes[group.get(0)];
            boolean touched = false;
            for (int k : group) {
                box = box.union(boxes[k]);
                touched |= touches[k];
            }
            if (Math.max(box.width(), box.height()) <= LARGEST) {
                found.add(new Mark(group, box, style[group.get(0)],
                        strokes.get(group.get(0)).width(), touched));
            }
        }
        return found;
    }

    private static Coordinate[] corners(Stroke stroke) {
        List<Coordinate> corners = new ArrayList<>();
        for (Point p : stroke.points()) {
            corners.add(new Coordinate(p.x(), p.y()));
        }
        if (stroke.closed() || corners.size() == 1) {
            corners.add(corners.get(0));
        }
        return corners.toArray(Coordinate[]::new);
    }

    private static boolean near(Coordinate[] a, Coordinate[] b, double reach) {
        for (int i = 1; i < a.length; i++) {
            for (int j = 1; j < b.length; j++) {
                if (mayTouch(a[i - 1], a[i], b[j - 1], b[j], reach)
                        && Distance.segmentToSegment(a[i - 1], a[i], b[j - 1], b[j]) <= reach) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether the boxes of two segments come close; nearly all pairs fall out here. */
    private static boolean mayTouch(Coordinate a, Coordinate b, Coordinate c, Coordinate d, double reach) {
        return Math.min(a.x, b.x) <= Math.max(c.x, d.x) + reach && Math.min(c.x, d.x) <= Math.max(a.x, b.x) + reach
                && Math.min(a.y, b.y) <= Math.max(c.y, d.y) + reach
                && Math.min(c.y, d.y) <= Math.max(a.y, b.y) + reach;
    }
}
