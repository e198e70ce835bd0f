// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
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
import org.probeleaf.schematic.netlist.LabelKind;

/**
 * Finds the names of conductors: text in a flag at the end of a line, text at a supply symbol, text that stands on a
 * line or at its end.
 */
final class TagFinder {

    /** A reference to another sheet and zone behind a name: {@code /2.3A}, {@code /4C}. */
    private static final Pattern ELSEWHERE = Pattern.compile("\\s*[/ ]\\s*\\d{1,2}[.:/]?\\d{0,2}[A-Z]\\d{0,2}$");

    private static final double LONGEST_LEAD = 3;

    private final PageInk page;
    private final Conductors conductors;
    private final List<Body> bodies;
    private final TextPool pool;
    private final List<Tag> tags = new ArrayList<>();
    private final Set<Text> labelTexts = new HashSet<>();
    /** Numbers of the segments that meet symbols. */
    private final Set<Integer> meeting = new HashSet<>();

    TagFinder(PageInk page, Conductors conductors, List<Body> bodies, TextPool pool) {
        this.page = page;
        this.conductors = conductors;
        this.bodies = bodies;
        this.pool = pool;
    }

    List<Tag> tags() {
        return tags;
    }

    /** Ids of bodies that are flags: outlines that little more than hold the name in line with a contact. */
    Set<Integer> findFlags(List<Contact> contacts) {
        contacts.forEach(c -> meeting.add(c.segment()));
        Map<Integer, List<Contact>> byBody = new LinkedHashMap<>();
        contacts.forEach(c -> byBody.computeIfAbsent(c.body(), k -> new ArrayList<>()).add(c));
        Map<Integer, Set<Integer>> bodiesOf = new HashMap<>();
        contacts.forEach(c -> bodiesOf.computeIfAbsent(c.segment(), k -> new HashSet<>()).add(c.body()));
        Set<Integer> flags = new HashSet<>();
        byBody.forEach((id, here) -> {
            Text beyond = here.size() == 1 ? textBeyond(here.get(0), bodies.get(id)) : null;
            if (beyond != null) {
                pool.take(beyond);
                flags.add(id);
                add(beyond.text(), here.get(0).segment(), here.get(0).inner(), LabelKind.OFFSHEET);
            }
        });
        byBody.forEach((id, here) -> {
            if (flags.contains(id)) {
                return;
            }
            Map<Contact, Text> found = new LinkedHashMap<>();
            for (Contact c : here) {
                Text t = isNumbered(c, bodiesOf.get(c.segment()).size() > 1) ? null : flagText(c, bodies.get(id));
                if (t != null && !found.containsValue(t)) {
                    found.put(c, t);
                }
            }
            if (2 * found.size() >= here.size() && !found.isEmpty() && !isBetween(here)) {
                flags.add(id);
                found.forEach((c, t) -> {
                    pool.take(t);
                    add(t.text(), c.segment(), c.inner(), LabelKind.OFFSHEET);
                });
                here.stream().filter(c -> !found.containsKey(c)).forEach(this::nameBehindFlag);
            }
        });
        return flags;
    }

    /** The name that follows a tiny mark at the end of a line, in line with it: the mark of a port; or null. */
    private Text textBeyond(Contact c, Body b) {
        double pitch = page.pitch();
        if (b.outline() == null || Shapes.isCross(b) || Math.max(b.box().width(), b.box().height()) > pitch
                || isNumbered(c, false)) {
            return null;
        }
        Segment s = conductors.segments().get(c.segment());
        Axis axis = Axis.towards(s.fartherEnd(c.inner()), c.inner()).at(c.inner());
        double end = axis.farthest(b.box());
        for (Text t : pool.freeIn(b.box().grow(pitch))) {
            double gap = axis.nearest(t.box()) - end;
            if (axis.horizontal() == isFlat(t) && gap > -0.2 * pitch && gap < 0.6 * pitch
                    && axis.aside(t.box()) < 0.4 * pitch && NetNames.mayFlag(t.text()) && isNoDesignator(t)) {
                return t;
            }
        }
        return null;
    }

    /** Whether a text has not the form of a designator, or is printed more than once. */
    private boolean isNoDesignator(Text text) {
        DesignatorGrammar.Designator d = DesignatorGrammar.parse(text.text());
        return d == null || !d.strong() || pool.isRepeated(text.text());
    }

    /** Whether a symbol stands in a line that comes in on one side and goes on at the other: a part with a text in it. */
    private boolean isBetween(List<Contact> here) {
        if (here.size() != 2) {
            return false;
        }
        Point p = here.get(0).inner();
        Point q = here.get(1).inner();
        Axis one = Axis.towards(conductors.segments().get(here.get(0).segment()).fartherEnd(p), p);
        Axis other = Axis.towards(conductors.segments().get(here.get(1).segment()).fartherEnd(q), q);
        return one.dx() == -other.dx() && one.dy() == -other.dy()
                && Math.min(Math.abs(p.x() - q.x()), Math.abs(p.y() - q.y())) <= page.reach();
    }

