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
    /** The widest gap between two letters of a printed line. */
    private static final double GAP_PRINTED = 0.8;
    /** The widest letter. */
    private static final double WIDEST = 1.6;
    private static final double WIDEST_PRINTED = 2;
    /** How far a small mark, such as a comma, may stand above or below its neighbour. */
    private static final double BEYOND = 0.4;
    /** The same where it was printed at another time. */
    private static final double ABOVE_PRINTED = 0.1;
    private static final double BELOW_PRINTED = 0.25;
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
    /** How far the end of a letter may lie before that of the one printed before it, as a dot's does. */
    private static final double BACK = 0.5;
    /** How far parts of one letter, as the rings and the slash of a percent sign, lie over each other, in widths. */
    private static final double PART = 0.3;
    /** How low such a part is, and how many outlines on from the other it may be printed. */
    private static final double LOW = 0.65;
    private static final int BETWEEN_PARTS = 5;

    private final Direction direction;
    private final List<Mark> marks;
    private final boolean pen;
    private final boolean inOrder;
    private final List<Box> boxes = new ArrayList<>();

    /**
     * @param pen     whether letters are drawn with a pen rather than printed
     * @param inOrder whether every line was drawn letter after letter, so that others are not of one line
     */
    LineFinder(Direction direction, List<Mark> marks, boolean pen, boolean inOrder) {
        this.direction = direction;
        this.pen = pen;
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
        if (!pen && isPart(i, j)) {
            return true;
        }
        if (inOrder && !inOrder(marks.get(i), marks.get(j))) {
            return false;
        }
        if (inOrder && !pen && isBack(i, j)) {
            return false;
        }
        double h = a.height();
        double gap = Math.max(a.x0(), b.x0()) - Math.min(a.x1(), b.x1());
        boolean next = inOrder(marks.get(i), marks.get(j));
        if (gap > (!pen ? GAP_PRINTED : next ? GAP_IN_ORDER : GAP) * h
                || b.width() > (pen ? WIDEST : WIDEST_PRINTED) * h) {
            return false;
        }
        double overlap = Math.min(a.y1(), b.y1()) - Math.max(a.y0(), b.y0());
        if (h < SPOT * marks.get(i).pen() && gap < ABOVE && next
                && -overlap < APART * Math.max(marks.get(i).pen(), h)) {
            return true;
        }
        if (b.height() >= SMALL * h) {
            return overlap >= 0.5 * b.height();
        }
        boolean ofLine = pen || next;
        double above = (!ofLine ? ABOVE_PRINTED : gap < ABOVE ? DOT : BEYOND) * h;
        double below = (ofLine ? BEYOND : BELOW_PRINTED) * h;
        return b.y0() >= a.y0() - below && b.y1() <= a.y1() + above;
    }

    /** Whether a small mark is part of the letter that a taller one is, as a ring of a percent sign. */
    private boolean isPart(int i, int j) {
        Box a = boxes.get(i);
        Box b = boxes.get(j);
        double overlap = Math.min(a.x1(), b.x1()) - Math.max(a.x0(), b.x0());
        return b.height() < LOW * a.height() && between(marks.get(i), marks.get(j)) <= BETWEEN_PARTS
                && overlap >= PART * Math.min(a.width(), b.width())
                && b.y0() > a.y0() - BEYOND * a.height() && b.y1() < a.y1() + BEYOND * a.height();
    }

    /** Whether the later printed of two marks stands before the earlier one: another line begins with it. */
    private boolean isBack(int i, int j) {
        boolean before = marks.get(i).strokes().get(0) < marks.get(j).strokes().get(0);
        Box first = boxes.get(before ? i : j);
        Box second = boxes.get(before ? j : i);
        double overlap = Math.min(first.x1(), second.x1()) - Math.max(first.x0(), second.x0());
        return overlap < PART * Math.min(first.width(), second.width())
                && ((second.x0() + second.x1()) / 2 < first.x0() || second.x1() < first.x1() - BACK * first.height());
    }

    /** Whether one mark was drawn straight after the other. */
    static boolean inOrder(Mark a, Mark b) {
        int between = between(a, b);
        return between >= 0 && between <= 2;
    }

    /** How many strokes on from the end of one mark the next begins. */
    private static int between(Mark a, Mark b) {
        int lastA = a.strokes().get(a.strokes().size() - 1);
        int lastB = b.strokes().get(b.strokes().size() - 1);
        return lastA < lastB ? b.strokes().get(0) - lastA : a.strokes().get(0) - lastB;
    }
}
