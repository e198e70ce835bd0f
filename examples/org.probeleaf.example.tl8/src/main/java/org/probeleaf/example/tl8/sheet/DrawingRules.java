// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.probeleaf.example.tl8.ink.Ink;
import org.probeleaf.example.tl8.ink.PageInk;
import org.probeleaf.example.tl8.ink.Typeface;
import org.probeleaf.example.tl8.symbol.Symbol;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;

/** What a careful draughtsman would not let leave the board. Each fault is one sentence with its place. */
public final class DrawingRules {
    private final Page page;
    private final List<String> faults = new ArrayList<>();

    private DrawingRules(Page page) {
        this.page = page;
    }

    /** The faults of all pages; empty for a clean drawing. */
    public static List<String> faults(List<Page> pages, Typeface typeface) {
        List<String> all = new ArrayList<>();
        for (Page page : pages) {
            DrawingRules rules = new DrawingRules(page);
            rules.looseEnds();
            rules.bodiesCrossed();
            rules.wiresOnWires();
            rules.lettering(Inking.of(page, typeface), typeface);
            all.addAll(rules.faults);
        }
        for (Connections.Cluster c : Connections.of(pages)) {
            Set<String> names = new HashSet<>();
            c.names().forEach(n -> names.add(n.tag().text()));
            if (names.size() > 1) {
                all.add("one net bears several names: " + names);
            }
        }
        return all;
    }

    private void fault(String text, Point at) {
        faults.add(String.format(Locale.ROOT, "page %d at %.1f, %.1f (grid %.1f, %.1f): %s", page.number(), at.x(),
                at.y(), at.x() / Symbol.GRID, at.y() / Symbol.GRID, text));
    }

    private void looseEnds() {
        for (WireRun run : page.runs()) {
            if (run.bus()) {
                continue;
            }
            boolean labelled = page.names().stream()
                    .anyMatch(n -> n.kind() == LabelKind.LABEL && run.passes(n.at()));
            for (Spot end : List.of(run.first(), run.last())) {
                if (!met(run, end) && !labelled) {
                    fault("a wire ends in nothing", end.point());
                }
            }
        }
        for (NameTag tag : page.names()) {
            if (tag.kind() != LabelKind.BUS && page.runs().stream().noneMatch(r -> r.passes(tag.at()))
                    && page.parts().stream().noneMatch(p -> p.symbol().pins().stream()
                            .anyMatch(q -> p.spot(q).equals(tag.at())))) {
                fault("the name " + tag.text() + " is on no wire", tag.at().point());
            }
        }
    }

    private boolean met(WireRun run, Spot end) {
        return page.runs().stream().anyMatch(r -> r != run && r.passes(end))
                || page.parts().stream().anyMatch(p -> p.symbol().pins().stream().anyMatch(q -> p.spot(q).equals(end)))
                || page.names().stream().anyMatch(n -> n.kind() != LabelKind.BUS && n.at().equals(end));
    }

    private void bodiesCrossed() {
        for (Placed part : page.parts()) {
            Box body = part.box().grow(1);
            for (WireRun run : page.runs()) {
                for (int i = 1; i < run.spots().size(); i++) {
                    if (crosses(run.spots().get(i - 1).point(), run.spots().get(i).point(), body)) {
                        fault("a wire runs over " + part.title(), run.spots().get(i).point());
                    }
                }
            }
        }
    }

    private void wiresOnWires() {
        Set<List<Integer>> taken = new HashSet<>();
        for (WireRun run : page.runs()) {
            for (int i = 1; i < run.spots().size(); i++) {
                addSteps(taken, run.spots().get(i - 1), run.spots().get(i), "a wire runs along a wire");
            }
        }
        for (Placed part : page.parts()) {
            part.symbol().pins().forEach(pin -> {
                Spot end = part.spot(pin);
                int dx = (int) (pin.root().x() - pin.end().x());
                int dy = (int) (pin.root().y() - pin.end().y());
                addSteps(taken, end, end.plus(dx, dy), "a wire runs along a pin of " + part.title());
            });
        }
    }

