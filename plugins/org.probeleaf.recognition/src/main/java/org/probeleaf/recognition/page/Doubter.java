// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.recognition.name.NetNames;
import org.probeleaf.recognition.name.Tag;
import org.probeleaf.recognition.symbol.Body;
import org.probeleaf.recognition.wiring.Contact;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.LabelKind;

/**
 * Finds the places of one page where another reading would be as good: symbols without a name, pins without a number
 * among numbered ones, ends that nearly meet something, nets with the names of two supplies. Each lowers the confidence
 * of the nets that it touches.
 */
final class Doubter {

    /** How near an open end may come to something else without being doubted, in pitches. */
    private static final double NEARLY = 0.5;

    private static final int MOST_MARKS = 30;

    private final PageReading page;
    private final List<Doubt> doubts = new ArrayList<>();
    private final Set<Integer> segments = new HashSet<>();
    private final Map<Integer, List<Contact>> contactsOf = new HashMap<>();
    private final Set<Integer> tagged = new HashSet<>();
    private final SpatialIndex<Tag> tagIndex;

    Doubter(PageReading page) {
        this.page = page;
        page.contacts().forEach(c -> contactsOf.computeIfAbsent(c.body(), k -> new ArrayList<>()).add(c));
        page.names().tags().forEach(t -> tagged.add(page.conductors().conductor(t.segment())));
        this.tagIndex = new SpatialIndex<>(page.names().tags(), t -> Box.of(t.at()));
        if (!page.names().designators().isEmpty()) {
            page.bodies().forEach(this::doubtNameless);
            sumUpMarks();
        }
        page.bodies().forEach(this::doubtNumbers);
        doubtOpenEnds();
        doubtSupplies();
    }

    /** The page's doubts. */
    List<Doubt> doubts() {
        return doubts;
    }

    /** A segment of each conductor that a doubt touches. */
    Set<Integer> segments() {
        return segments;
    }

    private void add(String code, Point at, String text, int segment) {
        doubts.add(new Doubt(code, page.ink().page(), at, text));
        segments.add(segment);
    }

    private void doubtNameless(Body body) {
        List<Contact> contacts = contactsOf.getOrDefault(body.id(), List.of());
        if (contacts.isEmpty() || page.names().designators().containsKey(body.id()) || namesNet(body, contacts)
                || NetNames.isCross(body)) {
            return;
        }
        contacts.forEach(c -> segments.add(c.segment()));
        double pitch = page.ink().pitch();
        boolean large = body.outline() != null && Math.min(body.box().width(), body.box().height()) > 2 * pitch;
        if (contacts.size() >= 3 && large) {
            doubts.add(new Doubt("nameless-symbol", page.ink().page(), body.box().centre(),
                    contacts.size() + " pins, no name: no designator was found for this symbol."));
        } else {
            doubts.add(new Doubt("unknown-mark", page.ink().page(), body.box().centre(), "No name was found for this"
                    + " symbol; its net may go on where the sheet shows the same symbol again."));
        }
    }

    /** A page with very many marks without names is no wiring sheet, or a drawing of another kind: one doubt says so. */
    private void sumUpMarks() {
        List<Doubt> marks = doubts.stream().filter(d -> d.code().equals("unknown-mark")).toList();
        if (marks.size() > MOST_MARKS) {
            doubts.removeAll(marks);
            doubts.add(new Doubt("unknown-marks", page.ink().page(), null, marks.size() + " small symbols on this page"
                    + " have no name; it may be no wiring sheet."));
        }
    }

    /** Whether a name belongs to a symbol: a flag, a supply, a port. */
    private boolean namesNet(Body body, List<Contact> contacts) {
        return !tagIndex.touching(body.box().grow(page.ink().reach())).isEmpty()
                || contacts.stream().allMatch(c -> tagged.contains(page.conductors().conductor(c.segment())))
                && contacts.size() == 1;
    }

    /** A pin without number or name on a part that prints them. */
    private void doubtNumbers(Body body) {
        List<Contact> contacts = contactsOf.getOrDefault(body.id(), List.of());
        if (!page.names().designators().containsKey(body.id()) || contacts.size() < 4) {
            return;
        }
        List<Contact> bare = contacts.stream().filter(c -> page.names().numbers().get(c) == null
                && page.names().names().get(c) == null).toList();
        if (!bare.isEmpty() && bare.size() <= 0.4 * contacts.size()) {
            bare.forEach(c -> add("pin-without-number", c.outer(),
                    "The other pins of this part have numbers or names; none was found for this one.", c.segment()));
        }
    }

    /** Ends of wires in the open, close by something that they may be meant to meet. */
    private void doubtOpenEnds() {
        double reach = page.ink().reach();
        double near = NEARLY * page.ink().pitch();
        List<Segment> ink = new ArrayList<>();
        page.bodies().forEach(b -> ink.addAll(b.ink()));
        SpatialIndex<Segment> bodyInk = SpatialIndex.ofSegments(ink);
        SpatialIndex<Segment> buses = SpatialIndex.ofSegments(page.ink().buses(), b -> reach + b.width() / 2);
        for (int i = 0; i < page.conductors().segments().size(); i++) {
            Segment s = page.conductors().segments().get(i);
            if (!page.conductors().isWire(i)) {
                continue;
            }
            for (Point end : new Point[] {s.a(), s.b()}) {
                if (page.conductors().near(end, reach).size() > 1 || meets(bodyInk, end, reach)
                        || meetsBus(buses, end, reach)) {
                    continue;
                }
                int self = page.conductors().conductor(i);
                boolean close = meets(bodyInk, end, near) || page.conductors().near(end, near).stream()
                        .anyMatch(j -> page.conductors().conductor(j) != self);
                if (close) {
                    add("open-end", end, "A wire ends here in the open, close by something it may be meant to meet.", i);
                }
            }
        }
    }

    private static boolean meets(SpatialIndex<Segment> index, Point end, double reach) {
        return index.near(end, reach).stream().anyMatch(s -> s.distance(end) <= reach);
    }

    private static boolean meetsBus(SpatialIndex<Segment> buses, Point end, double reach) {
        return buses.near(end, 0).stream().anyMatch(b -> b.distance(end) <= reach + b.width() / 2);
    }

    /** Conductors with the names of two supplies. */
    private void doubtSupplies() {
        Map<Integer, Set<String>> names = new HashMap<>();
        for (Tag t : page.names().tags()) {
            if (t.kind() == LabelKind.POWER && NetNames.isSupply(t.text())) {
                Set<String> here = names.computeIfAbsent(page.conductors().conductor(t.segment()),
                        k -> new TreeSet<>());
                if (here.add(t.text()) && here.size() == 2) {
                    add("two-supplies", t.at(), "This net bears the names of two supplies: "
                            + String.join(" and ", here) + ".", t.segment());
                }
            }
        }
    }
}
