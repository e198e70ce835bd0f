// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.partbook.PinType;
import org.probeleaf.schematic.place.Place;

/**
 * A pin on a node.
 *
 * @param index     its place among the terminals
 * @param part      index of its part
 * @param pin       as the netlist has it
 * @param type      what the part book knows of it, or null
 * @param direction which way it works
 * @param node      index of its node
 * @param place     as a person names it
 */
public record Terminal(int index, int part, Pin pin, PinType type, PinDirection direction, int node, Place place) {

    /** Number or name of the pin; of a bare pin of a part with two, 1 or 2. */
    public String label() {
        return place instanceof Place.OfPin p ? p.pin() : null;
    }

    /** What to call it in a sentence ({@code "IC5.8"}). */
    public String title() {
        return place.text();
    }
}
