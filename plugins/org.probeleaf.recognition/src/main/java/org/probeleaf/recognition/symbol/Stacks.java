// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.symbol;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Takes stacks of symbols apart: flags and supply arrows on neighbouring pins touch each other, but each is a closed
 * outline met by one line, and all lines come from the same side.
 */
final class Stacks {

    private final PageInk page;
    private final SpatialIndex<Segment> conductors;

    /** @param conductors the page's wires and leads */
    Stacks(PageInk page, SpatialIndex<Segment> conductors) {
        this.page = page;
        this.conductors = conductors;
    }

    /** The symbols with every stack replaced by the symbols in it. */
    List<Body> apart(List<Body> bodies) {
        List<Body> result = new ArrayList<>();
        for (Body b : bodies) {
            List<Outline> outlines = outlines(b);
            if (outlines.size() > 1 && isStack(b, outlines)) {
                for (Outline o : outlines) {
                    result.add(new Body(result.size(), o.box(), o.ink(), o.box()));
                }
            } else {
                result.add(new Body(result.size(), b.box(), b.ink(), b.outline()));
            }
        }
        return result;
    }

    /** One closed stroke of a body. */
    private record Outline(List<Segment> ink, Box box) {
    }

    /** The closed strokes of a body, or an empty list where it has other ink. */
    private static List<Outline> outlines(Body b) {
        Map<Integer, List<Segment>> byStroke = new LinkedHashMap<>();
        for (Segment s : b.ink()) {
            if (s.shape() != Segment.Shape.CLOSED) {
                return List.of();
            }
            byStroke.computeIfAbsent(s.stroke(), k -> new ArrayList<>()).add(s);
        }
        List<Outline> outlines = new ArrayList<>();
        byStroke.values().forEach(ink -> outlines.add(new Outline(ink, ink.stream().map(Segment::box)
                .reduce(Box::union).orElseThrow())));
        return outlines;
    }

    private boolean isStack(Body b, List<Outline> outlines) {
        String from = null;
        for (Outline o : outlines) {
            if (!slants(o) && !holdsText(o)) {
                return false;
            }
            String side = side(o);
            if (side == null || from != null && !from.equals(side)) {
                return false;
            }
            from = side;
        }
        boolean across = from.equals("E") || from.equals("W");
        for (Outline o : outlines) {
            // One beside the other as seen from the lines, not one behind the other.
            boolean beside = outlines.stream().allMatch(p -> p == o || (across
                    ? Math.min(p.box().y1(), o.box().y1()) - Math.max(p.box().y0(), o.box().y0()) <= page.reach()
                    : Math.min(p.box().x1(), o.box().x1()) - Math.max(p.box().x0(), o.box().x0()) <= page.reach()));
            if (!beside) {
                return false;
            }
        }
        return true;
    }

    private static boolean slants(Outline o) {
        return o.ink().stream().anyMatch(s -> !s.upright());
    }

    private boolean holdsText(Outline o) {
        return page.texts().stream().anyMatch(t -> o.box().contains(t.box().centre()));
    }

    /** The side from which the only line comes that ends on an outline, or null. */
    private String side(Outline o) {
        Point only = null;
        String side = null;
        for (Segment c : conductors.touching(o.box().grow(page.reach()))) {
            for (Point end : new Point[] {c.a(), c.b()}) {
                if (c.upright() && o.ink().stream().anyMatch(s -> s.comesNear(end, page.reach()))) {
                    if (only != null && only.distance(end) > page.reach()) {
                        return null;
                    }
                    Point far = c.fartherEnd(end);
                    only = end;
                    side = c.horizontal() ? far.x() < end.x() ? "W" : "E" : far.y() < end.y() ? "N" : "S";
                }
            }
        }
        return side;
    }
}
