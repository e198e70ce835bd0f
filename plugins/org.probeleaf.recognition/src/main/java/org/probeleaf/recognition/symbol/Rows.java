// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.symbol;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Takes rows of parts apart: parts with a line on either side, drawn so close above one another that they touch, as
 * diodes on neighbouring pins do. Each row has one line on its left and one on its right; a box round them all would
 * make them one part.
 */
final class Rows {

    private static final double CLOSEST = 0.7;
    private static final double WIDEST = 1.6;
    private static final double LONGEST_PART = 4;
    private static final double SHORTEST_LINE = 0.35;

    private final PageInk page;
    private final SpatialIndex<Segment> conductors;

    /** @param conductors the page's wires and leads */
    Rows(PageInk page, SpatialIndex<Segment> conductors) {
        this.page = page;
        this.conductors = conductors;
    }

    /** The symbols with every row of parts replaced by the parts. */
    List<Body> apart(List<Body> bodies) {
        List<Body> result = new ArrayList<>();
        for (Body b : bodies) {
            List<List<Segment>> parts = parts(b);
            if (parts.size() > 1) {
                parts.forEach(ink -> result.add(BodyBuilder.body(result.size(), ink)));
            } else {
                result.add(new Body(result.size(), b.box(), b.ink(), b.outline()));
            }
        }
        return result;
    }

    private List<List<Segment>> parts(Body b) {
        double pitch = page.pitch();
        double shorter = Math.min(b.box().width(), b.box().height());
        double longer = Math.max(b.box().width(), b.box().height());
        if (shorter > LONGEST_PART * pitch || longer < 1.5 * pitch || b.ink().size() > 2000) {
            return List.of();
        }
        List<List<Segment>> lying = parts(b, true);
        return lying.size() > 1 ? lying : parts(b, false);
    }

    /** The ink of each row of lying or standing parts; one list or none where they are no such rows. */
    private List<List<Segment>> parts(Body b, boolean flat) {
        List<Double> low = new ArrayList<>();
        List<Double> high = new ArrayList<>();
        Box box = b.box();
        for (Segment c : conductors.touching(box.grow(page.reach()))) {
            if (!c.upright() || c.length() < SHORTEST_LINE * page.pitch()) {
                continue;
            }
            for (Point end : new Point[] {c.a(), c.b()}) {
                if (b.ink().stream().anyMatch(s -> s.comesNear(end, page.reach()))) {
                    if (c.horizontal() != flat) {
                        return List.of();
                    }
                    Point far = c.fartherEnd(end);
                    boolean before = flat ? far.x() < end.x() : far.y() < end.y();
                    add(before ? low : high, flat ? end.y() : end.x());
                }
            }
        }
        return isRows(low, high) ? divided(b, low, flat) : List.of();
    }

    private void add(List<Double> rows, double at) {
        if (rows.stream().noneMatch(r -> Math.abs(r - at) <= page.reach())) {
            rows.add(at);
        }
    }

    private boolean isRows(List<Double> low, List<Double> high) {
        if (low.size() < 2 || low.size() != high.size()) {
            return false;
        }
        low.sort(null);
        high.sort(null);
        for (int i = 0; i < low.size(); i++) {
            double step = i == 0 ? page.pitch() : low.get(i) - low.get(i - 1);
            if (Math.abs(low.get(i) - high.get(i)) > page.reach() || step < CLOSEST * page.pitch()
                    || step > WIDEST * page.pitch()) {
                return false;
            }
        }
        return true;
    }

    private List<List<Segment>> divided(Body b, List<Double> rows, boolean flat) {
        List<List<Segment>> parts = new ArrayList<>();
        rows.forEach(r -> parts.add(new ArrayList<>()));
        double step = rows.get(1) - rows.get(0);
        for (Segment s : b.ink()) {
            Box sb = s.box();
            double at = flat ? sb.centre().y() : sb.centre().x();
            double length = flat ? sb.height() : sb.width();
            if (length > 1.2 * step) {
                // A line along the rows ties them together.
                return List.of();
            }
            int best = 0;
            for (int i = 1; i < rows.size(); i++) {
                best = Math.abs(rows.get(i) - at) < Math.abs(rows.get(best) - at) ? i : best;
            }
            parts.get(best).add(s);
        }
        return parts.stream().anyMatch(List::isEmpty) ? List.of() : parts;
    }
}
