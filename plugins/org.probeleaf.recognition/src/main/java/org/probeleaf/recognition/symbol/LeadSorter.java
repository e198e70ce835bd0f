// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.symbol;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.ink.Dot;
import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Sorts symbol lines into leads and body ink. A lead is a straight upright line that lies on no closed loop and hangs
 * on the rest by one end. Closed outlines, curves, fills, slanting lines, lines that make up a loop, and plates
 * (lines that others meet in the middle while their own ends are free) are body ink.
 */
final class LeadSorter {

    /** The widest gap between the plates of a capacitor, in pitches. */
    private static final double TWIN_GAP = 0.8;

    private final PageInk page;
    private final double reach;
    private final SpatialIndex<Text> numbers;
    private final List<Segment> leads = new ArrayList<>();
    private final List<Segment> body = new ArrayList<>();
    private final Set<Segment> plates = new HashSet<>();

    LeadSorter(PageInk page) {
        this.page = page;
        this.reach = page.reach();
        this.numbers = new SpatialIndex<>(page.texts().stream().filter(t -> t.text().matches("\\d{1,3}")).toList(),
                Text::box);
        List<Segment> lines = new ArrayList<>();
        List<Segment> slanting = new ArrayList<>();
        SpatialIndex<Segment> straights = SpatialIndex.ofSegments(
                page.symbols().stream().filter(s -> isStraight(s) && s.upright()).toList());
        for (Segment s : page.symbols()) {
            boolean straight = isStraight(s);
            if (straight && !s.upright() && endsOnBus(s) || isJog(s, straights)) {
                leads.add(s);
                continue;
            }
            boolean chain = s.shape() != Segment.Shape.CLOSED && s.shape() != Segment.Shape.FILLED;
            (straight && s.upright() ? lines : chain ? slanting : body).add(s);
        }
        body.addAll(slanting);
        sort(lines, slanting);
    }

    /** Straight lines to which wires come. */
    List<Segment> leads() {
        return leads;
    }

    /** Body ink that is a plate of a capacitor and belongs to nothing that it happens to touch. */
    Set<Segment> plates() {
        return plates;
    }

    /** Everything else. */
    List<Segment> body() {
        return body;
    }

    private boolean isStraight(Segment s) {
        return s.shape() == Segment.Shape.LINE && s.length() > 2 * reach;
    }

    /**
     * Whether a short line takes one that runs across it a little aside, where two wires do not quite meet, or lies
     * between two in line with it.
     */
    private boolean isJog(Segment s, SpatialIndex<Segment> straights) {
        if (s.shape() != Segment.Shape.LINE || !s.upright() || s.length() > 2 * reach) {
            return false;
        }
        int[] sides = new int[2];
        int inLine = 0;
        for (Point end : new Point[] {s.a(), s.b()}) {
            for (Segment t : straights.near(end, 0.1 * reach)) {
                Point far = t.fartherEnd(end);
                if (t.nearerEnd(end).distance(end) > 0.1 * reach) {
                    continue;
                }
                if (t.horizontal() != s.horizontal()) {
                    boolean before = t.horizontal() ? far.x() < end.x() : far.y() < end.y();
                    sides[before ? 0 : 1]++;
                } else if (far.distance(s.fartherEnd(end)) > t.length()) {
                    inLine++;
                    break;
                }
            }
        }
        return sides[0] == 1 && sides[1] == 1 || inLine == 2;
    }

    /** Whether a slanting line is the entry of a wire into a bus. */
    private boolean endsOnBus(Segment s) {
        for (Segment bus : page.buses()) {
            double near = reach + bus.width() / 2;
            if (bus.distance(s.a()) <= near || bus.distance(s.b()) <= near) {
                return true;
            }
        }
        return false;
    }

    private void sort(List<Segment> lines, List<Segment> slanting) {
        SpatialIndex<Segment> solid = SpatialIndex.ofSegments(body);
        List<Segment> withJogs = new ArrayList<>(lines);
        withJogs.addAll(leads);
        SpatialIndex<Segment> line = SpatialIndex.ofSegments(withJogs);
        SpatialIndex<Segment> wire = SpatialIndex.ofSegments(page.wires());
        List<Segment> all = new ArrayList<>(lines);
        all.addAll(slanting);
        if (page.wires().isEmpty()) {
            // Wires are among these lines; those that come to a dot or to a closed outline are no outline themselves.
            SpatialIndex<Dot> dots = new SpatialIndex<>(page.dots(), d -> Box.of(d.at()));
            all.removeIf(s -> comesToDot(s, dots) || endsOnOutline(s, solid));
        }
        Loops loops = page.wires().isEmpty() ? Loops.endToEnd(all, reach) : new Loops(all, reach, p -> null);
        List<Segment> later = new ArrayList<>();
        List<Segment> added = new ArrayList<>();
        for (Segment s : lines) {
            if (isPlate(s, line, solid, wire)) {
                added.add(s);
            } else {
                added.addAll(loops.on(s));
                later.addAll(loops.off(s));
            }
        }
        body.addAll(added);
        SpatialIndex<Segment> core = SpatialIndex.ofSegments(body);
        for (Segment s : later) {
            boolean a = meets(s.a(), core, s);
            boolean b = meets(s.b(), core, s);
            boolean inside = a && b && s.length() < 0.75 * page.pitch() && !(isNumbered(s) && joinsOutlines(s, core));
            boolean cornerPlate = !a && !b && s.length() < 3 * page.pitch() && !isNumbered(s)
                    && (isDeadEnd(s, s.a(), s.b(), line, wire) || isDeadEnd(s, s.b(), s.a(), line, wire));
            boolean edge = a != b && isEdge(s, a ? s.b() : s.a(), line, wire);
            (inside || cornerPlate || edge ? body : leads).add(s);
        }
    }

