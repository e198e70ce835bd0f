// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.symbol.Body;
import org.probeleaf.recognition.wiring.Conductors;
import org.probeleaf.recognition.wiring.Contact;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Gives pins their printed numbers and names: a number stands on the lead, a name stands inside the body in line with
 * the pin. Numbers and names go to the pins one to one, nearest first.
 */
final class PinTexts {

    private static final Pattern NUMBER = Pattern.compile("\\d{1,3}");
    private static final Pattern GRID = Pattern.compile("[A-Z]{1,2}\\d{1,2}(?:[A-Z]\\d{1,2})?|\\d{1,3}\\*\\d{1,2}");

    /** Pins of one unit of a part with several: {@code 4.1} and {@code 4.2}. */
    private static final Pattern UNIT_NUMBER = Pattern.compile("\\d{1,2}\\.\\d{1,2}");
    /** Terminals of transistors and diodes: base, collector, emitter, gate, drain, source, anode, cathode. */
    private static final Pattern LETTER = Pattern.compile("[BCEGDSAK]|[BCEGDS][12]");

    /** How far from its body along its line a pin bears its number at most, in pitches. */
    private static final double LONGEST_LEAD = 5;

    private final PageInk page;
    private final Conductors conductors;
    private final List<Body> bodies;
    private final TextPool pool;
    private final Map<Contact, Text> numbers = new HashMap<>();
    private final Map<Contact, Text> names = new HashMap<>();

    private record Option(Contact contact, Text text, double cost) {
    }

    PinTexts(PageInk page, Conductors conductors, List<Body> bodies, TextPool pool) {
        this.page = page;
        this.conductors = conductors;
        this.bodies = bodies;
        this.pool = pool;
    }

    /** The number printed at a pin, or null. */
    String number(Contact contact) {
        Text t = numbers.get(contact);
        return t == null ? null : t.text().replaceAll("\\*\\d+$", "");
    }

    /** The name printed at a pin, or null. */
    String name(Contact contact) {
        Text t = names.get(contact);
        return t == null ? null : t.text();
    }

    /** Finds the numbers of the given pins; first plain numbers, then letter-and-number ones set in the same style. */
    void findNumbers(List<Contact> contacts) {
        assign(numberOptions(contacts, NUMBER, null), numbers);
        Set<TextStyle> styles = new HashSet<>();
        numbers.values().forEach(t -> styles.add(TextStyle.of(t)));
        Map<Integer, Integer> pinsOfBody = new HashMap<>();
        contacts.forEach(c -> pinsOfBody.merge(c.body(), 1, Integer::sum));
        List<Contact> rest = contacts.stream()
                .filter(c -> !numbers.containsKey(c) && pinsOfBody.get(c.body()) >= 3).toList();
        List<Option> options = numberOptions(rest, GRID, styles.isEmpty() ? null : styles);
        Map<Integer, Set<Text>> textsOfBody = new HashMap<>();
        options.forEach(o -> textsOfBody.computeIfAbsent(o.contact().body(), k -> new HashSet<>()).add(o.text()));
        // One such text beside a symbol is more likely its designator; several in a row are pins of a grid.
        options.removeIf(o -> textsOfBody.get(o.contact().body()).size() < 3 && !o.text().text().contains("*"));
        assign(options, numbers);
        takeUndrawnPins();
        findMarks(contacts, LETTER);
        findMarks(contacts, UNIT_NUMBER);
    }

    /** Sheets may print numbers of pins whose leads are not drawn; among others of their kind they are no designators. */
    private void takeUndrawnPins() {
        Map<Integer, List<Text>> lettered = new HashMap<>();
        numbers.forEach((c, t) -> {
            if (Character.isLetter(t.text().charAt(0))) {
                lettered.computeIfAbsent(c.body(), k -> new ArrayList<>()).add(t);
            }
        });
        lettered.forEach((body, texts) -> {
            String letters = texts.get(0).text().replaceAll("\\d.*", "");
            for (Text t : pool.freeIn(bodies.get(body).box().grow(2 * page.pitch()))) {
                boolean alike = texts.size() >= 3 && TextStyle.of(t).equals(TextStyle.of(texts.get(0)))
                        && t.text().matches(Pattern.quote(letters) + "\\d{1,3}");
                if (alike) {
                    pool.take(t);
                }
            }
        });
    }

    /** Pins that bear something in place of a plain number; at least two pins of a symbol do. */
    private void findMarks(List<Contact> contacts, Pattern form) {
        Set<Integer> numbered = new HashSet<>();
        numbers.keySet().forEach(c -> numbered.add(c.body()));
        List<Contact> rest = contacts.stream().filter(c -> !numbered.contains(c.body())).toList();
        List<Option> options = numberOptions(rest, form, null);
        Map<Integer, Set<Text>> marksOfBody = new HashMap<>();
        options.forEach(o -> marksOfBody.computeIfAbsent(o.contact().body(), k -> new HashSet<>()).add(o.text()));
        options.removeIf(o -> marksOfBody.get(o.contact().body()).size() < 2);
        assign(options, numbers);
    }

