// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.Junction;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Wire;

/** A netlist under correction. What no correction touches comes out as the very records that went in. */
final class Draft {

    /** How near two things lie that touch, in points: less than half the finest grid step of a sheet. */
    static final double TOUCH = 0.75;

    final List<NetDraft> nets = new ArrayList<>();
    final List<PartDraft> parts = new ArrayList<>();
    final List<Doubt> doubts = new ArrayList<>();
    final List<Cut> cuts = new ArrayList<>();
    final List<Link> links = new ArrayList<>();
    private final Netlist start;
    private final Set<String> ids = new HashSet<>();

    /** A net; {@code read} is what it was made from, or null once it has changed. */
    static final class NetDraft {
        final String id;
        /** The id of the net that it first came off. */
        final String root;
        String name;
        final List<Seg> segs = new ArrayList<>();
        final List<Junction> junctions = new ArrayList<>();
        final List<NetLabel> labels = new ArrayList<>();
        double confidence;
        private Net read;

        NetDraft(String id, String root, String name, double confidence) {
            this.id = id;
            this.root = root;
            this.name = name;
            this.confidence = confidence;
        }

        void touched() {
            read = null;
        }

        String title() {
            return name != null ? name : id;
        }
    }

    /** A part. */
    static final class PartDraft {
        String ref;
        String value;
        final List<PartUnit> units = new ArrayList<>();
        final List<Pin> pins = new ArrayList<>();

        PartDraft(String ref, String value) {
            this.ref = ref;
            this.value = value;
        }
    }

    /** A pin of a part, as long as no pin before it goes. */
    record PinRef(PartDraft part, int index) {

        Pin pin() {
            return part.pins.get(index);
        }

        void toNet(String id) {
            Pin p = pin();
            part.pins.set(index, new Pin(p.number(), p.name(), p.unit(), p.page(), p.at(), id, p.implied()));
        }

        String text() {
            return part.ref + "." + pin().label();
        }
    }

    /**
     * A spot where wires that touch are not joined.
     *
     * @param all whether nothing is joined there; else straight runs are
     */
    record Cut(int page, Point at, boolean all) {
        boolean lies(int onPage, Point p) {
            return page == onPage && at.distance(p) <= 2 * TOUCH;
        }
    }

    /**
     * Two spots that are joined without touching.
     *
     * @param gap whether the reading bridged a small gap there; else a person or something unseen joins them
     */
    record Link(int pageA, Point a, int pageB, Point b, boolean gap) {
    }

    Draft(Netlist start) {
        this.start = start;
        this.doubts.addAll(start.doubts());
        for (Net net : start.nets()) {
            NetDraft d = new NetDraft(net.id(), net.id(), net.name(), net.confidence());
            for (Wire w : net.wires()) {
                for (int i = 1; i < w.points().size(); i++) {
                    d.segs.add(new Seg(w.page(), w.points().get(i - 1), w.points().get(i)));
                }
            }
            d.junctions.addAll(net.junctions());
            d.labels.addAll(net.labels());
            d.read = net;
            ids.add(net.id());
            nets.add(d);
        }
        for (Part part : start.parts()) {
            PartDraft d = new PartDraft(part.ref(), part.value());
            d.units.addAll(part.units());
            d.pins.addAll(part.pins());
            parts.add(d);
        }
    }

    Optional<NetDraft> net(String id) {
        return id == null ? Optional.empty() : nets.stream().filter(n -> n.id.equals(id)).findFirst();
    }

    Optional<PartDraft> part(String ref) {
        return parts.stream().filter(p -> p.ref.equalsIgnoreCase(ref)).findFirst();
    }

    /** Every pin of every part. */
    List<PinRef> pins() {
        List<PinRef> all = new ArrayList<>();
        for (PartDraft part : parts) {
            for (int i = 0; i < part.pins.size(); i++) {
                all.add(new PinRef(part, i));
            }
        }
        return all;
    }

    List<PinRef> pinsOn(NetDraft net) {
        return pins().stream().filter(p -> net.id.equals(p.pin().net())).toList();
    }

    /**
     * A new net.
     *
     * @param from the net it comes off, after which it is numbered and stands ({@code N34b}), or null
     */
    NetDraft newNet(NetDraft from, String name, double confidence) {
        String id = null;
        for (int i = 1; id == null || !ids.add(id); i++) {
            id = from == null ? "M" + i : from.root + (i < 26 ? String.valueOf((char) ('a' + i)) : "-" + i);
        }
        NetDraft net = new NetDraft(id, from == null ? id : from.root, name, confidence);
        nets.add(from == null ? nets.size() : nets.indexOf(from) + 1, net);
        return net;
    }

    /** The netlist as it now is. Nets without ink and pins are left out, and so are parts without a drawn piece. */
    Netlist netlist() {
        Map<String, Set<Integer>> pinPages = new HashMap<>();
        for (PinRef p : pins()) {
            if (p.pin().net() != null) {
                Set<Integer> pages = pinPages.computeIfAbsent(p.pin().net(), k -> new TreeSet<>());
                if (p.pin().at() != null) {
                    pages.add(p.pin().page());
                }
            }
        }
        List<Net> outNets = new ArrayList<>();
        for (NetDraft n : nets) {
            boolean bare = n.segs.isEmpty() && n.labels.isEmpty() && !pinPages.containsKey(n.id);
            if (n.read != null || !bare) {
                outNets.add(n.read != null ? n.read : net(n, pinPages.getOrDefault(n.id, Set.of())));
            }
        }
        List<Part> outParts = parts.stream().filter(p -> !p.units.isEmpty())
                .map(p -> new Part(p.ref, p.value, p.units, p.pins)).toList();
        return new Netlist(start.file(), start.sha256(), start.sheets(), outParts, outNets, doubts);
    }

    private static Net net(NetDraft n, Set<Integer> pinPages) {
        Set<Integer> pages = new TreeSet<>(pinPages);
        n.segs.forEach(s -> pages.add(s.page()));
        n.labels.forEach(l -> pages.add(l.page()));
        List<Wire> wires = n.segs.stream().map(s -> new Wire(s.page(), List.of(s.a(), s.b()))).toList();
        return new Net(n.id, n.name, List.copyOf(pages), wires, n.junctions, n.labels, n.confidence);
    }
}
