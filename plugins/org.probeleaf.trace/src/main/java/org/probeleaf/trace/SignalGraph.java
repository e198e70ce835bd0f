// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PinType;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.internal.PlaceResolver;

/** A netlist that can be asked where a signal goes. Immutable; any thread may use it. */
public final class SignalGraph {

    private final Netlist netlist;
    private final Map<String, List<TracedPin>> pinsOfNet = new HashMap<>();
    private final PlaceResolver places;
    private final PathFinder paths;

    private SignalGraph(Netlist netlist, PartBook book) {
        this.netlist = netlist;
        for (Part part : netlist.parts()) {
            for (Pin pin : part.pins()) {
                if (pin.net() != null) {
                    pinsOfNet.computeIfAbsent(pin.net(), id -> new ArrayList<>()).add(traced(book, part, pin));
                }
            }
        }
        pinsOfNet.values().forEach(pins -> pins.sort(TracedPin.BY_PLACE));
        this.places = new PlaceResolver(netlist);
        this.paths = new PathFinder(netlist, book);
    }

    /** Reads a netlist with what the part book knows of its parts. */
    public static SignalGraph of(Netlist netlist, PartBook book) {
        return new SignalGraph(netlist, book);
    }

    public Netlist netlist() {
        return netlist;
    }

    /** The pins on a net, drivers first, then by page and designator; none for an id that is not known. */
    public List<TracedPin> pinsOn(String netId) {
        return List.copyOf(pinsOfNet.getOrDefault(netId, List.of()));
    }

    /** The net at a place; empty where there is no such place, no net there, or a part on several nets. */
    public Optional<Net> netAt(Place place) {
        try {
            List<Net> nets = places.netsAt(place);
            return nets.size() == 1 ? Optional.of(nets.get(0)) : Optional.empty();
        } catch (UnknownPlaceException e) {
            return Optional.empty();
        }
    }

    /**
     * Everything that the net at a place touches.
     *
     * @throws UnknownPlaceException where there is no such place, no net there, or a part on several nets
     */
    public NetTrace trace(Place place) {
        List<Net> nets = places.netsAt(place);
        if (nets.size() > 1) {
            throw new UnknownPlaceException(place.text() + " is on " + nets.size()
                    + " nets; name one of its pins, such as " + places.examplePin((Place.OfPart) place));
        }
        return new NetTrace(place, nets.get(0), pinsOn(nets.get(0).id()));
    }

    /**
     * The ways for a signal from one place to another, the shortest first, at most {@value PathFinder#MOST}. They lead
     * through resistors, capacitors, coils, diodes, links, fuses, switches and transistors, and through sections of
     * chips that the part book knows from input to output; they neither follow supplies nor go through chips with a
     * life of their own (processors, memories).
     *
     * @throws UnknownPlaceException where there is no such place or no net there
     */
    public List<SignalPath> paths(Place from, Place to) {
        return paths.find(places.endAt(from), places.endAt(to));
    }

    private static TracedPin traced(PartBook book, Part part, Pin pin) {
        String name = pin.name() != null ? pin.name() : book.pin(part, pin).map(PinType::name).orElse(null);
        return new TracedPin(part, pin, book.direction(part, pin), name);
    }
}
