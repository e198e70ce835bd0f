// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.recognition.wiring.Conductors;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;

/**
 * Names the members of buses. A line that runs into a bus has a name there, so the text closest to it is its name even
 * where it stands across the line or a little off it; what stands closer to the bus is the name of the bus.
 */
final class BusMembers {

    /** How far a name may be from its line, in letter heights. */
    private static final double FARTHEST = 1.6;

    private final PageInk page;
    private final Conductors conductors;
    private final TextPool pool;
    private final List<Tag> tags;
    private final SpatialIndex<Segment> buses;
    private final Map<Integer, List<Integer>> members = new LinkedHashMap<>();

    private record Option(int conductor, int segment, Text text, double cost) {
    }

    /** @param tags the names found so far, which grow */
    BusMembers(PageInk page, Conductors conductors, TextPool pool, List<Tag> tags) {
        this.page = page;
        this.conductors = conductors;
        this.pool = pool;
        this.tags = tags;
        this.buses = SpatialIndex.ofSegments(page.buses(), b -> b.width() / 2);
        findMembers();
    }

    /** The numbers of the conductors that run into a bus. */
    Set<Integer> conductors() {
        return members.keySet();
    }

    /** Names members that have no name yet. */
    void nameRest() {
        Set<Integer> named = new HashSet<>();
        tags.forEach(t -> named.add(conductors.conductor(t.segment())));
        Set<String> busNames = busNames();
        List<Option> options = new ArrayList<>();
        for (Text t : pool.free()) {
            if (NetNames.isName(t.text()) && !NetNames.isRange(t.text()) && !busNames.contains(t.text())) {
                addOptions(t, named, options);
            }
        }
        options.sort(Comparator.comparingDouble(Option::cost));
        for (Option o : options) {
            if (!pool.isTaken(o.text()) && named.add(o.conductor())) {
                pool.take(o.text());
                tags.add(new Tag(o.text().text(), o.segment(), conductors.segments().get(o.segment())
                        .nearest(o.text().origin()), LabelKind.LABEL));
            }
        }
    }

    private void addOptions(Text t, Set<Integer> named, List<Option> options) {
        double most = FARTHEST * t.size();
        for (int i : conductors.touching(t.box().grow(most))) {
            int conductor = conductors.conductor(i);
            if (members.containsKey(conductor) && !named.contains(conductor)) {
                double d = distance(conductors.segments().get(i), t);
                if (d < most) {
                    options.add(new Option(conductor, i, t, d));
                }
            }
        }
    }

    /** What is written at buses, closer to them than to any line. */
    private Set<String> busNames() {
        Set<String> names = new HashSet<>();
        for (Text t : pool.all()) {
            double most = 1.5 * t.size();
            double toBus = buses.touching(t.box().grow(most)).stream().mapToDouble(b -> distance(b, t)).min()
                    .orElse(Double.MAX_VALUE);
            double toLine = conductors.touching(t.box().grow(most)).stream()
                    .mapToDouble(i -> distance(conductors.segments().get(i), t)).min().orElse(Double.MAX_VALUE);
            if (toBus < most && toBus <= toLine) {
                names.add(t.text());
            }
        }
        return names;
    }

    /** How far a line is from the middle line of a text, less half its height. */
    private static double distance(Segment s, Text t) {
        boolean flat = TagFinder.isFlat(t);
        Point c = t.box().centre();
        double half = flat ? t.box().width() / 2 : t.box().height() / 2;
        double least = Double.MAX_VALUE;
        for (int i = -4; i <= 4; i++) {
            double along = half * i / 4;
            least = Math.min(least, s.distance(flat ? c.plus(along, 0) : c.plus(0, along)));
        }
        double height = flat ? t.box().height() : t.box().width();
        return Math.max(0, least - height / 2);
    }

    private void findMembers() {
        if (page.buses().isEmpty()) {
            return;
        }
        for (int i = 0; i < conductors.segments().size(); i++) {
            Segment s = conductors.segments().get(i);
            for (Point end : new Point[] {s.a(), s.b()}) {
                if (buses.near(end, page.reach()).stream()
                        .anyMatch(b -> b.distance(end) <= page.reach() + b.width() / 2)) {
                    members.computeIfAbsent(conductors.conductor(i), k -> new ArrayList<>()).add(i);
                }
            }
        }
    }
}
