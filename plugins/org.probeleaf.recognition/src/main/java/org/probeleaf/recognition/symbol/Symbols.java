// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.symbol;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
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
 * A page's symbols.
 *
 * @param bodies bodies, by id
 * @param leads  straight lines that stick out of them
 */
public record Symbols(List<Body> bodies, List<Segment> leads) {

    /** The largest symbol with loops in it, in pitches. */
    private static final double LARGEST_LOOP = 4;

    /** Finds the symbols of a page. */
    public static Symbols find(PageInk page) {
        LeadSorter sorter = new LeadSorter(page);
        List<Segment> ink = new ArrayList<>(sorter.body());
        List<Segment> sorted = withoutLoops(sorter, ink, page);
        List<Body> bodies = new BodyBuilder(page, ink, sorted, sorter.plates()).bodies();
        Map<Segment, Integer> owner = owners(bodies);
        SpatialIndex<Segment> index = SpatialIndex.ofSegments(ink);
        List<Segment> pieces = new ArrayList<>();
        for (Segment lead : sorted) {
            pieces.addAll(cutAtBody(lead, index, owner, bodies, page));
        }
        SpatialIndex<Segment> conductors = SpatialIndex.ofSegments(concat(pieces, page.wires()));
        List<Segment> leads = new ArrayList<>();
        SpatialIndex<Segment> wires = SpatialIndex.ofSegments(page.wires());
        SpatialIndex<Body> boxes = boxes(bodies, wires, page);
        for (Segment lead : pieces) {
            Set<Integer> atA = bodiesAt(lead.a(), index, owner, page.reach());
            Set<Integer> atB = bodiesAt(lead.b(), index, owner, page.reach());
            boolean mark = lead.length() < page.pitch() && (isMark(atA, atB, bodies, lead, conductors, page)
                    || isMark(atB, atA, bodies, lead, conductors, page));
            boolean hook = lead.length() < 0.35 * page.pitch() && (atA.isEmpty() && isHook(lead, lead.a(), conductors,
                    index, page) || atB.isEmpty() && isHook(lead, lead.b(), conductors, index, page));
            atA.retainAll(atB);
            // A line with both ends on one body is a part of it: the bar of a diode; so is one too short for a pin that
            // ends in the open: the hook at that bar.
            (atA.isEmpty() && !mark && !hook && !isInside(lead, boxes, wires, page) ? leads : ink).add(lead);
        }
        bodies = new BodyBuilder(page, ink, leads, sorter.plates()).bodies();
        SpatialIndex<Segment> all = SpatialIndex.ofSegments(concat(page.wires(), leads));
        return new Symbols(new Rows(page, all).apart(new Stacks(page, all).apart(bodies)), leads);
    }

    /**
     * Whether a line lies inside the box of a chip: a picture of what is in it, or a bracket that ties pins. A line
     * to which a wire comes is a pin that is drawn in the box.
     */
    private static boolean isInside(Segment lead, SpatialIndex<Body> boxes, SpatialIndex<Segment> wires,
            PageInk page) {
        return !onAny(lead.a(), wires, page.reach()) && !onAny(lead.b(), wires, page.reach()) && boxes.touching(lead.box()).stream()
                .anyMatch(b -> b.outline().grow(page.reach()).contains(lead.box()));
    }

    /**
     * Short lines that make loops through small symbols are parts of them, as the lines between the channel of a
     * transistor and the diode beside it. They are added to the ink; the rest is returned.
     */
    private static List<Segment> withoutLoops(LeadSorter sorter, List<Segment> ink, PageInk page) {
        if (page.wires().isEmpty()) {
            return sorter.leads();
        }
        List<Body> bodies = new BodyBuilder(page, ink, sorter.leads(), sorter.plates()).bodies();
        Map<Segment, Integer> owner = owners(bodies);
        SpatialIndex<Segment> small = SpatialIndex.ofSegments(bodies.stream()
                .filter(b -> Math.max(b.box().width(), b.box().height()) < LARGEST_LOOP * page.pitch())
                .flatMap(b -> b.ink().stream()).toList());
        List<Segment> lines = sorter.leads().stream().filter(s -> s.length() < LARGEST_LOOP * page.pitch()).toList();
        Groups close = closePieces(bodies, page);
        Loops loops = new Loops(lines, page.reach(), p -> small.near(p, page.reach()).stream()
                .filter(s -> s.distance(p) <= page.reach()).map(s -> close.find(owner.get(s))).findFirst()
                .orElse(null));
        List<Segment> rest = new ArrayList<>();
        for (Segment s : sorter.leads()) {
            ink.addAll(loops.on(s));
            for (Segment piece : loops.off(s)) {
                // A short rest is the other half of a bar.
                boolean half = piece != s && !loops.on(s).isEmpty() && piece.length() < 0.6 * page.pitch();
                (half ? ink : rest).add(piece);
            }
        }
        return rest;
    }