    /** Whether the lead at a contact bears a pin number and belongs to no other symbol: then this is a part's pin. */
    private boolean isNumbered(Contact c, boolean shared) {
        if (conductors.isWire(c.segment())) {
            return false;
        }
        Box lead = conductors.segments().get(c.segment()).box().grow(0.7 * page.pitch());
        return !shared && pool.freeIn(lead).stream()
                .anyMatch(t -> t.text().matches("\\d{1,3}") && lead.contains(t.box().centre()));
    }

    /** A supply symbol that touches a row of flags has its name ahead of its contact. */
    private void nameBehindFlag(Contact c) {
        Segment s = conductors.segments().get(c.segment());
        Axis axis = Axis.towards(s.fartherEnd(c.inner()), c.inner()).at(c.inner());
        double pitch = page.pitch();
        pool.freeIn(Box.of(c.inner()).grow(3 * pitch)).stream()
                .filter(t -> NetNames.isName(t.text()) && axis.aside(t.box()) < 0.5 * pitch
                        && axis.nearest(t.box()) > -0.5 * pitch && axis.nearest(t.box()) < 2.5 * pitch)
                .findFirst().ifPresent(t -> {
                    pool.take(t);
                    add(t.text(), c.segment(), c.inner(), LabelKind.POWER);
                });
    }

    private Text flagText(Contact c, Body b) {
        Box outline = outlineAt(c, b);
        if (outline == null) {
            return null;
        }
        Segment s = conductors.segments().get(c.segment());
        Axis axis = Axis.towards(s.fartherEnd(c.inner()), c.inner()).at(c.inner());
        Text best = null;
        List<Text> inside = pool.freeIn(outline).stream()
                .filter(t -> outline.grow(page.reach()).contains(t.box().centre()) && NetNames.mayFlag(t.text())).toList();
        for (Text t : inside) {
            boolean along = axis.horizontal() == isFlat(t);
            double near = axis.nearest(t.box());
            double gone = axis.farthest(t.box());
            double depth = axis.farthest(outline);
            double broad = axis.horizontal() ? t.box().height() : t.box().width();
            boolean central = Math.abs((near + gone) / 2 - depth / 2) < 0.2 * depth;
            boolean fills = near > -0.3 * page.pitch() && (inside.size() == 1 || central
                    || gone - near > 0.45 * depth && near < 2 * page.pitch());
            if (along && fills && axis.aside(t.box()) < 0.4 * page.pitch() && isThin(c, b, outline, axis, broad)
                    && (best == null || axis.aside(t.box()) < axis.aside(best.box()))) {
                best = t;
            }
        }
        return best;
    }

    /** The closed outline that a contact meets; flags drawn wall to wall make one body of several outlines. */
    private Box outlineAt(Contact c, Body b) {
        for (Segment s : b.ink()) {
            if (s.shape() == Segment.Shape.CLOSED && s.distance(c.inner()) <= page.reach()) {
                return strokeBox(b, s);
            }
        }
        return b.outline();
    }

    private static Box strokeBox(Body b, Segment of) {
        Box box = of.box();
        for (Segment t : b.ink()) {
            box = t.stroke() == of.stroke() ? box.union(t.box()) : box;
        }
        return box;
    }

    /** A flag has slanting sides or is little higher than its text; a block of pins is neither. */
    private boolean isThin(Contact c, Body b, Box outline, Axis axis, double textHeight) {
        double across = axis.horizontal() ? outline.height() : outline.width();
        if (across < 2.6 * textHeight) {
            return true;
        }
        long slanting = b.ink().stream().filter(s -> !s.upright() && s.distance(c.inner()) < 1.5 * page.pitch()
                && (s.shape() == Segment.Shape.CLOSED ? outline.grow(page.reach()).contains(s.box())
                        && Math.abs(strokeBox(b, s).height() - outline.height()) < page.reach()
                        : s.shape() == Segment.Shape.LINE)).count();
        return slanting > 0;
    }

