// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.YenKShortestPath;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.jgrapht.graph.DefaultEdge;

import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartClass;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.partbook.PinType;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.internal.PlaceResolver.PinAt;
import org.probeleaf.trace.internal.PlaceResolver.Target;

/**
 * Paths of a signal. The vertices of the graph are the nets and each pin twice, as a way into its part and as a way
 * out of it; an edge leads from a net to a pin that takes the signal in, from there through the part to a pin that lets
 * it out, and from that to its net. Supply nets are left out, since everything meets there. The shortest loopless paths are found as J. Y. Yen describes ("Finding the K shortest
 * loopless paths in a network", Management Science 17, 1971).
 */
final class PathFinder {

    /** The most paths that are given. */
    static final int MOST = 20;

    private static final Set<PartClass> CONDUCTING = EnumSet.of(PartClass.RESISTOR, PartClass.CAPACITOR,
            PartClass.INDUCTOR, PartClass.DIODE, PartClass.LINK, PartClass.PROTECTION, PartClass.SWITCH,
            PartClass.FILTER, PartClass.TRANSISTOR, PartClass.INDICATOR, PartClass.AMBIGUOUS);
    private static final int MOST_PINS_CONDUCTING = 3;
    private static final Set<String> SUPPLIES = Set.of("GND", "AGND", "DGND", "PGND", "VCC", "VDD", "VSS", "VEE",
            "0V", "EARTH", "GNDA", "GNDD");

    private final Netlist netlist;
    private final PartBook book;

    PathFinder(Netlist netlist, PartBook book) {
        this.netlist = netlist;
        this.book = book;
    }

    /** A vertex: a net, a pin as a way in or out, or one of the two ends asked for. */
    private sealed interface Vertex {
        record OfNet(String id) implements Vertex {
        }

        record Into(PinAt at) implements Vertex {
        }

        record OutOf(PinAt at) implements Vertex {
        }

        record End(boolean last) implements Vertex {
        }
    }

    /** The paths between two places, shortest first, at most {@link #MOST}. */
    List<SignalPath> find(Target from, Target to) {
        Graph<Vertex, DefaultEdge> graph = graph(from, to);
        return new YenKShortestPath<>(graph).getPaths(new Vertex.End(false), new Vertex.End(true), MOST).stream()
                .map(path -> written(from, to, path)).filter(PathFinder::neverComesBack).distinct().toList();
    }

    private Graph<Vertex, DefaultEdge> graph(Target from, Target to) {
        Graph<Vertex, DefaultEdge> graph = new DefaultDirectedGraph<>(DefaultEdge.class);
        Set<String> open = new HashSet<>();
        for (Net net : netlist.nets()) {
            if (!isSupply(net) || isMeant(net, from) || isMeant(net, to)) {
                open.add(net.id());
                graph.addVertex(new Vertex.OfNet(net.id()));
            }
        }
        for (Part part : netlist.parts()) {
            addPart(graph, part, open);
        }
        addEnd(graph, from, false);
        addEnd(graph, to, true);
        return graph;
    }

    private void addPart(Graph<Vertex, DefaultEdge> graph, Part part, Set<String> open) {
        List<PinAt> pins = part.pins().stream().filter(p -> open.contains(p.net())).map(p -> new PinAt(part, p))
                .toList();
        for (PinAt pin : pins) {
            Vertex net = new Vertex.OfNet(pin.pin().net());
            PinDirection way = book.direction(part, pin.pin());
            graph.addVertex(new Vertex.Into(pin));
            graph.addVertex(new Vertex.OutOf(pin));
            if (way != PinDirection.IN) {
                graph.addEdge(new Vertex.OutOf(pin), net);
            }
            if (way != PinDirection.OUT) {
                graph.addEdge(net, new Vertex.Into(pin));
            }
        }
        Through through = through(part);
        for (PinAt a : pins) {
            for (PinAt b : pins) {
                if (a != b && !Objects.equals(a.pin().net(), b.pin().net()) && through.leads(a.pin(), b.pin())) {
                    graph.addEdge(new Vertex.Into(a), new Vertex.OutOf(b));
                }
            }
        }
    }

