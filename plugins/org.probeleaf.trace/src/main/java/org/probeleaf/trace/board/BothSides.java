// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;

/**
 * A pin that is off its pad, with the two places to measure: the pin alone, and the net that it was on without it. If
 * the pin drives, the first tells what the driver does without its loads and the second what the loads do without the
 * driver; if it listens, the second tells whether the net recovers without it.
 *
 * @param pin    the pin
 * @param onPin  the pin itself, as a place
 * @param onPad  a place on the net that it was on, or null where the drawing has it on none: the end of the wire at the
 *               pad where one is drawn there, else another pin of the net, else the net
 * @param padPins the pins that are on that net now, as places, in the order of people
 */
public record BothSides(LoosePin pin, Place.OfPin onPin, Place onPad, List<Place.OfPin> padPins) {

    public BothSides {
        padPins = List.copyOf(padPins);
    }

    static BothSides of(LoosePin loose, Netlist board) {
        Place.OfPin own = place(loose.part().ref(), loose.part().pins(), loose.pin());
        Net pad = loose.pad();
        List<Place.OfPin> others = new ArrayList<>();
        if (pad != null) {
            board.parts().forEach(part -> part.pins().stream().filter(p -> pad.id().equals(p.net()))
                    .forEach(p -> others.add(place(part.ref(), part.pins(), p))));
            others.sort((a, b) -> NaturalOrder.INSTANCE.compare(a.text(), b.text()));
        }
        return new BothSides(loose, own, pad == null ? null : onPad(loose, pad, others), others);
    }

    private static Place onPad(LoosePin loose, Net pad, List<Place.OfPin> others) {
        if (loose.pin().at() != null) {
            Spot end = new Spot(loose.pin().page(), loose.pin().at());
            Spot wire = NetCut.onWire(pad, end);
            if (wire != null && wire.at().distance(end.at()) <= NetPieces.TOUCH) {
                return wire.place();
            }
        }
        return others.isEmpty() ? new Place.OfNet(pad.title()) : others.get(0);
    }

    /** A pin without number and name is counted. */
    private static Place.OfPin place(String ref, List<Pin> pins, Pin pin) {
        boolean bare = pin.number() == null && pin.name() == null;
        return new Place.OfPin(ref, bare ? String.valueOf(pins.indexOf(pin) + 1) : pin.label());
    }
}
