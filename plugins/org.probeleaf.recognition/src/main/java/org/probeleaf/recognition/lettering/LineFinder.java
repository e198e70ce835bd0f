// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.recognition.ink.Groups;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.schematic.geometry.Box;

/** Puts marks that may stand in one line of writing together. All limits are in heights of the taller of two marks. */
final class LineFinder {

    /** The widest gap between two letters of a line. */
    private static final double GAP = 0.9;
    /** The widest gap where one letter was drawn straight after the other. */
    private static final double GAP_IN_ORDER = 1.4;
    /** How far a small mark, such as a comma, may stand above or below its neighbour. */
    private static final double BEYOND = 0.4;
    /** How far the dot of a small letter may stand above it. */
    private static final double DOT = 0.7;
    /** A gap smaller than this, in points, is none: one mark stands above the other. */
    private static final double ABOVE = 0.2;
    /** A mark lower than this, in widths of the pen, is a spot. */
    private static final double SPOT = 2;
    /** How far the two spots of a colon stand apart, in their own heights. */
    private static final double APART = 8;
    /** A mark lower than this is small. */
    private static final double SMALL = 0.5;

    private final Direction direction;
    private final List<Mark> marks;
    private final boolean inOrder;
    private final List<Box> boxes = new ArrayList<>();

    /** @param inOrder whether every line was drawn letter after letter, so that others are not of one line */
    LineFinder(Direction direction, List<Mark> marks, boolean inOrder) {
        this.direction = direction;
        this.marks = marks;
        this.inOrder = inOrder;
        for (Mark mark : marks) {
            boxes.add(direction.turned(mark.box()));
        }
    }

    /** Marks that may make a line, in the order of writing; every mark is in one list. */
    List<List<Mark>> lines() {
        List<Integer> ids = new ArrayList<>();
        for (int i = 0; i < marks.size(); i++) {
            ids.add(i);
        }
        SpatialIndex<Integer> index = new SpatialIndex<>(ids, boxes::get);
        Groups groups = new Groups(marks.size());
        for (int i : ids) {
            Box a = boxes.get(i);
            double reach = GAP_IN_ORDER * Math.max(a.height(), SMALL * a.width());
            for (int j : index.touching(new Box(a.x0() - reach, a.y0() - reach, a.x1() + reach, a.y1() + reach))) {
                if (i != j && follows(i, j)) {
                    groups.join(i, j);
                }
            }
        }
        Map<Integer, List<Integer>> lines = new LinkedHashMap<>();
        for (int i : ids) {
            lines.computeIfAbsent(groups.find(i), k -> new ArrayList<>()).add(i);
        }
        return lines.values().stream()
                .map(line -> line.stream().sorted(Comparator.comparingDouble(i -> boxes.get(i).x0()))
                        .map(marks::get).toList())
                .toList();
    }

    /** Whether two marks, the first of which is the taller one, may be neighbours in a line. */
    private boolean follows(int i, int j) {
        Box a = boxes.get(i);
        Box b = boxes.get(j);
        if (marks.get(i).style() != marks.get(j).style() || b.height() > a.height()) {
            return false;
        }
        if (inOrder && !inOrder(marks.get(i), marks.get(j))) {
            return false;
        }
        double h = a.height();
        double gap = Math.max(a.x0(), b.x0()) - Math.min(a.x1(), b.x1());
        if (gap > (inOrder(marks.get(i), marks.get(j)) ? GAP_IN_ORDER : GAP) * h || b.width() > 1.6 * h) {
            return false;
        }
        double overlap = Math.min(a.y1(), b.y1()) - Math.max(a.y0(), b.y0());
        if (h < SPOT * marks.get(i).pen() && gap < ABOVE && inOrder(marks.get(i), marks.get(j))
                && -overlap < APART * Math.max(marks.get(i).pen(), h)) {
            return true;
        }
        if (b.height() >= SMALL * h) {
            return overlap >= 0.5 * b.height();
        }
        double beyond = (gap < ABOVE ? DOT : BEYOND) * h;
        return b.y0() >= a.y0() - BEYOND * h && b.y1() <= a.y1() + beyond;
    }

    /** Whether one mark was drawn straight after the other. */
    static boolean inOrder(Mark a, Mark b) {
        int lastA = a.strokes().get(a.strokes().size() - 1);
        int lastB = b.strokes().get(b.strokes().size() - 1);
        int between = lastA < lastB ? b.strokes().get(0) - lastA : a.strokes().get(0) - lastB;
        return between >= 0 && between <= 2;
    }
}