    /** An end joins its net or its pins; a signal may start at a pin that only listens, and end at one that drives. */
    private static void addEnd(Graph<Vertex, DefaultEdge> graph, Target target, boolean last) {
        Vertex end = new Vertex.End(last);
        graph.addVertex(end);
        if (target.net() != null) {
            join(graph, end, new Vertex.OfNet(target.net().id()), last);
        }
        for (PinAt pin : target.pins()) {
            Vertex net = new Vertex.OfNet(pin.pin().net());
            if (graph.containsVertex(net)) {
                join(graph, end, new Vertex.Into(pin), last);
                join(graph, end, new Vertex.OutOf(pin), last);
                join(graph, last ? new Vertex.Into(pin) : new Vertex.OutOf(pin), net, last);
            }
        }
    }

    /** Joins a vertex to the one next to it on the way, which lies before it at the last end. */
    private static void join(Graph<Vertex, DefaultEdge> graph, Vertex outer, Vertex inner, boolean last) {
        if (last) {
            graph.addEdge(inner, outer);
        } else {
            graph.addEdge(outer, inner);
        }
    }

    /** Whether a signal gets from one pin of a part to another. */
    private interface Through {
        boolean leads(Pin in, Pin out);
    }

    private Through through(Part part) {
        PartType type = book.find(part.value()).orElse(null);
        if (type != null) {
            Map<Pin, String> numbers = new HashMap<>();
            part.pins().forEach(p -> book.pin(part, p).map(PinType::number).ifPresent(n -> numbers.put(p, n)));
            return (in, out) -> numbers.containsKey(in) && numbers.containsKey(out) && type.units().stream()
                    .anyMatch(u -> u.passes(numbers.get(in), numbers.get(out)));
        }
        boolean conducts = CONDUCTING.contains(book.classOf(part.ref()))
                && part.pins().size() <= MOST_PINS_CONDUCTING;
        return (in, out) -> conducts && book.direction(part, out) != PinDirection.IN;
    }

    /** Whether a net is asked for itself, or by a pin on it; a part that is also on a supply does not mean that. */
    private static boolean isMeant(Net net, Target target) {
        return net.equals(target.net()) || target.pins().size() == 1
                && net.id().equals(target.pins().get(0).pin().net());
    }

    private static boolean neverComesBack(SignalPath path) {
        return path.places().stream().map(Place::text).distinct().count() == path.places().size();
    }

    private static boolean isSupply(Net net) {
        return net.labels().stream().anyMatch(l -> l.kind() == LabelKind.POWER)
                || net.name() != null && (SUPPLIES.contains(net.name().toUpperCase(Locale.ROOT))
                || net.name().matches("[+-]\\d+(?:[.V]\\d*)?V?\\w{0,2}"));
    }

    /** A part whose pins have no number or name stands in a path once. */
    private SignalPath written(Target from, Target to, GraphPath<Vertex, DefaultEdge> path) {
        List<Place> places = new ArrayList<>();
        add(places, from.place() instanceof Place.OfNet ? null : from.place());
        path.getVertexList().forEach(v -> add(places, place(v)));
        add(places, to.place() instanceof Place.OfNet ? null : to.place());
        return new SignalPath(places);
    }

    /** Adds a place unless it is null or the last one again. */
    private static void add(List<Place> places, Place place) {
        if (place != null && (places.isEmpty() || !same(place, places.get(places.size() - 1)))) {
            places.add(place);
        }
    }

    private Place place(Vertex v) {
        if (v instanceof Vertex.OfNet net) {
            return netPlace(net.id());
        }
        PinAt at = v instanceof Vertex.Into in ? in.at() : v instanceof Vertex.OutOf out ? out.at() : null;
        return at == null ? null : new TracedPin(at.part(), at.pin(), null, null).place();
    }

    private static boolean same(Place a, Place b) {
        return a.text().equalsIgnoreCase(b.text());
    }

    private Place netPlace(String id) {
        Net net = netlist.net(id).orElseThrow();
        boolean unique = net.name() != null
                && netlist.nets().stream().filter(n -> net.name().equalsIgnoreCase(n.name())).count() == 1;
        return new Place.OfNet(unique ? net.name() : id);
    }
}
