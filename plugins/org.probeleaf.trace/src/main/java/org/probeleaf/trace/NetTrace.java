// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace;

import java.util.List;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.place.Place;

/**
 * Everything that a net touches.
 *
 * @param from the place that was asked about
 * @param net  the net there
 * @param pins all pins on it, drivers first, then by page and designator
 */
public record NetTrace(Place from, Net net, List<TracedPin> pins) {

    public NetTrace {
        pins = List.copyOf(pins);
    }

    /** The pins that drive the net, always or when enabled. */
    public List<TracedPin> drivers() {
        return going(PinDirection.OUT);
    }

    /** The pins that listen to the net. */
    public List<TracedPin> loads() {
        return going(PinDirection.IN);
    }

    /** The pins that work in the given direction. */
    public List<TracedPin> going(PinDirection direction) {
        return pins.stream().filter(p -> p.direction() == direction).toList();
    }
}
