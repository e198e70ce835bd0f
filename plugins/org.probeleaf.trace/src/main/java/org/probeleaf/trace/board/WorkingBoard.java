// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.UnknownPlaceException;
import org.probeleaf.trace.internal.PlaceResolver;
import org.probeleaf.trace.board.WorkingPart.WorkingPin;

/** A board while changes are put to it. */
final class WorkingBoard {

    final Netlist drawn;
    final WorkingNets nets;
    private final Map<String, WorkingPart> parts = new LinkedHashMap<>();
    /** Drawn parts whose designator another part bears now. */
    private final List<Part> displaced = new ArrayList<>();
    final List<LinkMark> links = new ArrayList<>();
    final List<CutMark> cuts = new ArrayList<>();
    private PlaceResolver resolver;

    WorkingBoard(Netlist drawn) {
        this.drawn = drawn;
        this.nets = new WorkingNets(drawn.nets());
        drawn.parts().forEach(p -> parts.put(key(p.ref()), new WorkingPart(p, false)));
    }

    /** A place to solder at: a pin or pad that may be on no net yet, or a net. */
    record End(Place place, WorkingPart part, WorkingPin pin, String net, Spot spot) {

        /** The net there, or null. */
        String now() {
            return pin == null ? net : part.out ? pin.pad : pin.net();
        }

        void join(String id) {
            if (pin != null && pin.loose() && !part.out) {
                pin.own = id;
            } else if (pin != null) {
                pin.pad = id;
            }
        }
    }

    Iterable<WorkingPart> parts() {
        return parts.values();
    }

    List<Part> displaced() {
        return displaced;
    }

    Optional<WorkingPart> find(String ref) {
        return Optional.ofNullable(parts.get(key(ref)));
    }

    /** A part that is on the board. */
    WorkingPart part(String ref) throws RefusedException {
        WorkingPart part = known(ref);
        if (part.out) {
            throw new RefusedException(part.part.ref() + " is out; fit it first");
        }
        return part;
    }

    WorkingPart known(String ref) throws RefusedException {
        WorkingPart part = parts.get(key(ref));
        if (part == null) {
            throw new RefusedException("there is no part " + ref + " on the board");
        }
        return part;
    }

    void put(WorkingPart part) {
        WorkingPart before = parts.put(key(part.part.ref()), part);
        if (before != null && !before.fitted) {
            displaced.add(before.part);
        }
    }

    WorkingPin pin(WorkingPart part, String pin) throws RefusedException {
        Pin found = pinOf(part.part, pin).orElseThrow(() -> new RefusedException(
                "part " + part.part.ref() + " has no pin " + pin));
        return part.pins.stream().filter(p -> p.drawn == found).findFirst().orElseThrow();
    }

    /** The pin of a part that a person means. */
    static Optional<Pin> pinOf(Part part, String pin) {
        return PlaceResolver.pin(part, pin);
    }

    /** Where a place is for soldering. */
    End end(Place place) throws RefusedException {
        if (place instanceof Place.OfPin p) {
            WorkingPart part = known(p.ref());
            WorkingPin pin = pin(part, p.pin());
            return new End(place, part, pin, null, pin.spot());
        }
        if (place instanceof Place.OfPart p) {
            WorkingPart part = known(p.ref());
            if (part.pins.size() != 1) {
                throw new RefusedException(part.part.ref() + " has " + part.pins.size()
                        + " pins; name one of them, such as " + part.part.ref() + "." + part.pins.stream()
                        .map(q -> q.drawn.label()).filter(l -> !l.equals("?")).findFirst().orElse("1"));
            }
            return new End(place, part, part.pins.get(0), null, part.pins.get(0).spot());
        }
        if (place instanceof Place.OfNet n && nets.knows(n.net())) {
            return new End(place, null, null, nets.current(n.net()), null);
        }
        try {
            List<Net> found = resolver().netsAt(place);
            Spot spot = place instanceof Place.OnPage s ? new Spot(s.page(), new Point(s.x(), s.y())) : null;
            return new End(place, null, null, nets.current(found.get(0).id()), spot);
        } catch (UnknownPlaceException e) {
            throw new RefusedException(e.getMessage());
        }
    }

    /** The net of an end; a new one, called after the pin, where it is on none. */
    String netOf(End end) {
        if (end.now() == null) {
            end.join(nets.add(end.part().part.ref() + "." + end.pin().drawn.label(), end.pin().drawn.page()));
        }
        return nets.current(end.now());
    }

    /** Spots and names mean what the drawing has there, after the cuts at spots. */
    private PlaceResolver resolver() {
        if (resolver == null) {
            resolver = new PlaceResolver(BoardWriter.netlist(this));
        }
        return resolver;
    }

    /** Cuts a drawn wire; all cuts at spots come before all else. */
    String cutWire(BoardChange.Cut change, Spot near) throws RefusedException {
        Spot at = null;
        Net net = null;
        for (Net n : nets.all()) {
            Spot on = NetCut.onWire(n, near);
            if (on != null && (at == null || on.at().distance(near.at()) < at.at().distance(near.at()))) {
                at = on;
                net = n;
            }
        }
        if (at == null || at.at().distance(near.at()) > PlaceResolver.REACH) {
            throw new RefusedException("there is no wire within " + (int) PlaceResolver.REACH + " points of "
                    + near.place().text());
        }
        for (CutMark cut : cuts) {
            if (cut.at().page() == at.page() && cut.at().at().distance(at.at()) <= NetPieces.TOUCH) {
                throw new RefusedException("the wire is cut at " + cut.at().place().text() + " already");
            }
        }
        return cutNet(change, net, at);
    }

    private String cutNet(BoardChange.Cut change, Net net, Spot at) throws RefusedException {
        Map<Pin, WorkingPin> pins = new IdentityHashMap<>();
        List<Pin> on = new ArrayList<>();
        for (WorkingPart part : parts.values()) {
            for (WorkingPin pin : part.pins) {
                if (net.id().equals(pin.pad)) {
                    pins.put(pin.drawn, pin);
                    on.add(pin.drawn);
                }
            }
        }
        NetCut.Sides sides = NetCut.cut(net, on, at, nets.freeId(net.id()));
        if (sides == null) {
            cuts.add(new CutMark(change, at, List.of(net.id())));
            return net.title() + " is cut at " + at.place().text() + " and hangs together all the same, another way";
        }
        nets.divide(sides.kept(), sides.other());
        sides.pins().forEach(p -> pins.get(p).pad = sides.other().id());
        cuts.add(new CutMark(change, at, List.of(sides.kept().id(), sides.other().id())));
        return net.title() + " is cut at " + at.place().text() + ": " + count(on.size() - sides.pins().size())
                + " on " + sides.kept().title() + ", " + count(sides.pins().size()) + " on " + sides.other().title();
    }

    private static String count(int pins) {
        return pins == 1 ? "1 pin" : pins + " pins";
    }

    private static String key(String ref) {
        return ref.toUpperCase(Locale.ROOT);
    }
}
