// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.util.Comparator;
import java.util.Optional;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.schematic.place.Place;

/**
 * The spot on a sheet that a mark is pinned to.
 *
 * @param page 1-based page
 * @param at   points from the top left of the page as displayed
 */
public record Anchor(int page, Point at) {

    /**
     * Finds the spot that a place names: a pin's end, the middle of a part's first unit, the middle of a net's longest
     * straight piece of wire on its first page (or its first drawn label or pin), the spot itself.
     *
     * @param place   what a person named
     * @param netlist what the sheets say; may be null before recognition, when only spots are found
     * @return the spot, or empty where the netlist has no such part, pin or net
     */
    public static Optional<Anchor> of(Place place, Netlist netlist) {
        if (place instanceof Place.OnPage spot) {
            return Optional.of(new Anchor(spot.page(), new Point(spot.x(), spot.y())));
        }
        if (netlist == null) {
            return Optional.empty();
        }
        if (place instanceof Place.OfPart p) {
            return netlist.part(p.ref()).map(Anchor::ofPart);
        }
        if (place instanceof Place.OfPin p) {
            return netlist.part(p.ref()).flatMap(part -> ofPin(part, p.pin()));
        }
        String name = ((Place.OfNet) place).net();
        return netlist.net(name)
                .or(() -> netlist.nets().stream().filter(n -> name.equals(n.name())).findFirst())
                .or(() -> netlist.nets().stream().filter(n -> name.equalsIgnoreCase(n.name())).findFirst())
                .flatMap(net -> ofNet(net, netlist));
    }

    private static Anchor ofPart(Part part) {
        return new Anchor(part.units().get(0).page(), part.units().get(0).box().centre());
    }

    private static Optional<Anchor> ofPin(Part part, String label) {
        Optional<Pin> pin = part.pins().stream().filter(p -> label.equals(p.number())).findFirst()
                .or(() -> part.pins().stream().filter(p -> label.equalsIgnoreCase(p.name())).findFirst())
                .or(() -> counted(part, label));
        return pin.map(p -> p.at() != null ? new Anchor(p.page(), p.at()) : ofPart(part));
    }

    /** Where the sheet prints neither numbers nor names, as at resistors, the pins are counted. */
    private static Optional<Pin> counted(Part part, String label) {
        boolean bare = part.pins().size() == 2
                && part.pins().stream().allMatch(p -> p.number() == null && p.name() == null);
        return bare && label.matches("[12]") ? Optional.of(part.pins().get(label.charAt(0) - '1')) : Optional.empty();
    }

    private static Optional<Anchor> ofNet(Net net, Netlist netlist) {
        Optional<Anchor> onWire = net.wires().stream().min(Comparator.comparingInt(Wire::page))
                .map(Wire::page).flatMap(page -> longestPiece(net, page));
        Optional<Anchor> onLabel = net.labels().stream().findFirst().map(l -> new Anchor(l.page(), l.at()));
        return onWire.or(() -> onLabel).or(() -> netlist.parts().stream()
                .flatMap(p -> p.pins().stream())
                .filter(p -> net.id().equals(p.net()) && p.at() != null)
                .findFirst().map(p -> new Anchor(p.page(), p.at())));
    }

    private static Optional<Anchor> longestPiece(Net net, int page) {
        Anchor best = null;
        double longest = -1;
        for (Wire wire : net.wires()) {
            for (int i = 1; wire.page() == page && i < wire.points().size(); i++) {
                Point a = wire.points().get(i - 1);
                Point b = wire.points().get(i);
                if (a.distance(b) > longest) {
                    longest = a.distance(b);
                    best = new Anchor(page, new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2));
                }
            }
        }
        return Optional.ofNullable(best);
    }
}
