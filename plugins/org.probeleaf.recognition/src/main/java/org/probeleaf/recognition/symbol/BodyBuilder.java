// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.symbol;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.probeleaf.recognition.ink.Groups;
import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Puts body ink together: what touches, what lies inside a closed outline, and small open pieces that face each other
 * across a narrow gap (the plates of a capacitor, the parts of a crystal or a switch).
 */
final class BodyBuilder {

    /** The widest gap inside a symbol, in pitches. */
    private static final double GAP = 0.5;
    /** The widest gap between two equal plates, in pitches. */
    private static final double TWIN_GAP = 1.1;
    /** The largest piece that may be joined over a gap, in pitches. */
    private static final double SMALL = 3.2;
    /** A gap over which a piece with a lead joins a symbol that has two, as a gate joins its channel; in pitches. */
    private static final double CLOSE = 0.4;
    /** Lines of a body that are gone through one by one rather than searched. */
    private static final int FEW = 24;

    private final PageInk page;
    private final List<Segment> ink;
    private final Groups groups;
    private final Set<Segment> plates;
    /** For each body, by id, a segment of it. */
    private final Map<Integer, Integer> firstSegment = new HashMap<>();
    private final SpatialIndex<Segment> wires;
    private final SpatialIndex<Segment> conductors;
    private final Map<Integer, Boolean> borders = new HashMap<>();
    /** The leads of each body, by id, as far as they were asked for. */
    private final Map<Integer, List<Segment>> leads = new HashMap<>();

    BodyBuilder(PageInk page, List<Segment> ink, List<Segment> leads, Set<Segment> plates) {
        this.plates = plates;
        this.page = page;
        this.ink = ink;
        this.groups = new Groups(ink.size());
        this.wires = SpatialIndex.ofSegments(page.wires());
        List<Segment> all = new ArrayList<>(page.wires());
        all.addAll(leads);
        this.conductors = SpatialIndex.ofSegments(all);
    }

    List<Body> bodies() {
        joinTouching();
        List<Body> pieces = collect();
        joinPieces(pieces);
        return collect();
    }

    private void joinTouching() {
        Map<Integer, Integer> firstOfStroke = new HashMap<>();
        Map<Segment, Integer> ids = new HashMap<>();
        for (int i = 0; i < ink.size(); i++) {
            ids.put(ink.get(i), i);
            Integer first = firstOfStroke.putIfAbsent(ink.get(i).stroke(), i);
            if (first != null) {
                groups.join(first, i);
            }
        }
        double reach = page.reach();
        SpatialIndex<Segment> index = SpatialIndex.ofSegments(ink);
        for (int i = 0; i < ink.size(); i++) {
            Segment s = ink.get(i);
            for (Segment t : index.touching(s.box().grow(reach))) {
                int j = ids.get(t);
                if (j > i && !groups.joined(i, j) && !isStray(s, t) && !isStray(t, s) && !areInLine(s, t)
                        && touch(s, t, reach)) {
                    groups.join(i, j);
                }
            }
        }
    }

    /** Whether a plate only happens to touch a closed outline. */
    private boolean isStray(Segment plate, Segment outline) {
        return outline.shape() == Segment.Shape.CLOSED && plates.contains(plate);
    }

    /** Whether two plates stand end to end, each with a lead and a twin of its own: of two capacitors drawn close. */
    private boolean areInLine(Segment s, Segment t) {
        return s.horizontal() == t.horizontal() && plates.contains(s) && plates.contains(t);
    }

    private static boolean touch(Segment s, Segment t, double reach) {
        return s.comesNear(t.a(), reach) || s.comesNear(t.b(), reach) || t.comesNear(s.a(), reach)
                || t.comesNear(s.b(), reach) || s.crossing(t) != null;
    }

