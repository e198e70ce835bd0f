// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.probeleaf.drawing.primitive.Text;
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
 * Finds units that are drawn without a body: the supply pins of a chip as two or more leads with a number each, whose
 * free ends point at the designator between them.
 */
public final class BareUnits {

    private static final double LONGEST_LEAD = 4;
    /** How far the free end of a lead may be from the designator, in pitches. */
    private static final double GAP = 2.5;

    private final PageInk page;
    private final Conductors conductors;
    private final List<Body> bodies;
    private final List<Contact> contacts;
    private final SpatialIndex<Text> numbers;

    /** A lead that ends in the open, with that end. */
    private record Stub(int segment, Point free, Point outer) {
    }

    /**
     * @param page       the page's ink
     * @param conductors its conductors
     * @param bodies     its symbols, by id
     * @param contacts   where conductors meet them
     */
    public BareUnits(PageInk page, Conductors conductors, List<Body> bodies, List<Contact> contacts) {
        this.page = page;
        this.conductors = conductors;
        this.bodies = new ArrayList<>(bodies);
        this.contacts = new ArrayList<>(contacts);
        this.numbers = new SpatialIndex<>(page.texts().stream().filter(t -> t.text().matches("\\d{1,3}")).toList(),
                Text::box);
        find();
    }

    /** The page's symbols and the units found here, by id. */
    public List<Body> bodies() {
        return bodies;
    }

    /** The page's contacts and those of the units found here. */
    public List<Contact> contacts() {
        return contacts;
    }

    private void find() {
        SpatialIndex<Stub> stubs = new SpatialIndex<>(stubs(), s -> Box.of(s.free()));
        Set<Stub> used = new HashSet<>();
        for (Text text : page.texts()) {
            Designator d = DesignatorGrammar.parse(text.text());
            if (d == null || !d.strong()) {
                continue;
            }
            List<Stub> here = new ArrayList<>();
            for (Stub s : stubs.touching(text.box().grow(GAP * page.pitch()))) {
                if (!used.contains(s) && pointsAt(s, text)) {
                    here.add(s);
                }
            }
            if (here.size() >= 2) {
                used.addAll(here);
                add(here);
            }
        }
    }

    private List<Stub> stubs() {
        Set<Integer> met = new HashSet<>();
        contacts.forEach(c -> met.add(c.segment()));
        List<Stub> stubs = new ArrayList<>();
        for (int i = 0; i < conductors.segments().size(); i++) {
            Segment s = conductors.segments().get(i);
            if (conductors.isWire(i) || met.contains(i) || !s.upright()
                    || s.length() > LONGEST_LEAD * page.pitch() || !isNumbered(s)) {
                continue;
            }
            boolean freeA = conductors.near(s.a(), page.reach()).size() <= 1;
            boolean freeB = conductors.near(s.b(), page.reach()).size() <= 1;
            if (freeA != freeB) {
                stubs.add(new Stub(i, freeA ? s.a() : s.b(), freeA ? s.b() : s.a()));
            }
        }
        return stubs;
    }

    private boolean isNumbered(Segment s) {
        Box beside = s.box().grow(0.8 * page.pitch());
        return numbers.touching(beside).stream().anyMatch(t -> beside.contains(t.box().centre()));
    }

    private boolean pointsAt(Stub s, Text text) {
        Axis axis = Axis.towards(s.outer(), s.free()).at(s.free());
        double gap = axis.nearest(text.box());
        double half = (axis.horizontal() ? text.box().height() : text.box().width()) / 2;
        return gap > -0.5 * text.size() && gap < GAP * page.pitch() && axis.aside(text.box()) < half + page.pitch();
    }

    private void add(List<Stub> stubs) {
        Box box = Box.of(stubs.get(0).free());
        for (Stub s : stubs) {
            box = box.union(Box.of(s.free()));
        }
        int id = bodies.size();
        bodies.add(new Body(id, box, List.of(), null));
        stubs.forEach(s -> contacts.add(new Contact(id, s.segment(), s.free(), s.outer())));
    }
}