    /**
     * Names supply symbols: small bodies met by one conductor that bear no designator. Returns their ids.
     *
     * @param knownOnly whether to look for well-known supply names only
     */
    Set<Integer> findSupplies(List<Contact> contacts, Set<Integer> spoken, boolean knownOnly) {
        Set<Integer> supplies = new HashSet<>();
        List<Contact> open = withoutTouches(contacts.stream().filter(c -> !spoken.contains(c.body())).toList());
        Map<Integer, Set<Integer>> conductorsAt = new HashMap<>();
        open.forEach(c -> conductorsAt.computeIfAbsent(c.body(), k -> new HashSet<>())
                .add(conductors.conductor(c.segment())));
        for (Contact c : open) {
            Body b = bodies.get(c.body());
            if (Shapes.isCross(b)) {
                continue;
            }
            boolean alone = conductorsAt.get(b.id()).size() == 1;
            double limit = 3.2 * page.pitch();
            if (!alone || b.box().width() > limit || b.box().height() > limit || supplies.contains(b.id())) {
                continue;
            }
            Text t = supplyText(c, b, knownOnly);
            if (t != null) {
                supplies.add(b.id());
                add(t.text(), c.segment(), c.inner(), LabelKind.POWER);
            }
        }
        return supplies;
    }

    /** Where a lead leads to a symbol, a wire whose end happens to touch it does not belong to it. */
    private List<Contact> withoutTouches(List<Contact> contacts) {
        Set<Integer> led = new HashSet<>();
        contacts.stream().filter(c -> !conductors.isWire(c.segment())).forEach(c -> led.add(c.body()));
        return contacts.stream().filter(c -> !conductors.isWire(c.segment()) || !led.contains(c.body())).toList();
    }

    /** Whether a text goes on where a lead with a port's mark at its end points. */
    private boolean isAhead(Text t, Axis axis) {
        return axis.horizontal() == isFlat(t) && axis.aside(t.box()) < 0.3 * page.pitch() && axis.nearest(t.box()) > 0;
    }

    private Text supplyText(Contact c, Body b, boolean knownOnly) {
        Segment s = conductors.segments().get(c.segment());
        Axis axis = Axis.towards(s.fartherEnd(c.inner()), c.inner()).at(c.inner());
        Text best = null;
        double least = 1.7 * page.pitch();
        for (Text t : pool.freeIn(b.box().grow(1.7 * page.pitch()))) {
            boolean behind = axis.farthest(t.box()) < -0.2 * page.pitch();
            double d = b.box().distance(t.box()) + (behind ? page.pitch() : 0) - (isAhead(t, axis) ? 0.6 * page.pitch() : 0);
            if (d < least && (knownOnly ? NetNames.isSupply(t.text()) : NetNames.maySupply(t.text()))) {
                best = t;
                least = d;
            }
        }
        if (best != null) {
            pool.take(best);
        }
        return best;
    }

    /**
     * Names that stand on a line or at its end.
     *
     * @param among numbers of the conductors to look at, or null for all
     */
    void findLabels(Set<Integer> among) {
        if (among != null && among.isEmpty()) {
            return;
        }
        List<Text> free = pool.free();
        free.sort(Comparator.comparingDouble((Text t) -> t.origin().y()).thenComparingDouble(t -> t.origin().x()));
        for (Text t : free) {
            if (NetNames.isName(t.text()) && !NetNames.isRange(t.text())) {
                label(t, among, false);
            }
        }
        if (among == null) {
            labelsOnLeads();
        }
    }

    /** Names that are printed more than once and stand right on lines: no values, however near a part they are. */
    void findSureLabels() {
        for (Text t : pool.free()) {
            if (pool.isRepeated(t.text()) && NetNames.maySupply(t.text()) && !NetNames.isRange(t.text())
                    && DesignatorGrammar.parse(t.text()) == null) {
                label(t, null, false);
            }
        }
    }

    /** A text set like the labels found so far is a label even where it stands on the lead of a pin. */
    private void labelsOnLeads() {
        Map<TextStyle, Integer> labels = new HashMap<>();
        labelTexts.forEach(t -> labels.merge(TextStyle.of(t), 1, Integer::sum));
        Map<TextStyle, Integer> others = new HashMap<>();
        pool.all().stream().filter(t -> !labelTexts.contains(t))
                .forEach(t -> others.merge(TextStyle.of(t), 1, Integer::sum));
        for (Text t : pool.free()) {
            int found = labels.getOrDefault(TextStyle.of(t), 0);
            if (found >= 4 && found >= others.get(TextStyle.of(t)) && NetNames.isName(t.text())
                    && !NetNames.isRange(t.text())) {
                label(t, null, true);
            }
        }
    }

