// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.NetLocator;
import org.probeleaf.trace.UnknownPlaceException;

/** Finds what a place means on a netlist. Any thread may use it. */
public final class PlaceResolver {

    /** How far from ink a spot may lie, in points: half the grid step of a common sheet. */
    public static final double REACH = 5;

    private final Netlist netlist;
    private NetLocator locator;
    private final Map<String, Net> byId = new HashMap<>();
    private final Map<String, List<Net>> byName = new HashMap<>();

    /** Reads a netlist, once for all questions. */
    public PlaceResolver(Netlist netlist) {
        this.netlist = netlist;
        for (Net net : netlist.nets()) {
            byId.put(net.id(), net);
            addName(net.name(), net);
            for (NetLabel label : net.labels()) {
                addName(label.text(), net);
            }
        }
    }

    /** What a place means: a net, or pins with their nets. */
    public record Target(Place place, Net net, List<PinAt> pins) {
    }

    /** A pin of a part. */
    public record PinAt(Part part, Pin pin) {
    }

    /** The nets at a place, each once, at least one. */
    public List<Net> netsAt(Place place) {
        Target target = endAt(place);
        if (target.net() != null) {
            return List.of(target.net());
        }
        Map<String, Net> nets = new LinkedHashMap<>();
        target.pins().forEach(p -> nets.put(p.pin().net(), byId.get(p.pin().net())));
        return new ArrayList<>(nets.values());
    }

    /** What a place means; its pins are those on a net, at least one. */
    public Target endAt(Place place) {
        if (place instanceof Place.OfNet named) {
            return new Target(place, net(named.net()), List.of());
        }
        if (place instanceof Place.OnPage spot) {
            return onPage(spot);
        }
        Part part = part(place instanceof Place.OfPin p ? p.ref() : ((Place.OfPart) place).ref());
        List<Pin> pins = place instanceof Place.OfPin p ? List.of(needed(part, p.pin())) : part.pins();
        List<PinAt> wired = pins.stream().filter(p -> byId.containsKey(p.net())).map(p -> new PinAt(part, p)).toList();
        if (wired.isEmpty()) {
            throw new UnknownPlaceException(place.text() + " is on no net");
        }
        return new Target(place, null, wired);
    }

    /** A pin of the part that a person could name instead. */
    public String examplePin(Place.OfPart place) {
        return part(place.ref()).pins().stream().filter(p -> p.net() != null && !p.label().equals("?"))
                .map(p -> new Place.OfPin(place.ref(), p.label()).text()).findFirst()
                .orElse("a spot on its wire, 1@120.5,300");
    }

    private Target onPage(Place.OnPage spot) {
        Point at = new Point(spot.x(), spot.y());
        Optional<Net> net = locator().netAt(spot.page(), at, REACH);
        return net.map(n -> new Target(spot, n, List.<PinAt>of())).orElseThrow(() -> new UnknownPlaceException(
                "there is no net within " + (int) REACH + " points of " + spot.text()));
    }

    /** Laid out when a spot is first asked for. */
    private synchronized NetLocator locator() {
        if (locator == null) {
            locator = NetLocator.of(netlist);
        }
        return locator;
    }

    private Part part(String ref) {
        return netlist.part(ref).orElseThrow(() -> new UnknownPlaceException(
                "there is no part " + ref + " on the drawing"));
    }

    private static Pin needed(Part part, String wanted) {
        return pin(part, wanted).orElseThrow(() -> new UnknownPlaceException("part " + part.ref() + " has no pin "
                + wanted + " on the drawing"));
    }

    /**
     * The pin of a part that a person means: by number, by name, by name without its sign of active low; two pins
     * without either are counted.
     */
    public static Optional<Pin> pin(Part part, String wanted) {
        List<Pin> pins = part.pins();
        return first(pins, wanted, Pin::number).or(() -> first(pins, wanted, Pin::name))
                .or(() -> first(pins, plain(wanted), p -> p.name() == null ? null : plain(p.name())))
                .or(() -> counted(pins, wanted));
    }

    private static Optional<Pin> first(List<Pin> pins, String wanted,
            Function<Pin, String> what) {
        List<Pin> fit = pins.stream().filter(p -> wanted.equalsIgnoreCase(what.apply(p))).toList();
        return fit.stream().filter(p -> p.net() != null).findFirst().or(() -> fit.stream().findFirst());
    }

    private static Optional<Pin> counted(List<Pin> pins, String wanted) {
        boolean unnumbered = pins.size() == 2 && pins.stream().allMatch(p -> p.number() == null);
        return unnumbered && wanted.matches("[12]") ? Optional.of(pins.get(wanted.charAt(0) - '1')) : Optional.empty();
    }

    private Net net(String wanted) {
        List<Net> named = byName.getOrDefault(wanted.toUpperCase(Locale.ROOT), List.of());
        List<Net> exact = named.stream().filter(n -> wanted.equals(n.name())).toList();
        List<Net> found = exact.isEmpty() ? named : exact;
        if (found.isEmpty() && byId.containsKey(wanted)) {
            return byId.get(wanted);
        }
        if (found.isEmpty()) {
            List<Net> loose = byName.entrySet().stream().filter(e -> plain(e.getKey()).equals(plain(wanted)))
                    .flatMap(e -> e.getValue().stream()).distinct().toList();
            found = loose;
        }
        if (found.size() > 1) {
            throw new UnknownPlaceException(found.size() + " nets are named " + wanted + "; name one by its id: "
                    + String.join(", ", found.stream().map(n -> "net:" + n.id()).toList()));
        }
        if (found.isEmpty()) {
            throw new UnknownPlaceException("there is no net " + wanted + " on the drawing");
        }
        return found.get(0);
    }

    private void addName(String name, Net net) {
        if (name != null) {
            List<Net> nets = byName.computeIfAbsent(name.toUpperCase(Locale.ROOT), n -> new ArrayList<>());
            if (!nets.contains(net)) {
                nets.add(net);
            }
        }
    }

    private static String plain(String name) {
        return name.toUpperCase(Locale.ROOT).replaceAll("[/~#!*\\\\\u0305]|\\bN(?=[A-Z])", "");
    }
}