    private void joinPieces(List<Body> pieces) {
        double pitch = page.pitch();
        SpatialIndex<Body> index = new SpatialIndex<>(pieces, Body::box);
        List<Body[]> pairs = new ArrayList<>();
        for (Body b : pieces) {
            for (Body c : index.touching(b.box().grow(GAP * pitch))) {
                if (c.id() != b.id() && holds(b, c)) {
                    groups.join(first(b), first(c));
                } else if (c.id() > b.id() && bothSmall(b, c) && facing(b, c) && !areRow(b, c)) {
                    pairs.add(new Body[] {b, c});
                }
            }
            for (Body c : index.touching(b.box().grow(TWIN_GAP * pitch))) {
                if (c.id() > b.id() && areTwins(b, c)) {
                    pairs.add(new Body[] {b, c});
                }
            }
        }
        // What stands right opposite its like belongs to it, whatever else is closer.
        pairs.sort(Comparator.comparing((Body[] p) -> !areTwins(p[0], p[1]))
                .thenComparingDouble(p -> p[0].box().distance(p[1].box())));
        Map<Integer, Integer> leadCount = new HashMap<>();
        for (Body b : pieces) {
            leadCount.merge(groups.find(first(b)), leadsAt(b), Integer::sum);
        }
        for (Body[] p : pairs) {
            int one = groups.find(first(p[0]));
            int other = groups.find(first(p[1]));
            if (one != other && belong(leadCount.get(one), leadCount.get(other), p[0].box().distance(p[1].box()))) {
                groups.join(one, other);
                leadCount.put(groups.find(one), leadCount.get(one) + leadCount.get(other));
            }
        }
    }

    /**
     * Whether two pieces can be one symbol, from the leads that come to each: two plates with a lead each can, and a
     * piece without leads; two symbols that have two leads each are complete and only stand side by side.
     */
    private boolean belong(int leads, int otherLeads, double gap) {
        int few = Math.min(leads, otherLeads);
        int many = Math.max(leads, otherLeads);
        return few == 0 || few == 1 && many == 1 || few == 1 && many == 2 && gap < CLOSE * page.pitch() + 0.02;
    }

    /** Whether two pieces stand in a row with a lead to the same side each, as the marks of ports do. */
    private boolean areRow(Body b, Body c) {
        List<Segment> one = leadsOf(b);
        List<Segment> other = leadsOf(c);
        if (one.size() != 1 || other.size() != 1 || !areAlike(b, c)) {
            return false;
        }
        Point p = direction(one.get(0), b);
        Point q = direction(other.get(0), c);
        Point to = new Point(c.box().centre().x() - b.box().centre().x(), c.box().centre().y() - b.box().centre().y());
        double apart = Math.hypot(to.x(), to.y());
        return p.x() * q.x() + p.y() * q.y() > 0.9 && Math.abs(p.x() * to.x() + p.y() * to.y()) < 0.3 * apart;
    }

    private boolean areAlike(Body b, Body c) {
        return b.outline() != null && c.outline() != null && b.ink().size() == c.ink().size()
                && Math.abs(b.box().width() - c.box().width()) < page.reach()
                && Math.abs(b.box().height() - c.box().height()) < page.reach();
    }

    /** The way a lead goes from a body, of length 1. */
    private static Point direction(Segment lead, Body b) {
        Point c = b.box().centre();
        Point from = lead.nearerEnd(c);
        Point to = lead.fartherEnd(c);
        double length = Math.max(lead.length(), 1e-9);
        return new Point((to.x() - from.x()) / length, (to.y() - from.y()) / length);
    }

    private int leadsAt(Body b) {
        return leadsOf(b).size();
    }

    private List<Segment> leadsOf(Body b) {
        return leads.computeIfAbsent(b.id(), k -> findLeads(b));
    }

    /** The conductors that come to a body, one for each place. */
    private List<Segment> findLeads(Body b) {
        List<Segment> found = new ArrayList<>();
        NodeFinder places = new NodeFinder(page.reach());
        double thickest = b.ink().stream().mapToDouble(Segment::width).max().orElse(0);
        SpatialIndex<Segment> own = b.ink().size() > FEW ? SpatialIndex.ofSegments(b.ink(), this::around) : null;
        for (Segment c : conductors.touching(b.box().grow(page.reach() + thickest / 2))) {
            for (Point end : new Point[] {c.a(), c.b()}) {
                List<Segment> here = own == null ? b.ink() : own.near(end, 0);
                if (here.stream().anyMatch(s -> s.comesNear(end, around(s)))) {
                    // Two lines that come to one place are one lead.
                    if (places.node(end) == found.size()) {
                        found.add(c);
                    }
                    break;
                }
            }
        }
        return found;
    }

    /** How far from a line what comes to it may end: within its own width. */
    private double around(Segment s) {
        return Math.max(page.reach(), s.width() / 2 + 0.1);
    }

