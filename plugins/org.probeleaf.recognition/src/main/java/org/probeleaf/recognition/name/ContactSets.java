// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.probeleaf.recognition.ink.Groups;
import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.recognition.name.DesignatorGrammar.Designator;
import org.probeleaf.recognition.symbol.Body;
import org.probeleaf.recognition.wiring.Conductors;
import org.probeleaf.recognition.wiring.Contact;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Puts switches together that are drawn as contacts apart: four or more small bodies of one size near each other, each
 * met from one side only, with no designators of their own.
 */
public final class ContactSets {

    private static final int FEWEST = 4;
    private static final double LARGEST = 1.5;
    private static final double GAP = 1.6;

    private final PageInk page;
    private final Conductors conductors;
    private final List<Body> bodies;
    private final List<Contact> contacts;

    /**
     * @param page       the page's ink
     * @param conductors its conductors
     * @param bodies     its symbols, by id
     * @param contacts   where conductors meet them
     */
    public ContactSets(PageInk page, Conductors conductors, List<Body> bodies, List<Contact> contacts) {
        this.page = page;
        this.conductors = conductors;
        this.bodies = new ArrayList<>(bodies);
        this.contacts = new ArrayList<>(contacts);
        Map<Integer, List<Contact>> contactsOf = new HashMap<>();
        contacts.forEach(c -> contactsOf.computeIfAbsent(c.body(), k -> new ArrayList<>()).add(c));
        for (List<Body> set : sets(contactsOf)) {
            if (!haveNames(set)) {
                join(set, contactsOf);
            }
        }
    }

    /** The page's symbols, by id; what a set was put together from keeps its ids but has no contacts. */
    public List<Body> bodies() {
        return bodies;
    }

    /** The page's contacts, those of sets put together. */
    public List<Contact> contacts() {
        return contacts;
    }

    private List<List<Body>> sets(Map<Integer, List<Contact>> contactsOf) {
        List<Body> able = bodies.stream().filter(b -> isContact(b, contactsOf.getOrDefault(b.id(), List.of())))
                .toList();
        SpatialIndex<Body> index = new SpatialIndex<>(able, Body::box);
        Groups groups = new Groups(bodies.size());
        for (Body b : able) {
            for (Body c : index.touching(b.outline().grow(GAP * page.pitch()))) {
                if (Math.abs(b.outline().width() - c.outline().width()) <= page.reach()
                        && Math.abs(b.outline().height() - c.outline().height()) <= page.reach()) {
                    groups.join(b.id(), c.id());
                }
            }
        }
        Map<Integer, List<Body>> sets = new LinkedHashMap<>();
        able.forEach(b -> sets.computeIfAbsent(groups.find(b.id()), k -> new ArrayList<>()).add(b));
        return sets.values().stream().filter(s -> s.size() >= FEWEST && isBothSided(s)).toList();
    }

    /** Whether a body is a small upright box without text, met from one side. */
    private boolean isContact(Body b, List<Contact> here) {
        Box o = b.outline();
        double limit = LARGEST * page.pitch();
        if (o == null || here.isEmpty() || Math.max(o.width(), o.height()) > limit
                || b.ink().stream().anyMatch(s -> !s.upright())
                || page.texts().stream().anyMatch(t -> o.contains(t.box().centre()))) {
            return false;
        }
        return here.stream().map(c -> c.inner().x() < o.centre().x()).distinct().count() == 1
                || here.stream().map(c -> c.inner().y() < o.centre().y()).distinct().count() == 1;
    }

    /** Whether the bodies stand in more than one row, as the two sides of a switch do. */
    private boolean isBothSided(List<Body> set) {
        return set.stream().mapToLong(b -> Math.round(b.outline().x0() / page.reach() / 2)).distinct().count() > 1
                && set.stream().mapToLong(b -> Math.round(b.outline().y0() / page.reach() / 2)).distinct().count() > 1;
    }

    private boolean haveNames(List<Body> set) {
        Box box = boxOf(set).grow(page.pitch());
        long names = page.texts().stream().filter(t -> box.contains(t.box().centre())).filter(t -> {
            Designator d = DesignatorGrammar.parse(t.text());
            return d != null && d.strong();
        }).count();
        return names > 1;
    }

    private void join(List<Body> set, Map<Integer, List<Contact>> contactsOf) {
        Box box = boxOf(set);
        List<Segment> ink = new ArrayList<>();
        Map<Integer, Contact> byConductor = new LinkedHashMap<>();
        Set<Integer> members = new HashSet<>();
        int id = bodies.size();
        for (Body b : set) {
            members.add(b.id());
            ink.addAll(b.ink());
            for (Contact c : contactsOf.get(b.id())) {
                byConductor.computeIfAbsent(conductors.conductor(c.segment()), k -> outermost(id, k, c, box));
            }
        }
        contacts.removeIf(c -> members.contains(c.body()));
        contacts.addAll(byConductor.values());
        bodies.add(new Body(id, box, ink, box));
    }

    /** The contact by the lead of a conductor that reaches farthest out of the box, where its number stands. */
    private Contact outermost(int body, int conductor, Contact found, Box box) {
        Contact best = found;
        double most = -1;
        for (int i : conductors.touching(box.grow(2 * page.pitch()))) {
            Segment s = conductors.segments().get(i);
            if (!conductors.isWire(i) && conductors.conductor(i) == conductor) {
                boolean aOut = box.distance(s.a()) > box.distance(s.b());
                Point outer = aOut ? s.a() : s.b();
                if (box.distance(outer) > most) {
                    most = box.distance(outer);
                    best = new Contact(body, i, aOut ? s.b() : s.a(), outer);
                }
            }
        }
        return new Contact(body, best.segment(), best.inner(), best.outer());
    }

    private static Box boxOf(List<Body> set) {
        return set.stream().map(Body::outline).reduce(Box::union).orElseThrow();
    }
}
