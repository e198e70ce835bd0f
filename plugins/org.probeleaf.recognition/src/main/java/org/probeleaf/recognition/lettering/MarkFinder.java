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
    /** The widest pen that letters of that size are drawn with, in points. */
    private static final double WIDEST = LARGEST / 4;

    /** The most strokes that one letter is drawn with where a curve is one stroke, and where it is many. */
    private static final int CHAINS_OF_LETTER = 4;
    private static final int STROKES_OF_LETTER = 40;

    /** A mark thinner than this share of its length is a straight line; where it touches others it is no letter. */
    private static final double STRAIGHT = 0.05;

    /** How many times longer than a curve a straight line is that makes no letter with it; in an "r" it is less. */
    private static final double RULE = 3;

    /** What a stroke is drawn with. */
    private record Pen(int rgb, long width) {
    }

    private final List<Stroke> strokes;
    private final Box[] boxes;
    private final int[] style;
    private final boolean inOrder;
    private final Groups groups;
    private final Coordinate[][] corners;
    private final boolean[] touches;
    private final List<Mark> marks;

    /**
     * @param taken   strokes to leave alone
     * @param inOrder whether every letter was drawn stroke after stroke, so that others over it are no part of it
     */
    MarkFinder(List<Stroke> strokes, boolean[] taken, boolean inOrder) {
        this.strokes = strokes;
        this.inOrder = inOrder;
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
        SpatialIndex<Integer> index = SpatialIndex.ofStrokes(ids, strokes);
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
        return !strokes.get(i).dashed() && length(i) <= LARGEST && strokes.get(i).width() <= WIDEST;
    }

    private void join(int i, SpatialIndex<Integer> index) {
        double reach = Math.max(0.06, 0.35 * strokes.get(i).width());
        for (int j : index.touching(boxes[i].grow(reach))) {
            if (j != i && (j > i || !isSmall(j)) && near(corners[i], corners[j], reach)) {
                if (isSmall(j) && style[j] == style[i] && !(inOrder && areApart(i, j)) && !isRule(i, j)
                        && !isRule(j, i)) {
                    groups.join(i, j);
                } else {
                    touches[i] = true;
                    touches[j] = true;
                }
            }
        }
    }

    /** Whether too much was drawn between two strokes for them to be of one letter. */
    private boolean areApart(int i, int j) {
        boolean chains = strokes.get(i).points().size() > 2 || strokes.get(j).points().size() > 2;
        return Math.abs(i - j) > (chains ? CHAINS_OF_LETTER : STROKES_OF_LETTER);
    }

    /** Whether a stroke is a straight line far longer than a curve that it touches: the pin under a small number. */
    private boolean isRule(int line, int curve) {
        return strokes.get(line).points().size() == 2 && strokes.get(curve).points().size() > 2
                && length(line) > RULE * length(curve);
    }

    private double length(int i) {
        return Math.max(boxes[i].width(), boxes[i].height());
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
            double length = Math.max(box.width(), box.height());
            boolean line = touched && Math.min(box.width(), box.height()) < STRAIGHT * length;
            if (length <= LARGEST && !line) {
                found.add(new Mark(group, box, style[group.get(0)],
                        strokes.get(group.get(0)).width(), touched,
                        Math.min(box.width(), box.height()) < STRAIGHT * length));
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
