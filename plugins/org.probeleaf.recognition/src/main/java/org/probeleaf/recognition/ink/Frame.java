// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.probeleaf.schematic.geometry.Box;

/**
 * Finds the border of a page and what hangs on it: the frame, its zone marks, the title block. A border line is a
 * straight line of the outline that spans most of the page; whatever of the same colour touches it belongs to it.
 */
final class Frame {

    private static final double SPAN = 0.62;

    private final List<Segment> drawing = new ArrayList<>();

    Frame(List<Segment> segments, List<Style> styles, List<Dot> dots, double width, double height, double reach) {
        Deque<Segment> open = new ArrayDeque<>();
        Set<Segment> frame = new HashSet<>();
        for (Segment s : segments) {
            double span = s.horizontal() ? s.length() / width : s.length() / height;
            if (s.upright() && span > SPAN && nearBorder(s, width, height)) {
                open.add(s);
                frame.add(s);
            }
        }
        boolean joined = dots.stream().anyMatch(d -> frame.stream().anyMatch(s -> s.distance(d.at()) <= reach));
        if (sides(frame, width, height) < 3 || joined) {
            // A long line along one edge is a wire, and so is one with a junction; a border runs round the page.
            frame.clear();
            open.clear();
        }
        if (!frame.isEmpty()) {
            SpatialIndex<Segment> index = SpatialIndex.ofSegments(segments);
            while (!open.isEmpty()) {
                Segment s = open.remove();
                for (Segment t : index.touching(s.box().grow(reach))) {
                    if (!frame.contains(t) && t.upright() && sameColour(s, t, styles) && touch(s, t, reach)) {
                        frame.add(t);
                        open.add(t);
                    }
                }
            }
        }
        for (Segment s : segments) {
            if (!frame.contains(s)) {
                drawing.add(s);
            }
        }
    }

    /** The segments that are not part of the frame. */
    List<Segment> drawing() {
        return drawing;
    }

    /** On how many sides of the page border lines were found. */
    private static int sides(Set<Segment> lines, double width, double height) {
        Set<String> sides = new HashSet<>();
        for (Segment s : lines) {
            sides.add(s.horizontal() ? s.a().y() < height / 2 ? "top" : "bottom"
                    : s.a().x() < width / 2 ? "left" : "right");
        }
        return sides.size();
    }

    private static boolean nearBorder(Segment s, double width, double height) {
        Box b = s.box();
        double margin = 0.12;
        return s.horizontal() ? b.y0() < margin * height || b.y1() > (1 - margin) * height
                : b.x0() < margin * width || b.x1() > (1 - margin) * width;
    }

    private static boolean sameColour(Segment s, Segment t, List<Style> styles) {
        return styles.get(s.style()).rgb() == styles.get(t.style()).rgb();
    }

    private static boolean touch(Segment s, Segment t, double reach) {
        return s.distance(t.a()) <= reach || s.distance(t.b()) <= reach || t.distance(s.a()) <= reach
                || t.distance(s.b()) <= reach;
    }
}
