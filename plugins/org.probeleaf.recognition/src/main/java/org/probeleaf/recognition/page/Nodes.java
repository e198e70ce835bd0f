// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.probeleaf.recognition.ink.Groups;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.recognition.name.NetNames;
import org.probeleaf.recognition.name.Tag;
import org.probeleaf.recognition.wiring.Contact;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;

/**
 * The conductors of all pages, numbered through, and merged where names say so: the same name is the same net on every
 * page. A conductor that runs into a bus without a name of its own goes by the name of its pin.
 */
final class Nodes {

    private final List<PageReading> pages;
    private final int[] base;
    private final Groups groups;
    private final Map<String, Integer> byName = new HashMap<>();
    private final Map<String, Integer> bySupply = new HashMap<>();
    private final Set<String> split = new TreeSet<>();

    Nodes(List<PageReading> pages) {
        this.pages = pages;
        this.base = new int[pages.size() + 1];
        for (int i = 0; i < pages.size(); i++) {
            base[i + 1] = base[i] + pages.get(i).conductors().segments().size();
        }
        this.groups = new Groups(base[pages.size()]);
        for (int p = 0; p < pages.size(); p++) {
            for (int s = 0; s < pages.get(p).conductors().segments().size(); s++) {
                groups.join(base[p] + s, base[p] + pages.get(p).conductors().conductor(s));
            }
        }
        joinByTags();
        joinByBuses();
    }

    /** The net that a segment belongs to, as the number of one of its segments. */
    int net(int pageIndex, int segment) {
        return groups.find(base[pageIndex] + segment);
    }

    /**
     * Names of supply symbols that stand beside different other supply names, at least half as often as alone. Such a symbol
     * marks that a net is a supply; it does not say which, and joins nothing.
     */
    private Set<String> marksOfSupplies() {
        Map<Integer, Set<String>> namesOf = new HashMap<>();
        for (int p = 0; p < pages.size(); p++) {
            for (Tag tag : pages.get(p).names().tags()) {
                if (tag.kind() == LabelKind.POWER) {
                    namesOf.computeIfAbsent(groups.find(base[p] + tag.segment()), k -> new HashSet<>())
                            .add(tag.text());
                }
            }
        }
        Map<String, Set<String>> besides = new HashMap<>();
        Map<String, Integer> together = new HashMap<>();
        for (Set<String> names : namesOf.values()) {
            for (String name : names) {
                together.merge(name, names.size() == 1 ? -1 : 2, Integer::sum);
                Set<String> others = besides.computeIfAbsent(name, k -> new HashSet<>());
                others.addAll(names);
                others.remove(name);
            }
        }
        Set<String> marks = new HashSet<>();
        besides.forEach((name, others) -> {
            if (NetNames.isFlag(name) || others.size() > 1 && together.get(name) >= 0 && !NetNames.isSupply(name)) {
                marks.add(name);
            }
        });
        return marks;
    }

    private void joinByTags() {
        Set<String> marks = marksOfSupplies();
        for (int p = 0; p < pages.size(); p++) {
            for (Tag tag : pages.get(p).names().tags()) {
                if (tag.kind() != LabelKind.BUS && !marks.contains(tag.text())) {
                    joinName(tag.kind() == LabelKind.POWER ? bySupply : byName, tag.text(), base[p] + tag.segment());
                }
            }
        }
        List<int[]> twoPins = twoPinParts();
        bySupply.forEach((name, node) -> {
            Integer other = byName.get(name);
            if (other != null && liesBetween(twoPins, node, other)) {
                split.add(name);
            } else if (other != null) {
                groups.join(node, other);
            }
            byName.putIfAbsent(name, node);
        });
    }

    /** Names that are the name of a supply and of another net, which a part with two pins connects. */
    Set<String> splitNames() {
        return split;
    }

    private boolean liesBetween(List<int[]> parts, int a, int b) {
        return !groups.joined(a, b) && parts.stream().anyMatch(p -> groups.joined(p[0], a) && groups.joined(p[1], b)
                || groups.joined(p[0], b) && groups.joined(p[1], a));
    }

    /** The two ends of each named part that has two. */
    private List<int[]> twoPinParts() {
        List<int[]> parts = new ArrayList<>();
        for (int p = 0; p < pages.size(); p++) {
            Map<Integer, List<Integer>> ends = new HashMap<>();
            for (Contact c : pages.get(p).contacts()) {
                if (pages.get(p).names().designators().containsKey(c.body())) {
                    ends.computeIfAbsent(c.body(), k -> new ArrayList<>(2)).add(base[p] + c.segment());
                }
            }
            ends.values().stream().filter(e -> e.size() == 2).forEach(e -> parts.add(new int[] {e.get(0), e.get(1)}));
        }
        return parts;
    }

    private void joinName(Map<String, Integer> firsts, String name, int node) {
        Integer first = firsts.putIfAbsent(name, node);
        if (first != null) {
            groups.join(first, node);
        }
    }

    private void joinByBuses() {
        for (int p = 0; p < pages.size(); p++) {
            PageReading page = pages.get(p);
            if (page.ink().buses().isEmpty()) {
                continue;
            }
            Set<Integer> named = new HashSet<>();
            page.names().tags().forEach(t -> named.add(page.conductors().conductor(t.segment())));
            Map<Integer, Set<String>> pinNames = pinNames(page);
            for (int segment : membersOf(page)) {
                int conductor = page.conductors().conductor(segment);
                Set<String> names = pinNames.getOrDefault(conductor, Set.of());
                if (!named.contains(conductor) && names.size() == 1) {
                    joinName(byName, names.iterator().next(), base[p] + segment);
                }
            }
        }
    }

    private static Set<Integer> membersOf(PageReading page) {
        Set<Integer> members = new LinkedHashSet<>();
        double reach = page.ink().reach();
        SpatialIndex<Segment> buses = SpatialIndex.ofSegments(page.ink().buses(), b -> reach + b.width() / 2);
        for (int i = 0; i < page.conductors().segments().size(); i++) {
            Segment s = page.conductors().segments().get(i);
            for (Point end : new Point[] {s.a(), s.b()}) {
                if (buses.near(end, 0).stream().anyMatch(b -> b.distance(end) <= reach + b.width() / 2)) {
                    members.add(i);
                }
            }
        }
        return members;
    }

    /** The names of the pins on each conductor, by its number. */
    private static Map<Integer, Set<String>> pinNames(PageReading page) {
        Map<Integer, Set<String>> names = new HashMap<>();
        for (Contact c : page.contacts()) {
            String name = page.names().names().get(c);
            if (name != null) {
                names.computeIfAbsent(page.conductors().conductor(c.segment()), k -> new HashSet<>(2)).add(name);
            }
        }
        return names;
    }
}
