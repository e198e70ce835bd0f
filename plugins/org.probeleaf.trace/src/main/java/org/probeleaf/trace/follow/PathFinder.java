// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.YenKShortestPath;
import org.jgrapht.graph.DirectedMultigraph;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.SignalPath;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.follow.SignalNetwork.Way;
import org.probeleaf.trace.internal.PlaceResolver.Target;

/**
 * Paths of a signal over the network. The shortest loopless paths are found as J. Y. Yen describes ("Finding the K
 * shortest loopless paths in a network", Management Science 17, 1971).
 */
final class PathFinder {

    private static final String FROM = "\u0001from";
    private static final String TO = "\u0001to";

    private final SignalNetwork network;
    private final FollowOptions options;

    PathFinder(SignalNetwork network, FollowOptions options) {
        this.network = network;
        this.options = options;
    }

    List<SignalPath> find(Place fromPlace, Place toPlace, int most) {
        Target from = network.places().endAt(fromPlace);
        Target to = network.places().endAt(toPlace);
        Graph<String, Way> graph = graph(from, to);
        List<SignalPath> found = new ArrayList<>();
        Set<List<String>> seen = new LinkedHashSet<>();
        for (GraphPath<String, Way> path : new YenKShortestPath<>(graph).getPaths(FROM, TO, most)) {
            List<Way> ways = path.getEdgeList();
            if (neverTurnsBack(ways) && !passes(ways, fromPlace) && !passes(ways, toPlace)) {
                List<Place> places = places(fromPlace, toPlace, path);
                if (seen.add(places.stream().map(Place::text).toList())) {
                    found.add(new SignalPath(places));
                }
            }
        }
        return found;
    }

    /** The network with both ends, without supplies that are not meant and without what is not to be followed. */
    private Graph<String, Way> graph(Target from, Target to) {
        Graph<String, Way> part = new DirectedMultigraph<>(Way.class);
        Set<String> begin = nets(from);
        Set<String> end = nets(to);
        for (String net : network.graph().vertexSet()) {
            if (!network.kind(net).isSupply() || begin.contains(net) || end.contains(net)) {
                part.addVertex(net);
            }
        }
        for (Way way : network.graph().edgeSet()) {
            Step s = way.step();
            if (options.takes(s.kind()) && part.containsVertex(s.fromNet()) && part.containsVertex(s.toNet())) {
                part.addEdge(s.fromNet(), s.toNet(), way);
            }
        }
        part.addVertex(FROM);
        part.addVertex(TO);
        begin.forEach(n -> part.addEdge(FROM, n, new Way(null)));
        end.forEach(n -> part.addEdge(n, TO, new Way(null)));
        return part;
    }

    /** The nets at an end; of a part with several nets those that are no supplies. */
    private Set<String> nets(Target target) {
        if (target.net() != null) {
            return Set.of(target.net().id());
        }
        Set<String> nets = new LinkedHashSet<>();
        target.pins().forEach(p -> nets.add(p.pin().net()));
        if (target.pins().size() > 1) {
            nets.removeIf(n -> network.kind(n).isSupply());
        }
        return nets;
    }

    /** Whether no way leaves its part by the pin it came in by: a short cut would do. */
    private static boolean neverTurnsBack(List<Way> ways) {
        for (int i = 2; i < ways.size() - 1; i++) {
            if (ways.get(i).step().in().pin() == ways.get(i - 1).step().out().pin()) {
                return false;
            }
        }
        return true;
    }

    /** Whether a path goes through a part that is asked for as a whole, and so has met it before. */
    private static boolean passes(List<Way> ways, Place place) {
        return place instanceof Place.OfPart part && ways.stream().map(Way::step)
                .anyMatch(s -> s != null && s.part().ref().equalsIgnoreCase(part.ref()));
    }

    private List<Place> places(Place from, Place to, GraphPath<String, Way> path) {
        List<Place> places = new ArrayList<>();
        List<Way> ways = path.getEdgeList();
        List<String> nets = path.getVertexList();
        add(places, from instanceof Place.OfNet ? null : from);
        for (int i = 1; i < nets.size() - 1; i++) {
            Step in = ways.get(i - 1).step();
            Step out = ways.get(i).step();
            add(places, in == null ? null : in.out().place());
            boolean skipped = in == null && is(out == null ? null : out.in(), from)
                    || out == null && is(in == null ? null : in.out(), to);
            add(places, skipped ? null : place(network.net(nets.get(i))));
            add(places, out == null ? null : out.in().place());
        }
        add(places, to instanceof Place.OfNet ? null : to);
        return places;
    }

    /** Whether a pin is the one that was asked for, so that the net beside it needs no mention. */
    private boolean is(TracedPin pin, Place place) {
        return pin != null && place instanceof Place.OfPin && network.places().endAt(place).pins().stream()
                .map(p -> p.pin()).anyMatch((Pin p) -> p == pin.pin());
    }

    private static void add(List<Place> places, Place place) {
        if (place != null && (places.isEmpty()
                || !place.text().equalsIgnoreCase(places.get(places.size() - 1).text()))) {
            places.add(place);
        }
    }

    private Place place(Net net) {
        boolean unique = net.name() != null && network.signals().netlist().nets().stream()
                .filter(n -> net.name().equalsIgnoreCase(n.name())).count() == 1;
        return new Place.OfNet(unique ? net.name() : net.id());
    }
}
