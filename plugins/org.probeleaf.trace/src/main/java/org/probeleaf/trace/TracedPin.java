// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace;

import java.util.Comparator;

import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.place.Place;

/**
 * A pin on a net.
 *
 * @param part      the part it belongs to
 * @param pin       as the netlist has it
 * @param direction which way it works
 * @param name      as printed, else as the part book has it, or null
 */
public record TracedPin(Part part, Pin pin, PinDirection direction, String name) {

    /** Drivers first, then by page, designator and number, the numbers in them by their size. */
    public static final Comparator<TracedPin> BY_PLACE = Comparator
            .comparing((TracedPin p) -> p.direction() != PinDirection.OUT)
            .thenComparing(p -> p.pin().page())
            .thenComparing(p -> p.part().ref(), NaturalOrder.INSTANCE)
            .thenComparing(p -> p.pin().label(), NaturalOrder.INSTANCE);

    /** The pin as a place; the part where the sheet prints neither number nor name. */
    public Place place() {
        return pin.number() == null && pin.name() == null ? new Place.OfPart(part.ref())
                : new Place.OfPin(part.ref(), pin.label());
    }
}