    /** Numbers of bodies, merged where small pieces lie next to each other. */
    private static Groups closePieces(List<Body> bodies, PageInk page) {
        Groups close = new Groups(bodies.size());
        double limit = 2.5 * page.pitch();
        SpatialIndex<Body> pieces = new SpatialIndex<>(bodies.stream()
                .filter(b -> Math.max(b.box().width(), b.box().height()) < limit).toList(), Body::box);
        for (Body b : bodies) {
            if (b.ink().size() == 1) {
                for (Body c : pieces.touching(b.box().grow(0.4 * page.pitch()))) {
                    close.join(b.id(), c.id());
                }
            }
        }
        return close;
    }

    private static Map<Segment, Integer> owners(List<Body> bodies) {
        Map<Segment, Integer> owner = new HashMap<>();
        bodies.forEach(b -> b.ink().forEach(s -> owner.put(s, b.id())));
        return owner;
    }

    /** The symbols that are boxes with no wires in them. */
    private static SpatialIndex<Body> boxes(List<Body> bodies, SpatialIndex<Segment> wires, PageInk page) {
        return new SpatialIndex<>(page.wires().isEmpty() ? List.of() : bodies.stream()
                .filter(b -> isLarge(b, page.pitch()) && isBox(b, page.reach())
                        && wires.touching(b.outline()).stream().noneMatch(w -> b.outline().contains(w.box())))
                .toList(), Body::outline);
    }

    private static boolean isFree(Segment s, Point end, SpatialIndex<Segment> conductors, double reach) {
        return conductors.near(end, reach).stream().allMatch(t -> t == s || t.distance(end) > reach);
    }

    /**
     * Whether a short line that ends in the open is a hook on its symbol. Where wires have no style of their own, one
     * that goes on from the end of a curve is a lead, as at the last turn of a coil.
     */
    private static boolean isHook(Segment s, Point free, SpatialIndex<Segment> conductors, SpatialIndex<Segment> ink,
            PageInk page) {
        Point held = s.fartherEnd(free);
        double reach = page.reach();
        boolean goesOn = page.wires().isEmpty() && ink.near(held, reach).stream().filter(t -> t.distance(held) <= reach)
                .allMatch(t -> t.shape() == Segment.Shape.CURVED && t.nearerEnd(held).distance(held) <= reach);
        return !goesOn && isFree(s, free, conductors, reach);
    }

    /** Whether lines run along all four sides of the outline. */
    private static boolean isBox(Body b, double reach) {
        double[] along = new double[4];
        Box o = b.outline();
        for (Segment s : b.ink()) {
            if (s.upright()) {
                boolean flat = s.horizontal();
                double low = flat ? s.a().y() - o.y0() : s.a().x() - o.x0();
                double high = flat ? o.y1() - s.a().y() : o.x1() - s.a().x();
                along[(flat ? 0 : 2)] += Math.abs(low) <= reach ? s.length() : 0;
                along[(flat ? 1 : 3)] += Math.abs(high) <= reach ? s.length() : 0;
            }
        }
        return Math.min(along[0], along[1]) > 0.9 * o.width() && Math.min(along[2], along[3]) > 0.9 * o.height();
    }

    private static boolean onAny(Point end, SpatialIndex<Segment> lines, double reach) {
        return lines.near(end, reach).stream().anyMatch(s -> s.distance(end) <= reach);
    }

    private static List<Segment> concat(List<Segment> a, List<Segment> b) {
        List<Segment> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }

