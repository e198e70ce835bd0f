// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.probeleaf.handover.internal.layout.Segment;
import org.probeleaf.handover.internal.paint.Tint;
import org.probeleaf.job.JobState;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.schematic.place.Place;

/**
 * Which nets are emphasised, each with its colour: those asked for, those with a label of the technician's own, and
 * those with a reading or a waveform, but for supply nets, which would light up half the sheet for one voltage measured.
 */
final class Emphasis {

    private static final List<Tint> BANDS = List.of(Tint.SKY_BLUE, Tint.ORANGE, Tint.BLUISH_GREEN,
            Tint.REDDISH_PURPLE, Tint.YELLOW);
    /** How far a spot may be from a wire to mean it, in points. */
    private static final double NEAR = 4;

    private final Netlist netlist;
    private final Map<Net, Tint> nets = new LinkedHashMap<>();
    private final Map<Net, List<LabelMark>> labels = new LinkedHashMap<>();

    Emphasis(JobState state, Set<String> wanted) {
        this.netlist = state.netlist() == null ? Netlist.empty() : state.netlist();
        Set<Net> all = new LinkedHashSet<>();
        netlist.nets().stream().filter(n -> wanted.contains(n.id())).forEach(all::add);
        for (LabelMark label : state.labels()) {
            netOf(label).ifPresent(net -> {
                all.add(net);
                labels.computeIfAbsent(net, n -> new ArrayList<>()).add(label);
            });
        }
        state.readings().stream().map(this::netOf).flatMap(Optional::stream).filter(n -> !supply(n)).forEach(all::add);
        state.captures().stream().map(this::netOf).flatMap(Optional::stream).filter(n -> !supply(n)).forEach(all::add);
        for (Net net : all) {
            nets.put(net, BANDS.get(nets.size() % BANDS.size()));
        }
    }

    /** The emphasised nets with their colours, in the order they are told of. */
    Map<Net, Tint> nets() {
        return nets;
    }

    /** The technician's own names of a net. */
    List<LabelMark> labels(Net net) {
        return labels.getOrDefault(net, List.of());
    }

    /** Whether a label is on a net that is known, so that it shows along the net rather than as a tag on a spot. */
    boolean onNet(LabelMark label) {
        return labels.values().stream().anyMatch(l -> l.contains(label));
    }

    /** Ends of the net's drawn pins on a page. */
    List<Point> pins(Net net, int page) {
        return netlist.parts().stream().flatMap(p -> p.pins().stream())
                .filter(p -> net.id().equals(p.net()) && p.at() != null && p.page() == page)
                .map(p -> p.at()).toList();
    }

    /** Bodies of the parts drawn on a page. */
    List<Box> bodies(int page) {
        return netlist.parts().stream().flatMap(p -> p.units().stream()).filter(u -> u.page() == page)
                .map(u -> u.box()).toList();
    }

    /** Whether the netlist has the net on the page, by wire, label or pin. */
    boolean shows(Net net, int page) {
        return net.wires().stream().anyMatch(w -> w.page() == page) || !pins(net, page).isEmpty();
    }

    /** What a person calls the net: its name on the sheet, else one of its pins ("at IC14.1"). */
    String title(Net net) {
        if (net.name() != null) {
            return net.name();
        }
        return netlist.parts().stream().flatMap(p -> p.pins().stream().filter(n -> net.id().equals(n.net()))
                .map(n -> "at " + p.ref() + "." + n.label()))
                .min(Comparator.comparing((String s) -> !s.startsWith("at IC") && !s.startsWith("at U")))
                .orElse(net.id());
    }

    private static boolean supply(Net net) {
        return net.labels().stream().anyMatch(l -> l.kind() == LabelKind.POWER);
    }

    private Optional<Net> netOf(Mark mark) {
        if (mark.place() instanceof Place.OfNet named) {
            // A correction may have taken the wire at the mark off the net that it was named by.
            Optional<Net> byName = named(named.net());
            return byName.filter(n -> lies(n, mark)).or(() -> nearest(mark.page(), mark.at())).or(() -> byName);
        }
        if (mark.place() instanceof Place.OfPin pin) {
            return netlist.part(pin.ref()).stream().flatMap(p -> p.pins().stream())
                    .filter(p -> pin.pin().equals(p.number()) || pin.pin().equalsIgnoreCase(p.name()))
                    .map(p -> p.net()).filter(id -> id != null).findFirst().flatMap(netlist::net);
        }
        return mark.place() instanceof Place.OnPage ? nearest(mark.page(), mark.at()) : Optional.empty();
    }

    private Optional<Net> named(String name) {
        return netlist.net(name).or(() -> byName(name).filter(n -> name.equals(n.name())).findFirst())
                .or(() -> byName(name).findFirst());
    }

    private boolean lies(Net net, Mark mark) {
        return segments(net, mark.page()).stream().anyMatch(s -> s.distance(mark.at()) < NEAR);
    }

    private Stream<Net> byName(String name) {
        return netlist.nets().stream().filter(n -> name.equalsIgnoreCase(n.name()));
    }

    private Optional<Net> nearest(int page, Point at) {
        Net best = null;
        double least = NEAR;
        for (Net net : netlist.nets()) {
            for (Segment s : segments(net, page)) {
                double d = s.distance(at);
                if (d < least) {
                    least = d;
                    best = net;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The straight pieces of a net's wires on a page. */
    static List<Segment> segments(Net net, int page) {
        List<Segment> list = new ArrayList<>();
        for (Wire wire : net.wires()) {
            for (int i = 1; wire.page() == page && i < wire.points().size(); i++) {
                list.add(new Segment(wire.points().get(i - 1), wire.points().get(i)));
            }
        }
        return list;
    }
}