    private void addSteps(Set<List<Integer>> taken, Spot a, Spot b, String fault) {
        int n = Math.max(Math.abs(b.x() - a.x()), Math.abs(b.y() - a.y()));
        for (int k = 0; k < n; k++) {
            // twice the middle of the step, so that it is whole
            int x = 2 * a.x() + (b.x() - a.x()) / n * (2 * k + 1);
            int y = 2 * a.y() + (b.y() - a.y()) / n * (2 * k + 1);
            if (!taken.add(List.of(x, y, b.x() == a.x() ? 1 : b.y() == a.y() ? 2 : 3))) {
                fault(fault, new Point(x * Symbol.GRID / 2, y * Symbol.GRID / 2));
            }
        }
    }

    private void lettering(PageInk ink, Typeface typeface) {
        List<Ink.Words> words = new ArrayList<>();
        for (Ink mark : ink.marks()) {
            if (mark instanceof Ink.Words w) {
                words.add(w);
            }
        }
        for (int i = 0; i < words.size(); i++) {
            Box box = typeface.box(words.get(i)).grow(0.4);
            for (int j = i + 1; j < words.size(); j++) {
                if (box.intersects(typeface.box(words.get(j)))) {
                    fault("\"" + words.get(i).text() + "\" touches \"" + words.get(j).text() + "\"", box.centre());
                }
            }
            for (Ink mark : ink.marks()) {
                if (touches(mark, box)) {
                    fault("\"" + words.get(i).text() + "\" touches a line", box.centre());
                }
            }
            if (box.x0() < 15 || box.y0() < 15 || box.x1() > ink.width() - 15 || box.y1() > ink.height() - 15) {
                fault("\"" + words.get(i).text() + "\" lies outside the frame", box.centre());
            }
        }
    }

    private static boolean touches(Ink mark, Box box) {
        if (mark instanceof Ink.Disc d) {
            return box.distance(d.centre()) < d.radius() && (d.filled() || !inside(box, d));
        }
        List<Point> points = new ArrayList<>();
        double width = Ink.THIN;
        if (mark instanceof Ink.Line line) {
            points.addAll(line.points());
            width = line.width();
            if (line.closed()) {
                points.add(points.get(0));
            }
        } else if (mark instanceof Ink.Curve c) {
            for (int k = 0; k <= 8; k++) {
                points.add(at(c, k / 8.0));
            }
        }
        for (int i = 1; i < points.size(); i++) {
            if (crosses(points.get(i - 1), points.get(i), box.grow(width / 2))) {
                return true;
            }
        }
        return false;
    }

    private static boolean inside(Box box, Ink.Disc d) {
        return Math.hypot(Math.max(Math.abs(box.x0() - d.centre().x()), Math.abs(box.x1() - d.centre().x())),
                Math.max(Math.abs(box.y0() - d.centre().y()), Math.abs(box.y1() - d.centre().y()))) < d.radius();
    }

    private static Point at(Ink.Curve c, double t) {
        double u = 1 - t;
        double a = u * u * u;
        double b = 3 * u * u * t;
        double d = 3 * u * t * t;
        double e = t * t * t;
        return new Point(a * c.from().x() + b * c.c1().x() + d * c.c2().x() + e * c.to().x(),
                a * c.from().y() + b * c.c1().y() + d * c.c2().y() + e * c.to().y());
    }

    /** Whether the straight line from {@code a} to {@code b} enters the box (clipping against its four sides). */
    private static boolean crosses(Point a, Point b, Box box) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double[] p = {-dx, dx, -dy, dy};
        double[] q = {a.x() - box.x0(), box.x1() - a.x(), a.y() - box.y0(), box.y1() - a.y()};
        double enter = 0;
        double leave = 1;
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0) {
                if (q[i] <= 0) {
                    return false;
                }
            } else if (p[i] < 0) {
                enter = Math.max(enter, q[i] / p[i]);
            } else {
                leave = Math.min(leave, q[i] / p[i]);
            }
        }
        return enter < leave;
    }
}