    private void label(Text t, Set<Integer> among, boolean onLeads) {
        boolean flat = isFlat(t);
        Box area = t.box().grow(0.8 * t.size());
        int best = -1;
        double least = Double.MAX_VALUE;
        for (int i : conductors.touching(area)) {
            Segment s = conductors.segments().get(i);
            if (!conductors.isWire(i) && s.length() < 0.8 * page.pitch()) {
                continue;
            }
            boolean mayCarry = s.upright() && s.horizontal() == flat && (conductors.isWire(i) || onLeads
                    || page.wires().isEmpty() && !isLead(i, s) || isBare(i, s));
            double d = mayCarry ? onLine(t, isShared(t, s, flat) ? run(s) : s, flat) : Double.MAX_VALUE;
            d = Math.min(d, atEnd(t, s, flat, i));
            d += conductors.isWire(i) ? 0 : 0.3 * t.size();
            if (d < least) {
                least = d;
                best = i;
            }
        }
        boolean wanted = best >= 0 && (among == null || among.contains(conductors.conductor(best)));
        if (wanted && least < 0.95 * t.size()) {
            Segment s = conductors.segments().get(best);
            pool.take(t);
            labelTexts.add(t);
            add(t.text(), best, s.nearest(t.origin()), LabelKind.LABEL);
        }
    }

    /** Whether a line that may be a wire or a lead is a lead by its looks: what stands on it belongs to the symbol. */
    private boolean isLead(int segment, Segment s) {
        return meeting.contains(segment) && s.length() < LONGEST_LEAD * page.pitch();
    }

    /** Whether a text stands on most of a short line and on what goes on from there. */
    private boolean isShared(Text t, Segment s, boolean flat) {
        double from = flat ? Math.max(t.box().x0(), s.box().x0()) : Math.max(t.box().y0(), s.box().y0());
        double to = flat ? Math.min(t.box().x1(), s.box().x1()) : Math.min(t.box().y1(), s.box().y1());
        return s.length() < 3 * page.pitch() && to - from > 0.4 * s.length();
    }

    /** A line with the lines that go on in its direction at either end, such as a short wire with its lead. */
    private Segment run(Segment s) {
        Segment run = s;
        for (Point end : new Point[] {s.a(), s.b()}) {
            for (int i : conductors.near(end, page.reach())) {
                Segment t = conductors.segments().get(i);
                Point far = t.fartherEnd(end);
                boolean goesOn = t != s && t.upright() && t.horizontal() == s.horizontal()
                        && t.nearerEnd(end).distance(end) <= page.reach()
                        && far.distance(s.fartherEnd(end)) > t.length() + 0.9 * s.length();
                if (goesOn) {
                    run = new Segment(s.stroke(), s.style(), run.fartherEnd(end), far, s.shape(), s.width());
                    break;
                }
            }
        }
        return run;
    }

    /** How far the base line is from a line that runs along the text, or a large number where it does not. */
    private double onLine(Text t, Segment s, boolean flat) {
        Box b = t.box();
        Box l = s.box();
        double from = flat ? Math.max(b.x0(), l.x0()) : Math.max(b.y0(), l.y0());
        double to = flat ? Math.min(b.x1(), l.x1()) : Math.min(b.y1(), l.y1());
        double length = flat ? b.width() : b.height();
        double enough = Math.min(0.45 * length, Math.min(1.2 * page.pitch(), 0.85 * s.length()));
        if (s.length() < 0.45 * page.pitch() || to - from < enough) {
            return Double.MAX_VALUE;
        }
        double angle = Math.toRadians(t.angle());
        Point on = l.centre();
        // How far below the base line the line runs, as the text is read.
        double below = -Math.sin(angle) * (on.x() - t.origin().x()) + Math.cos(angle) * (on.y() - t.origin().y());
        if (below > -0.2 * t.size()) {
            return Math.abs(below);
        }
        // Text may also hang under its line.
        return Math.abs(below + 0.72 * t.size()) + 0.45 * t.size();
    }

    /** Whether nothing is joined to either end of a lead: a name on it names the pin's net. */
    private boolean isBare(int segment, Segment s) {
        return conductors.near(s.a(), page.reach()).size() <= 1 && conductors.near(s.b(), page.reach()).size() <= 1;
    }

    /** How far the near side of the text is from a line's end that points at it. */
    private double atEnd(Text t, Segment s, boolean flat, int segment) {
        double best = Double.MAX_VALUE;
        for (Point end : new Point[] {s.a(), s.b()}) {
            if (conductors.near(end, page.reach()).size() > 1) {
                continue;
            }
            Axis axis = Axis.towards(s.fartherEnd(end), end).at(end);
            double gap = axis.nearest(t.box());
            if (axis.horizontal() == flat && axis.aside(t.box()) < 0.45 * t.size() && gap > -0.4 * t.size()) {
                best = Math.min(best, Math.abs(gap));
            }
        }
        return best;
    }

    private void add(String text, int segment, Point at, LabelKind kind) {
        tags.add(new Tag(ELSEWHERE.matcher(text.strip()).replaceAll(""), segment, at, kind));
    }

    static boolean isFlat(Text t) {
        return Math.abs(Math.sin(Math.toRadians(t.angle()))) < 0.5;
    }
}