    /**
     * Whether a line that goes on from a symbol's side into the open is a part of that side, drawn long enough for all
     * the pins that end on it.
     */
    private boolean isEdge(Segment s, Point free, SpatialIndex<Segment> line, SpatialIndex<Segment> wire) {
        if (meets(free, line, s) || meets(free, wire, s)) {
            return false;
        }
        for (Segment t : line.touching(s.box().grow(reach))) {
            if (t != s && t.horizontal() != s.horizontal() && s.distance(t.nearerEnd(s.box().centre())) <= reach
                    && s.distance(t.fartherEnd(s.box().centre())) > reach && isNumbered(t)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a line runs from one outline to another: a short pin with a flag or a contact at either end. */
    private boolean joinsOutlines(Segment s, SpatialIndex<Segment> core) {
        for (Point end : new Point[] {s.a(), s.b()}) {
            if (core.near(end, reach + s.width()).stream().noneMatch(t -> t.shape() != Segment.Shape.LINE
                    && t.distance(end) <= reach + s.width())) {
                return false;
            }
        }
        return true;
    }

    /** Whether a pin's number stands on a line. */
    private boolean isNumbered(Segment s) {
        Box beside = s.box().grow(0.6 * page.pitch());
        return numbers.touching(beside).stream().anyMatch(t -> beside.contains(t.box().centre()));
    }

    private boolean comesToDot(Segment s, SpatialIndex<Dot> dots) {
        return dots.touching(s.box().grow(reach)).stream()
                .anyMatch(d -> d.radius() > 0.7 * s.width() && s.distance(d.at()) <= reach);
    }

    private boolean endsOnOutline(Segment s, SpatialIndex<Segment> solid) {
        for (Point end : new Point[] {s.a(), s.b()}) {
            if (solid.near(end, reach).stream().anyMatch(t -> t.shape() == Segment.Shape.CLOSED
                    && t.distance(end) <= reach)) {
                return true;
            }
        }
        return false;
    }

    /** Whether both ends of a line are free: a capacitor's plate, a bar of a ground symbol, a base. */
    private boolean isPlate(Segment s, SpatialIndex<Segment> line, SpatialIndex<Segment> solid,
            SpatialIndex<Segment> wire) {
        if (s.length() > 6 * page.pitch()) {
            return false;
        }
        boolean central = isMetInTheMiddle(s, line);
        if (central && s.length() < 3 * page.pitch() && hasTwin(s, line)) {
            plates.add(s);
            return true;
        }
        for (Point end : new Point[] {s.a(), s.b()}) {
            if (meets(end, line, s) || meets(end, solid, s) || !central && meets(end, wire, s)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a line across ends on the middle of this one, as a lead does on a plate or a bar. */
    private boolean isMetInTheMiddle(Segment s, SpatialIndex<Segment> line) {
        Point middle = new Point((s.a().x() + s.b().x()) / 2, (s.a().y() + s.b().y()) / 2);
        return line.near(middle, reach).stream().anyMatch(t -> t.horizontal() != s.horizontal()
                && t.nearerEnd(middle).distance(middle) <= reach);
    }

    /** Whether the other plate of a capacitor lies opposite, so that this is one though something touches its end. */
    private boolean hasTwin(Segment s, SpatialIndex<Segment> line) {
        for (Segment t : line.touching(s.box().grow(TWIN_GAP * page.pitch()))) {
            boolean level = s.horizontal()
                    ? Math.abs(t.box().x0() - s.box().x0()) <= reach && Math.abs(t.box().x1() - s.box().x1()) <= reach
                    : Math.abs(t.box().y0() - s.box().y0()) <= reach && Math.abs(t.box().y1() - s.box().y1()) <= reach;
            if (t != s && t.horizontal() == s.horizontal() && level
                    && t.box().distance(s.box()) > reach && isMetInTheMiddle(t, line)) {
                return true;
            }
        }
        return false;
    }

    /** Whether one end is free and the other meets a line across: a plate that its lead meets at the end, a gate. */
    private boolean isDeadEnd(Segment s, Point free, Point held, SpatialIndex<Segment> line,
            SpatialIndex<Segment> wire) {
        if (meets(free, line, s) || meets(free, wire, s) || meets(held, wire, s)) {
            return false;
        }
        for (Segment t : line.near(held, reach)) {
            if (t != s && t.distance(held) <= reach && t.horizontal() != s.horizontal()) {
                return true;
            }
        }
        return false;
    }

    private static double slack(Segment t, Segment self) {
        return t.shape() == Segment.Shape.CLOSED ? (t.width() + self.width()) / 2 : 0;
    }

    private boolean meets(Point end, SpatialIndex<Segment> index, Segment self) {
        for (Segment t : index.near(end, reach + self.width() + 1)) {
            // A piece does not meet the line that it was cut from.
            boolean same = t.stroke() == self.stroke() && t.horizontal() == self.horizontal();
            // Lines are drawn up to each other's edges as well as to their middles.
            if (!same && t.distance(end) <= reach + slack(t, self)) {
                return true;
            }
        }
        return false;
    }
}
