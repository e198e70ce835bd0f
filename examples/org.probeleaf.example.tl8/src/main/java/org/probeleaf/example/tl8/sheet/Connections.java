// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.probeleaf.example.tl8.symbol.SymbolPin;
import org.probeleaf.schematic.netlist.LabelKind;

/**
 * What the model says is connected. An end of a wire, a pin and a name join the wire that passes their spot; wires
 * that merely cross do not join; the same name joins on all pages. Buses join nothing: their members do, by name.
 */
final class Connections {

    /** A pin of a placed part on its page. */
    record PinAt(Page page, Placed part, SymbolPin pin) {
    }

    /** A wire on its page. */
    record WireAt(Page page, WireRun run) {
    }

    /** A name on its page. */
    record NameAt(Page page, NameTag tag) {
    }

    /** What is joined into one, in the order of drawing. */
    record Cluster(List<PinAt> pins, List<WireAt> wires, List<NameAt> names) {
    }

    private final Map<Object, Object> parents = new HashMap<>();
    private final List<Object> items = new ArrayList<>();

    private Connections() {
    }

    /** The clusters of all pages; those without a pin are left out. */
    static List<Cluster> of(List<Page> pages) {
        Connections c = new Connections();
        for (Page page : pages) {
            c.addPage(page);
        }
        return c.clusters();
    }

    private void addPage(Page page) {
        for (Placed part : page.parts()) {
            for (SymbolPin pin : part.symbol().pins()) {
                PinAt item = new PinAt(page, part, pin);
                add(item);
                join(item, spotKey(page, part.spot(pin)));
            }
        }
        List<WireRun> wires = page.runs().stream().filter(r -> !r.bus()).toList();
        for (WireRun run : wires) {
            WireAt item = new WireAt(page, run);
            add(item);
            join(item, spotKey(page, run.first()));
            join(item, spotKey(page, run.last()));
        }
        for (NameTag tag : page.names()) {
            if (tag.kind() != LabelKind.BUS) {
                NameAt item = new NameAt(page, tag);
                add(item);
                join(item, spotKey(page, tag.at()));
                join(item, "name:" + tag.text());
            }
        }
        joinPassing(page, wires);
    }

    /** Joins every wire with the ends, pins and names that lie on it between its ends. */
    private void joinPassing(Page page, List<WireRun> wires) {
        List<Spot> spots = new ArrayList<>();
        page.parts().forEach(p -> p.symbol().pins().forEach(q -> spots.add(p.spot(q))));
        wires.forEach(r -> spots.addAll(List.of(r.first(), r.last())));
        page.names().stream().filter(n -> n.kind() != LabelKind.BUS).forEach(n -> spots.add(n.at()));
        for (WireRun run : wires) {
            for (Spot spot : spots) {
                if (run.passes(spot)) {
                    join(new WireAt(page, run), spotKey(page, spot));
                }
            }
        }
    }

    private static String spotKey(Page page, Spot spot) {
        return page.number() + "@" + spot.x() + "," + spot.y();
    }

    private void add(Object item) {
        items.add(item);
    }

    private Object root(Object item) {
        Object at = item;
        while (parents.containsKey(at)) {
            at = parents.get(at);
        }
        return at;
    }

    private void join(Object a, Object b) {
        Object ra = root(a);
        Object rb = root(b);
        if (!ra.equals(rb)) {
            parents.put(ra, rb);
        }
    }

    private List<Cluster> clusters() {
        Map<Object, Cluster> byRoot = new LinkedHashMap<>();
        for (Object item : items) {
            Cluster c = byRoot.computeIfAbsent(root(item),
                    r -> new Cluster(new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
            if (item instanceof PinAt pin) {
                c.pins().add(pin);
            } else if (item instanceof WireAt wire) {
                c.wires().add(wire);
            } else {
                c.names().add((NameAt) item);
            }
        }
        return byRoot.values().stream().filter(c -> !c.pins().isEmpty()).toList();
    }

    /** The spots of a page where wires and pin lines meet from three sides or more, in reading order. */
    static List<Spot> junctions(Page page) {
        Map<Spot, Integer> ways = new HashMap<>();
        List<Spot> ends = new ArrayList<>();
        List<WireRun> wires = page.runs().stream().filter(r -> !r.bus()).toList();
        wires.forEach(r -> ends.addAll(List.of(r.first(), r.last())));
        page.parts().forEach(p -> p.symbol().pins().forEach(q -> ends.add(p.spot(q))));
        page.names().stream().filter(n -> n.kind() == LabelKind.POWER || n.kind() == LabelKind.OFFSHEET)
                .forEach(n -> ends.add(n.at()));
        ends.forEach(s -> ways.merge(s, 1, Integer::sum));
        Map<Long, Spot> ordered = new TreeMap<>();
        for (Map.Entry<Spot, Integer> e : ways.entrySet()) {
            Spot s = e.getKey();
            int passing = (int) wires.stream()
                    .filter(r -> r.passes(s) && !r.first().equals(s) && !r.last().equals(s)).count();
            if (e.getValue() + 2 * passing > 2) {
                ordered.put(s.y() * 10_000L + s.x(), s);
            }
        }
        return List.copyOf(ordered.values());
    }
}
