// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.List;
import java.util.Map;
import java.util.Set;

import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.symbol.Body;
import org.probeleaf.recognition.wiring.Conductors;
import org.probeleaf.recognition.wiring.Contact;
import org.probeleaf.schematic.geometry.Point;

/**
 * Tells the terminals of transistors and diodes from their symbols, as IEC 60617 draws them: the base or gate stands
 * across to the other two, the source is tied to the middle of the channel, and a diode's
 * triangle points at its cathode.
 */
final class Terminals {

    private static final Set<String> TRANSISTORS = Set.of("Q", "T", "TR", "VT", "FET", "M");
    private static final Set<String> DIODES = Set.of("D", "VD", "CR", "LED", "LD", "ZD", "DZ", "DS");
    /** How much nearer one terminal must be to the channel's middle than the other. */
    private static final double NEARER = 0.85;

    private final PageInk page;
    private final Conductors conductors;

    Terminals(PageInk page, Conductors conductors) {
        this.page = page;
        this.conductors = conductors;
    }

    /** Adds names to the pins of one part that the sheet gives none, where its symbol tells them. */
    void name(String designator, Body body, List<Contact> pins, Map<Contact, String> names) {
        DesignatorGrammar.Designator d = DesignatorGrammar.parse(designator);
        // Of two transistors in one case, each has a gate: there a bare letter would name two pins of the part.
        boolean single = d != null && d.unit() == null && d.ref().matches("[A-Za-z]+\\d+");
        if (!single || pins.stream().anyMatch(c -> names.get(c) != null)) {
            return;
        }
        String letters = d.ref().replaceAll("[^A-Za-z].*", "");
        if (pins.size() == 3 && TRANSISTORS.contains(letters)) {
            transistor(body, pins, names);
        } else if (pins.size() == 2 && DIODES.contains(letters)) {
            diode(body, pins, names);
        }
    }

    private void transistor(Body body, List<Contact> pins, Map<Contact, String> names) {
        Contact control = control(pins);
        if (control == null) {
            return;
        }
        List<Contact> others = pins.stream().filter(c -> c != control).toList();
        InkWays ways = new InkWays(body.ink(), page.reach());
        boolean insulated = others.stream().allMatch(c -> Double.isInfinite(ways.shortest(control.inner(),
                p -> p.distance(c.inner()) <= page.reach())));
        if (!insulated) {
            // The arrow would tell the emitter, but libraries draw it at the collector too often to go by it.
            names.put(control, "B");
            return;
        }
        Contact source = source(ways, others);
        if (source != null) {
            names.put(control, "G");
            names.put(source, "S");
            names.put(source == others.get(0) ? others.get(1) : others.get(0), "D");
        }
    }

    /** The pin that stands across while the other two are in line with each other, or null. */
    private Contact control(List<Contact> pins) {
        Contact across = null;
        for (Contact c : pins) {
            boolean flat = isFlat(c);
            List<Contact> others = pins.stream().filter(o -> o != c).toList();
            Point p = others.get(0).inner();
            Point q = others.get(1).inner();
            boolean inLine = Math.abs(flat ? p.x() - q.x() : p.y() - q.y()) < 0.5 * page.pitch();
            if (inLine && others.stream().allMatch(o -> isFlat(o) != flat)) {
                across = c;
            }
        }
        return across;
    }

    private boolean isFlat(Contact c) {
        return conductors.segments().get(c.segment()).horizontal();
    }

    /** The pin from which the way along the ink to the middle of the channel is clearly shorter, or null. */
    private Contact source(InkWays ways, List<Contact> pins) {
        boolean flat = isFlat(pins.get(0));
        Point p = pins.get(0).inner();
        Point q = pins.get(1).inner();
        double middle = flat ? (p.x() + q.x()) / 2 : (p.y() + q.y()) / 2;
        double first = ways.shortest(p, at -> Math.abs((flat ? at.x() : at.y()) - middle) < page.reach());
        double second = ways.shortest(q, at -> Math.abs((flat ? at.x() : at.y()) - middle) < page.reach());
        return first < NEARER * second ? pins.get(0) : second < NEARER * first ? pins.get(1) : null;
    }

    private void diode(Body body, List<Contact> pins, Map<Contact, String> names) {
        Point p = pins.get(0).inner();
        Point q = pins.get(1).inner();
        Segment axis = new Segment(0, 0, p, q, Segment.Shape.LINE, 0);
        List<Segment> slanting = body.ink().stream().filter(s -> !s.upright() && s.length() > 0.3 * page.pitch()).toList();
        Contact cathode = null;
        for (Segment s : slanting) {
            for (Point apex : new Point[] {s.a(), s.b()}) {
                boolean meets = slanting.stream().anyMatch(t -> t != s && t.nearerEnd(apex).distance(apex) <= page.reach()
                        && side(axis, t.fartherEnd(apex)) * side(axis, s.fartherEnd(apex)) < 0);
                if (meets && axis.distance(apex) <= page.reach()) {
                    // The base of the triangle lies behind its apex.
                    Point base = s.fartherEnd(apex);
                    boolean towardsFirst = along(axis, base) > along(axis, apex);
                    Contact here = towardsFirst ? pins.get(0) : pins.get(1);
                    if (cathode != null && cathode != here) {
                        return;
                    }
                    cathode = here;
                }
            }
        }
        if (cathode != null) {
            names.put(cathode, "K");
            names.put(cathode == pins.get(0) ? pins.get(1) : pins.get(0), "A");
        }
    }

    private static double side(Segment axis, Point p) {
        return (axis.b().x() - axis.a().x()) * (p.y() - axis.a().y())
                - (axis.b().y() - axis.a().y()) * (p.x() - axis.a().x());
    }

    private static double along(Segment axis, Point p) {
        return (axis.b().x() - axis.a().x()) * (p.x() - axis.a().x())
                + (axis.b().y() - axis.a().y()) * (p.y() - axis.a().y());
    }
}