    /**
     * Whether a line leads from a large body to a tiny one from which the pin goes on: an arrow or a bubble that
     * stands on a pin.
     */
    private static boolean isMark(Set<Integer> near, Set<Integer> far, List<Body> bodies, Segment lead,
            SpatialIndex<Segment> conductors, PageInk page) {
        if (near.stream().noneMatch(i -> isLarge(bodies.get(i), page.pitch()))) {
            return false;
        }
        for (int i : far) {
            Body b = bodies.get(i);
            if (isTiny(b, page.pitch())) {
                for (Segment s : conductors.touching(b.box().grow(page.reach()))) {
                    boolean inLine = s != lead && s.upright() && s.horizontal() == lead.horizontal();
                    if (inLine && b.ink().stream().anyMatch(t -> t.distance(s.nearerEnd(b.box().centre()))
                            <= page.reach())) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static boolean isTiny(Body b, double pitch) {
        return Math.max(b.box().width(), b.box().height()) < 0.95 * pitch;
    }

    private static boolean isLarge(Body b, double pitch) {
        return b.outline() != null && Math.min(b.box().width(), b.box().height()) > 1.8 * pitch;
    }

    private static Set<Integer> bodiesAt(Point end, SpatialIndex<Segment> index, Map<Segment, Integer> owner,
            double reach) {
        Set<Integer> found = new HashSet<>();
        for (Segment s : index.near(end, reach)) {
            if (s.distance(end) <= reach) {
                found.add(owner.get(s));
            }
        }
        return found;
    }

    /** A line drawn right through a symbol is two leads, one on either side: a fuse, a diode drawn in one stroke. */
    private static List<Segment> cutAtBody(Segment lead, SpatialIndex<Segment> index, Map<Segment, Integer> owner,
            List<Body> bodies, PageInk page) {
        Map<Integer, List<Point>> crossings = new HashMap<>();
        for (Segment s : index.touching(lead.box())) {
            Point p = lead.crossing(s);
            if (p != null) {
                crossings.computeIfAbsent(owner.get(s), k -> new ArrayList<>()).add(p);
            }
        }
        for (Map.Entry<Integer, List<Point>> e : crossings.entrySet()) {
            Body body = bodies.get(e.getKey());
            Box box = body.box().grow(page.reach());
            List<Point> places = e.getValue();
            places.sort(Comparator.comparingDouble(p -> p.distance(lead.a())));
            boolean aInside = box.contains(lead.a());
            boolean bInside = box.contains(lead.b());
            if (aInside && bInside) {
                continue;
            }
            if (aInside || bInside) {
                Point inner = aInside ? lead.a() : lead.b();
                Point outer = aInside ? lead.b() : lead.a();
                Point edge = aInside ? places.get(places.size() - 1) : places.get(0);
                // A line that enters a symbol and ends on it is a lead up to the edge and a part of the symbol beyond.
                if (!isLarge(body, page.pitch()) && !isTiny(body, page.pitch())
                        && edge.distance(inner) > 0.3 * page.pitch() && body.ink().stream()
                        .anyMatch(s -> s.distance(inner) <= page.reach())) {
                    return List.of(piece(lead, outer, edge), piece(lead, edge, inner));
                }
                continue;
            }
            Point first = places.get(0);
            Point last = places.get(places.size() - 1);
            if (first.distance(last) < 4 * page.reach()) {
                // The two leads must not meet: they end at the edges of the symbol.
                first = atEdge(lead, lead.a(), body.box());
                last = atEdge(lead, lead.b(), body.box());
            }
            return List.of(piece(lead, lead.a(), first), piece(lead, last, lead.b()));
        }
        return List.of(lead);
    }

    /** Where an upright line that comes from {@code from} reaches a box. */
    private static Point atEdge(Segment line, Point from, Box box) {
        return line.horizontal() ? new Point(Math.max(box.x0(), Math.min(box.x1(), from.x())), from.y())
                : new Point(from.x(), Math.max(box.y0(), Math.min(box.y1(), from.y())));
    }

    private static Segment piece(Segment of, Point a, Point b) {
        return new Segment(of.stroke(), of.style(), a, b, of.shape(), of.width());
    }
}