    /** Two equal bars right opposite each other: the plates of a capacitor, however far apart they are drawn. */
    private boolean areTwins(Body b, Body c) {
        Box p = b.box();
        Box q = c.box();
        double reach = page.reach();
        boolean flat = p.width() > 3 * p.height() && q.width() > 3 * q.height();
        boolean upright = p.height() > 3 * p.width() && q.height() > 3 * q.width();
        boolean level = flat ? Math.abs(p.x0() - q.x0()) < reach && Math.abs(p.x1() - q.x1()) < reach
                : Math.abs(p.y0() - q.y0()) < reach && Math.abs(p.y1() - q.y1()) < reach;
        return (flat || upright) && level && Math.max(p.width(), p.height()) < SMALL * page.pitch()
                && leadsAt(b) == 1 && leadsAt(c) == 1;
    }

    private int first(Body b) {
        return firstSegment.get(b.id());
    }

    private boolean holds(Body outer, Body inner) {
        return outer.outline() != null && outer.outline().grow(page.reach()).contains(inner.box())
                && !enclosesWires(outer);
    }

    /** Whether wires run inside an outline: then it is a border round a group, not a symbol. */
    private boolean enclosesWires(Body b) {
        return borders.computeIfAbsent(b.id(), k -> {
            Box inside = b.outline().grow(-page.reach());
            return wires.touching(inside).stream().anyMatch(w -> inside.contains(w.box()));
        });
    }

    private boolean bothSmall(Body b, Body c) {
        double limit = SMALL * page.pitch();
        return b.box().width() < limit && b.box().height() < limit && c.box().width() < limit
                && c.box().height() < limit && !holdsText(b) && !holdsText(c);
    }

    private boolean holdsText(Body b) {
        return b.outline() != null
                && page.texts().stream().anyMatch(t -> b.outline().grow(page.reach()).contains(t.box().centre()));
    }

    private boolean facing(Body b, Body c) {
        double overlapX = Math.min(b.box().x1(), c.box().x1()) - Math.max(b.box().x0(), c.box().x0());
        double overlapY = Math.min(b.box().y1(), c.box().y1()) - Math.max(b.box().y0(), c.box().y0());
        double thinX = Math.min(b.box().width(), c.box().width());
        double thinY = Math.min(b.box().height(), c.box().height());
        // What has no lead, such as the bow over two contacts of a jumper, may reach a good way past its neighbour.
        double share = leadsAt(b) == 0 || leadsAt(c) == 0 ? 0.3 : 0.5;
        return overlapX >= share * thinX && overlapX > -page.reach()
                || overlapY >= share * thinY && overlapY > -page.reach();
    }

    private List<Body> collect() {
        firstSegment.clear();
        Map<Integer, List<Segment>> members = new LinkedHashMap<>();
        for (int i = 0; i < ink.size(); i++) {
            members.computeIfAbsent(groups.find(i), k -> new ArrayList<>()).add(ink.get(i));
        }
        List<Body> bodies = new ArrayList<>();
        for (Map.Entry<Integer, List<Segment>> e : members.entrySet()) {
            firstSegment.put(bodies.size(), e.getKey());
            bodies.add(body(bodies.size(), e.getValue()));
        }
        return bodies;
    }

    /** The body that the given ink makes. */
    static Body body(int id, List<Segment> ink) {
        return new Body(id, boundsOf(ink), ink, outlineOf(ink));
    }

    private static Box boundsOf(List<Segment> segments) {
        Box box = segments.get(0).box();
        for (Segment s : segments) {
            box = box.union(s.box());
        }
        return box;
    }

    /** The largest closed outline: one closed stroke, or the loop that straight lines make. */
    private static Box outlineOf(List<Segment> segments) {
        Map<Integer, Box> boxes = new HashMap<>();
        for (Segment s : segments) {
            boolean closed = s.shape() == Segment.Shape.CLOSED || s.shape() == Segment.Shape.FILLED;
            // Straight lines that became body ink by making a loop are taken as one outline.
            int key = closed || s.shape() != Segment.Shape.LINE ? s.stroke() : -1;
            boxes.merge(key, s.box(), Box::union);
        }
        Box best = null;
        for (Box b : boxes.values()) {
            if (b.width() > 0 && b.height() > 0
                    && (best == null || b.width() * b.height() > best.width() * best.height())) {
                best = b;
            }
        }
        return best;
    }
}
