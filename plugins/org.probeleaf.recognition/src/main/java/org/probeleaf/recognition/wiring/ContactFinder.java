// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.recognition.symbol.Body;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Finds where conductors meet bodies. A conductor meets a body where one of its ends lies on the body's ink; a lead
 * also where it crosses the body's outline; and a lead or wire that ends in the open close by an open symbol (the
 * contact of a switch) meets that.
 */
public final class ContactFinder {

    private static final double LONGEST_LEAD = 5;
    /** In place of a body's id: several bodies, or a wire. */
    private static final int MANY = -1;

    private final PageInk page;
    private final Conductors conductors;
    private final List<Body> bodies;
    private final Map<Segment, Body> owner = new HashMap<>();
    private final SpatialIndex<Segment> ink;
    private final SpatialIndex<Body> bodyIndex;

    /**
     * @param page       the page's ink
     * @param conductors its wires and leads
     * @param bodies     its symbols, by id
     */
    public ContactFinder(PageInk page, Conductors conductors, List<Body> bodies) {
        this.page = page;
        this.conductors = conductors;
        this.bodies = bodies;
        List<Segment> all = new ArrayList<>();
        for (Body b : bodies) {
            for (Segment s : b.ink()) {
                owner.put(s, b);
                all.add(s);
            }
        }
        ink = SpatialIndex.ofSegments(all);
        bodyIndex = new SpatialIndex<>(bodies, Body::box);
    }

    /** All contacts of the page. */
    public List<Contact> find() {
        List<Contact> found = new ArrayList<>();
        for (int i = 0; i < conductors.segments().size(); i++) {
            Segment s = conductors.segments().get(i);
            Map<Integer, Contact> byBody = new HashMap<>();
            for (Point end : new Point[] {s.a(), s.b()}) {
                meetAt(i, s, end, byBody);
            }
            if (!conductors.isWire(i)) {
                meetAcross(i, s, byBody);
            }
            found.addAll(byBody.values());
        }
        Map<Integer, Box> extents = extents();
        // Lines inside a symbol that lead nowhere are marks in it, not pins.
        found.removeIf(c -> bodies.get(c.body()).box().grow(page.reach())
                .contains(extents.get(conductors.conductor(c.segment()))));
        removeHandles(found);
        return oneForEachPlace(withoutPassing(found));
    }

    /** Lines of a symbol that lead from it back to it and bear no wire are part of its look, such as the grips of a plug. */
    private void removeHandles(List<Contact> found) {
        if (page.wires().isEmpty()) {
            return;
        }
        Map<Integer, Integer> only = new HashMap<>();
        Map<Integer, Integer> count = new HashMap<>();
        for (int i = 0; i < conductors.segments().size(); i++) {
            if (conductors.isWire(i)) {
                only.put(conductors.conductor(i), MANY);
            }
        }
        for (Contact c : found) {
            only.merge(conductors.conductor(c.segment()), c.body(), (a, b) -> a.equals(b) ? a : MANY);
            count.merge(conductors.conductor(c.segment()), 1, Integer::sum);
        }
        found.removeIf(c -> only.get(conductors.conductor(c.segment())) != MANY
                && count.get(conductors.conductor(c.segment())) > 1);
    }

    /** The box round each conductor, by its number. */
    private Map<Integer, Box> extents() {
        Map<Integer, Box> extents = new HashMap<>();
        for (int i = 0; i < conductors.segments().size(); i++) {
            extents.merge(conductors.conductor(i), conductors.segments().get(i).box(), Box::union);
        }
        return extents;
    }

    private void meetAt(int segment, Segment s, Point end, Map<Integer, Contact> byBody) {
        double reach = page.reach();
        boolean met = false;
        for (Segment t : ink.near(end, reach + 1)) {
            Body b = owner.get(t);
            if (t.distance(end) <= reach + (t.width() + s.width()) / 2) {
                met = true;
                byBody.putIfAbsent(b.id(), contact(b, segment, s, end));
            }
        }
        if (!met && isFree(segment, end)) {
            Body b = openBodyAt(end);
            if (b != null) {
                byBody.putIfAbsent(b.id(), contact(b, segment, s, end));
            }
        }
    }

    private void meetAcross(int segment, Segment s, Map<Integer, Contact> byBody) {
        for (Segment t : ink.touching(s.box())) {
            Body b = owner.get(t);
            if (!byBody.containsKey(b.id())) {
                Point p = s.crossing(t);
                if (p != null) {
                    byBody.put(b.id(), contact(b, segment, s, p));
                }
            }
        }
    }

    private Contact contact(Body b, int segment, Segment s, Point inner) {
        if (conductors.isWire(segment)) {
            return new Contact(b.id(), segment, inner, inner);
        }
        Point outer = b.box().distance(s.a()) >= b.box().distance(s.b()) ? s.a() : s.b();
        // Where wires are drawn like leads, a long line is a wire that comes up to the body.
        boolean wire = s.length() > LONGEST_LEAD * page.pitch();
        return new Contact(b.id(), segment, inner, wire ? inner : outer);
    }

    private boolean isFree(int segment, Point end) {
        return conductors.near(end, page.reach()).size() <= 1;
    }

    private Body openBodyAt(Point end) {
        double margin = 0.3 * page.pitch();
        Body best = null;
        for (Body b : bodyIndex.near(end, margin)) {
            boolean small = b.box().width() < 5 * page.pitch() && b.box().height() < 5 * page.pitch();
            if (small && (best == null || distance(b, end) < distance(best, end))) {
                best = b;
            }
        }
        return best;
    }

    private static double distance(Body b, Point p) {
        return b.box().distance(p);
    }

    /** A line that passes through a symbol's outline to a pin's mark inside meets the symbol there, not at the outline. */
    private List<Contact> withoutPassing(List<Contact> found) {
        Map<Integer, List<Contact>> inside = new HashMap<>();
        for (Contact c : found) {
            Box outline = bodies.get(c.body()).outline();
            if (outline != null && outline.grow(-page.reach()).contains(c.inner())) {
                inside.computeIfAbsent(c.body(), k -> new ArrayList<>()).add(c);
            }
        }
        return found.stream().filter(c -> inside.getOrDefault(c.body(), List.of()).stream().noneMatch(i ->
                goesOnTo(c, i))).toList();
    }

    private boolean goesOnTo(Contact at, Contact inside) {
        Segment s = conductors.segments().get(at.segment());
        double aside = s.horizontal() ? Math.abs(at.inner().y() - inside.inner().y())
                : Math.abs(at.inner().x() - inside.inner().x());
        Box outline = bodies.get(at.body()).outline();
        return at != inside && s.upright() && aside <= page.reach() && !outline.grow(-page.reach()).contains(at.inner())
                && conductors.conductor(at.segment()) == conductors.conductor(inside.segment())
                && (outline.contains(s.a()) || outline.contains(s.b()));
    }

    /** A conductor that meets a body twice at about the same place meets it once. */
    private List<Contact> oneForEachPlace(List<Contact> found) {
        List<Contact> kept = new ArrayList<>();
        Map<Integer, List<Contact>> byBody = new HashMap<>();
        for (Contact c : found) {
            List<Contact> others = byBody.computeIfAbsent(c.body(), k -> new ArrayList<>());
            boolean again = others.stream().anyMatch(o -> conductors.conductor(o.segment()) == conductors
                    .conductor(c.segment()) && o.inner().distance(c.inner()) < 0.45 * page.pitch());
            if (!again) {
                others.add(c);
                kept.add(c);
            }
        }
        return kept;
    }
}
