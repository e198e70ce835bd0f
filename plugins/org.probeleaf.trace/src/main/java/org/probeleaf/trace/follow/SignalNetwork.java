// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedMultigraph;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.SignalGraph;
import org.probeleaf.trace.SignalPath;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.UnknownPlaceException;
import org.probeleaf.trace.internal.PlaceResolver;

/**
 * The nets of a board and the ways through its parts from one to another: a directed graph that a signal is followed
 * over. Build it once for each netlist; that of the board as it is comes from
 * {@link org.probeleaf.trace.board.BoardState#netlist}. Immutable; any thread may use it.
 */
public final class SignalNetwork {

    private final SignalGraph signals;
    private final PartBook book;
    private final PlaceResolver places;
    private final Map<String, Net> nets = new LinkedHashMap<>();
    private final Map<String, NetKind> kinds = new HashMap<>();
    private final Map<String, List<TracedPin>> ofPart = new HashMap<>();
    private final Map<Pin, OutputState> states = new IdentityHashMap<>();
    private final Map<String, List<TracedPin>> driving = new HashMap<>();
    private final Conduction conduction;
    private final Map<String, List<Step>> from = new HashMap<>();
    private final Map<String, List<Step>> to = new HashMap<>();
    private final Graph<String, Way> graph = new DirectedMultigraph<>(Way.class);

    private SignalNetwork(Netlist netlist, PartBook book) {
        this.signals = SignalGraph.of(netlist, book);
        this.book = book;
        this.places = new PlaceResolver(netlist);
        Supplies supplies = new Supplies(book);
        Map<Pin, TracedPin> byPin = new IdentityHashMap<>();
        for (Net net : netlist.nets()) {
            List<TracedPin> pins = signals.pinsOn(net.id());
            nets.put(net.id(), net);
            kinds.put(net.id(), supplies.kind(net, pins));
            graph.addVertex(net.id());
            pins.forEach(p -> byPin.put(p.pin(), p));
        }
        for (Part part : netlist.parts()) {
            ofPart.put(part.ref(), part.pins().stream().map(byPin::get).filter(Objects::nonNull).toList());
        }
        this.conduction = new Conduction(book, this::carries);
        Outputs outputs = new Outputs(book, this::carries, p -> ofPart.get(p.part().ref()));
        for (String net : nets.keySet()) {
            for (TracedPin pin : signals.pinsOn(net)) {
                OutputState state = outputs.state(pin);
                if (state != OutputState.NONE) {
                    states.put(pin.pin(), state);
                }
                if (state == OutputState.ALWAYS) {
                    driving.computeIfAbsent(net, n -> new ArrayList<>()).add(pin);
                }
            }
        }
        for (Step step : conduction.ways(netlist.parts(), ofPart)) {
            graph.addEdge(step.fromNet(), step.toNet(), new Way(step));
            from.computeIfAbsent(step.fromNet(), n -> new ArrayList<>()).add(step);
            to.computeIfAbsent(step.toNet(), n -> new ArrayList<>()).add(step);
        }
    }

    private NetKind carries(TracedPin pin) {
        return kinds.get(pin.pin().net());
    }

    /** An edge of the graph: it is itself alone, where steps compare by what they say. */
    static final class Way extends DefaultEdge {

        private static final long serialVersionUID = 1L;

        private final transient Step step;

        Way(Step step) {
            this.step = step;
        }

        Step step() {
            return step;
        }
    }

    /**
     * Builds the network.
     *
     * @param netlist what is connected
     * @param book    what is known of the parts
     */
    public static SignalNetwork of(Netlist netlist, PartBook book) {
        return new SignalNetwork(netlist, book);
    }

    /** The netlist with its places and pins. */
    public SignalGraph signals() {
        return signals;
    }

    /** What is known of the parts. */
    public PartBook book() {
        return book;
    }

    /** What a net carries; a signal for an id that is not known. */
    public NetKind kind(String netId) {
        return kinds.getOrDefault(netId, NetKind.SIGNAL);
    }

    /** The net with an id, or null. */
    public Net net(String netId) {
        return nets.get(netId);
    }

    /** Whether and when a pin drives its net. */
    public OutputState output(TracedPin pin) {
        return states.getOrDefault(pin.pin(), OutputState.NONE);
    }

    /** The ways from a net through single parts; none for an id that is not known. Those of one part are together. */
    public List<Step> waysFrom(String netId) {
        return Collections.unmodifiableList(from.getOrDefault(netId, List.of()));
    }

    /** The ways to a net through single parts. */
    public List<Step> waysTo(String netId) {
        return Collections.unmodifiableList(to.getOrDefault(netId, List.of()));
    }

    /**
     * Follows the signal from a place.
     *
     * @throws UnknownPlaceException where there is no such place, no net there, or a part on several nets
     */
    public Followed follow(Place from, FollowOptions options) {
        return new Follower(this, options, from).follow(signals.trace(from).net());
    }

    /**
     * The ways for a signal from one place to another, the shortest first. They do not lead over supplies, unless the
     * net of a supply is itself one of the places.
     *
     * @param options what they lead through; its flow and its limits do not count
     * @param most    how many are given, at least 1
     * @throws UnknownPlaceException where there is no such place or no net there
     */
    public List<SignalPath> paths(Place from, Place to, FollowOptions options, int most) {
        return new PathFinder(this, options).find(from, to, most);
    }

    /** The pins that drive a net always. */
    List<TracedPin> alwaysDriving(String netId) {
        return driving.getOrDefault(netId, List.of());
    }

    /** The pins of a part that are on nets. */
    List<TracedPin> pinsOf(Part part) {
        return ofPart.getOrDefault(part.ref(), List.of());
    }

    Graph<String, Way> graph() {
        return graph;
    }

    PlaceResolver places() {
        return places;
    }

    Conduction conduction() {
        return conduction;
    }
}
