// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.primitive.Fill;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.schematic.geometry.Box;

/**
 * Small filled shapes as marks: a shape with the holes in it is one. A hole is looked for near its shape in the order
 * of painting only, since programs paint letters one after the other.
 */
final class OutlineMarks {

    /** The largest letter, in points. */
    private static final double LARGEST = 40;
    /** How many outlines back the shape around a hole, or a hole in a shape, is looked for. */
    private static final int BACK = 5;
    /** Corners of a bar, an arrow head or the like. */
    private static final int CORNERS_OF_BAR = 5;

    private final List<Stroke> outlines = new ArrayList<>();
    private final List<Integer> fills = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();

    OutlineMarks(List<Fill> all) {
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            Fill f = all.get(i);
            if (Math.max(f.box().width(), f.box().height()) <= LARGEST) {
                outlines.add(new Stroke(f.points(), true, f.curved(), 0, f.rgb(), false, false));
                fills.add(i);
                boxes.add(f.box());
            }
        }
        int[] around = new int[boxes.size()];
        for (int i = 0; i < around.length; i++) {
            around[i] = around(i, boxes);
        }
        List<List<Integer>> shapes = new ArrayList<>();
        for (int i = 0; i < around.length; i++) {
            shapes.add(new ArrayList<>());
        }
        for (int i = 0; i < around.length; i++) {
            shapes.get(outermost(i, around)).add(i);
        }
        for (int i = 0; i < around.length; i++) {
            if (around[i] == i) {
                marks.add(mark(shapes.get(i), boxes.get(i)));
            }
        }
    }

    /** The outlines that marks are made of, as closed lines. */
    List<Stroke> outlines() {
        return outlines;
    }

    /** Which fill an outline is. */
    int fill(int outline) {
        return fills.get(outline);
    }

    /** Marks in the order of painting. */
    List<Mark> marks() {
        return marks;
    }

    /** The smallest shape that an outline lies in, or itself. */
    private int around(int i, List<Box> boxes) {
        Box b = boxes.get(i);
        int best = i;
        for (int j = Math.max(0, i - BACK); j < Math.min(boxes.size(), i + BACK + 1); j++) {
            Box o = boxes.get(j);
            if (j != i && outlines.get(j).rgb() == outlines.get(i).rgb() && holds(o, b)
                    && (best == i || holds(boxes.get(best), o))) {
                best = j;
            }
        }
        return best;
    }

    /** Whether one box lies within another on all sides. */
    private static boolean holds(Box outer, Box inner) {
        return outer.x0() < inner.x0() && outer.y0() < inner.y0() && outer.x1() > inner.x1() && outer.y1() > inner.y1();
    }

    private static int outermost(int i, int[] around) {
        int at = i;
        while (around[at] != at) {
            at = around[at];
        }
        return at;
    }

    private Mark mark(List<Integer> shape, Box box) {
        Stroke outer = outlines.get(shape.get(0));
        boolean bare = shape.size() == 1 && !outer.curved() && outer.points().size() <= CORNERS_OF_BAR;
        return new Mark(shape, box, outer.rgb(), 0, false, bare);
    }
}
