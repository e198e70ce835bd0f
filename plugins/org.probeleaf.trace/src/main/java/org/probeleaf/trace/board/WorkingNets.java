// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;

/** The nets while changes are put to the board, by id. An id that a join did away with still finds its net. */
final class WorkingNets {

    private final Map<String, Net> nets = new LinkedHashMap<>();
    private final Map<String, String> joined = new HashMap<>();
    private final Set<String> used = new HashSet<>();

    WorkingNets(List<Net> drawn) {
        drawn.forEach(this::put);
    }

    /** The nets as they are, in the order of the drawing, new ones after the one they came from. */
    List<Net> all() {
        return new ArrayList<>(nets.values());
    }

    Net net(String id) {
        return nets.get(current(id));
    }

    boolean knows(String id) {
        return net(id) != null;
    }

    /** The id that a net goes by now; null for null. */
    String current(String id) {
        String now = id;
        while (joined.containsKey(now)) {
            now = joined.get(now);
        }
        return now;
    }

    private void put(Net net) {
        nets.put(net.id(), net);
        used.add(net.id());
    }

    /** An id that no net bears or bore: the wanted one, or that with a letter. */
    String freeId(String wanted) {
        String id = wanted;
        for (int i = 1; used.contains(id); i++) {
            id = wanted + (i < 26 ? String.valueOf((char) ('a' + i)) : "." + i);
        }
        return id;
    }

    /** A net without ink, for what is joined off the board. */
    String add(String wanted, int page) {
        Net net = new Net(freeId(wanted), null, List.of(page), List.of(), List.of(), List.of(), 1);
        put(net);
        return net.id();
    }

    /** Puts two nets in the place of the one that the first has the id of. */
    void divide(Net kept, Net other) {
        List<Net> after = new ArrayList<>();
        for (Net net : nets.values()) {
            after.add(net.id().equals(kept.id()) ? kept : net);
            if (net.id().equals(kept.id())) {
                after.add(other);
            }
        }
        nets.clear();
        after.forEach(this::put);
    }

    /** Puts a net in the place of the one with its id. */
    void replace(Net net) {
        nets.put(net.id(), net);
    }

    /**
     * Makes two nets one. It keeps the id of a supply before that of another, of a named net before one without a name,
     * and else the one that comes first in the order of people. The other's name stays as a label.
     *
     * @param spot where they are joined, for that label, or null
     * @return the id of the joined net
     */
    String join(String first, String second, Spot spot) {
        Net a = net(first);
        Net b = net(second);
        if (a.id().equals(b.id())) {
            return a.id();
        }
        boolean firstStays = rank(a) != rank(b) ? rank(a) < rank(b)
                : NaturalOrder.INSTANCE.compare(a.id(), b.id()) < 0;
        Net kept = firstStays ? a : b;
        Net gone = firstStays ? b : a;
        nets.put(kept.id(), merged(kept, gone, spot));
        nets.remove(gone.id());
        joined.put(gone.id(), kept.id());
        return kept.id();
    }

    private static int rank(Net net) {
        boolean supply = net.labels().stream().anyMatch(l -> l.kind() == LabelKind.POWER);
        return supply ? 0 : net.name() != null ? 1 : 2;
    }

    private static Net merged(Net kept, Net gone, Spot spot) {
        List<NetLabel> labels = both(kept.labels(), gone.labels());
        String lost = gone.name();
        if (lost != null && spot != null && labels.stream().noneMatch(l -> l.text().equals(lost))) {
            labels.add(new NetLabel(lost, spot.page(), spot.at(), LabelKind.LABEL));
        }
        return new Net(kept.id(), kept.name() != null ? kept.name() : lost,
                List.copyOf(new TreeSet<>(both(kept.pages(), gone.pages()))), both(kept.wires(), gone.wires()),
                both(kept.junctions(), gone.junctions()), labels, Math.min(kept.confidence(), gone.confidence()));
    }

    private static <T> List<T> both(List<T> a, List<T> b) {
        List<T> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }
}
