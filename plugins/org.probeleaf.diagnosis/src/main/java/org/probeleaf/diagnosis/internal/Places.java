// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.SignalGraph;
import org.probeleaf.trace.UnknownPlaceException;

/** What places mean on a circuit. Immutable. */
public final class Places {

    private final Circuit circuit;
    private final SignalGraph graph;

    public Places(Circuit circuit, SignalGraph graph) {
        this.circuit = circuit;
        this.graph = graph;
    }

    /**
     * A place on the circuit.
     *
     * @param node     its node
     * @param terminal the pin where one was named, else null
     */
    public record Spot(Node node, Terminal terminal) {
    }

    public Circuit circuit() {
        return circuit;
    }

    /**
     * Finds a place; a pin that is on no net, as a lifted one, is a place of its own.
     *
     * @throws UnknownPlaceException where there is no such place, or a part on several nets is named
     */
    public Spot find(Place place) {
        if (place instanceof Place.OfPin pin) {
            Optional<Terminal> found = terminal(pin);
            if (found.isPresent()) {
                return new Spot(circuit.nodes().get(found.get().node()), found.get());
            }
        }
        String net = net(place);
        return new Spot(circuit.nodeOf(net).orElseThrow(), null);
    }

    private String net(Place place) {
        try {
            return graph.trace(place).net().id();
        } catch (UnknownPlaceException e) {
            // A bare name may be that of a pin.
            if (place instanceof Place.OfNet named && named.net().matches("[\\p{L}\\p{N}_-]+\\.\\S+")) {
                return graph.trace(Place.parse(named.net())).net().id();
            }
            throw e;
        }
    }

    private Optional<Terminal> terminal(Place.OfPin pin) {
        List<Terminal> pins = circuit.terminals().stream()
                .filter(t -> circuit.ref(t.part()).equalsIgnoreCase(pin.ref())).toList();
        return pins.stream().filter(t -> pin.pin().equals(t.pin().number())).findFirst()
                .or(() -> pins.stream().filter(t -> pin.pin().equalsIgnoreCase(t.pin().name())).findFirst())
                .or(() -> pins.stream().filter(t -> t.pin().name() != null
                        && plain(t.pin().name()).equals(plain(pin.pin()))).findFirst())
                .or(() -> pins.stream().filter(t -> pin.pin().equals(t.label())).findFirst());
    }

    /** A name without its sign of active low. */
    private static String plain(String name) {
        return name.toUpperCase(Locale.ROOT).replaceAll("[/~#!*]", "");
    }
}