    /** The far end of a lead, or that of the lead that goes on from it in line: a pin drawn in two pieces. */
    private Point goneOn(Contact c, Segment lead) {
        for (int i : conductors.near(c.outer(), page.reach())) {
            Segment s = conductors.segments().get(i);
            if (i != c.segment() && !conductors.isWire(i) && s.horizontal() == lead.horizontal() && s.upright()
                    && s.fartherEnd(c.outer()).distance(c.inner()) > s.length()) {
                return s.fartherEnd(c.outer());
            }
        }
        return c.outer();
    }

    private List<Option> numberOptions(List<Contact> contacts, Pattern form, Set<TextStyle> styles) {
        List<Option> options = new ArrayList<>();
        double pitch = page.pitch();
        for (Contact c : contacts) {
            Segment s = conductors.segments().get(c.segment());
            boolean leadless = conductors.isWire(c.segment()) || c.outer().equals(c.inner());
            Point far = leadless ? towards(c.inner(), s.fartherEnd(c.inner()), 2.5 * pitch)
                    : towards(c.inner(), goneOn(c, s), LONGEST_LEAD * pitch);
            Box lead = Box.of(c.inner().x(), c.inner().y(), far.x(), far.y());
            Box own = leadless ? lead : Box.of(c.inner().x(), c.inner().y(), c.outer().x(), c.outer().y());
            boolean flat = lead.width() >= lead.height();
            Box outline = bodies.get(c.body()).outline();
            for (Text t : pool.freeIn(lead.grow(pitch))) {
                if (!form.matcher(t.text()).matches() || styles != null && !styles.contains(TextStyle.of(t))) {
                    continue;
                }
                Point m = t.box().centre();
                double aside = flat ? Math.abs(m.y() - lead.centre().y()) : Math.abs(m.x() - lead.centre().x());
                double before = flat ? Math.max(lead.x0() - m.x(), m.x() - lead.x1())
                        : Math.max(lead.y0() - m.y(), m.y() - lead.y1());
                boolean outside = outline == null || !outline.grow(-0.1 * pitch).contains(m)
                        || outline.contains(own);
                double most = Math.max(0.8 * pitch, 1.1 * t.size());
                if (outside && aside < most && before < (form == GRID ? 0.9 : 0.4) * pitch) {
                    options.add(new Option(c, t, aside + Math.max(0, before) + 0.2 * m.distance(lead.centre())));
                }
            }
        }
        return options;
    }

    /** Finds the names of the given pins of bodies that have designators. */
    void findNames(List<Contact> contacts) {
        List<Option> options = new ArrayList<>();
        double pitch = page.pitch();
        for (Contact c : contacts) {
            Box outline = bodies.get(c.body()).outline();
            if (outline == null || Math.min(outline.width(), outline.height()) < 1.2 * pitch) {
                continue;
            }
            Axis axis = inwards(c, outline);
            for (Text t : pool.freeIn(outline)) {
                double along = axis.nearest(t.box());
                double aside = axis.aside(t.box());
                if (outline.contains(t.box().centre()) && aside < 0.45 * pitch && along > -0.8 * pitch
                        && along < 3 * pitch) {
                    options.add(new Option(c, t, Math.abs(along) + 2 * aside));
                }
            }
        }
        assign(options, names);
    }

    /** From the place where a pin meets the body's outline, into the body. */
    private Axis inwards(Contact c, Box outline) {
        if (!conductors.isWire(c.segment()) && c.outer().distance(c.inner()) > page.reach()) {
            return Axis.towards(c.outer(), c.inner()).at(c.inner());
        }
        return Axis.towards(c.inner(), nearestSideInwards(c.inner(), outline));
    }

    private static Point nearestSideInwards(Point p, Box b) {
        double left = Math.abs(p.x() - b.x0());
        double right = Math.abs(p.x() - b.x1());
        double top = Math.abs(p.y() - b.y0());
        double bottom = Math.abs(p.y() - b.y1());
        double least = Math.min(Math.min(left, right), Math.min(top, bottom));
        return least == left ? p.plus(1, 0) : least == right ? p.plus(-1, 0) : least == top ? p.plus(0, 1)
                : p.plus(0, -1);
    }

    private void assign(List<Option> options, Map<Contact, Text> to) {
        options.sort(Comparator.comparingDouble(Option::cost));
        for (Option o : options) {
            if (!to.containsKey(o.contact()) && !pool.isTaken(o.text())) {
                to.put(o.contact(), o.text());
                pool.take(o.text());
            }
        }
    }

    private static Point towards(Point from, Point to, double most) {
        double d = from.distance(to);
        double t = d <= most ? 1 : most / d;
        return new Point(from.x() + t * (to.x() - from.x()), from.y() + t * (to.y() - from.y()));
    }
}
