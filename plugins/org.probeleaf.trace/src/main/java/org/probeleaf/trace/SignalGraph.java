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

/**
 * A netlist that can be asked what is on a net. Where a signal goes from there through parts is for
 * {@link org.probeleaf.trace.follow.SignalNetwork}. Immutable; any thread may use it.
 */
public final class SignalGraph {

    private final Netlist netlist;
    private final Map<String, List<TracedPin>> pinsOfNet = new HashMap<>();
    private final PlaceResolver places;

    private SignalGraph(Netlist netlist, PartBook book) {
        this.netlist = netlist;
        for (Part part : netlist.parts()) {
            for (Pin pin : part.pins()) {
                if (pin.net() != null) {
                    pinsOfNet.computeIfAbsent(pin.net(), id -> new ArrayList<>()).add(traced(book, part, pin));
                }
            }
        }
        pinsOfNet.replaceAll((net, pins) -> pins.stream().sorted(TracedPin.BY_PLACE).toList());
        this.places = new PlaceResolver(netlist);
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
        return pinsOfNet.getOrDefault(netId, List.of());
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

    private static TracedPin traced(PartBook book, Part part, Pin pin) {
        String name = pin.name() != null ? pin.name() : book.pin(part, pin).map(PinType::name).orElse(null);
        return new TracedPin(part, pin, book.direction(part, pin), name);
    }
}
