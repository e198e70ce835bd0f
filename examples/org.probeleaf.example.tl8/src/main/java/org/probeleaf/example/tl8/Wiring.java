// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import java.util.List;

import org.probeleaf.example.tl8.sheet.Page;
import org.probeleaf.example.tl8.sheet.Placed;
import org.probeleaf.example.tl8.sheet.Spot;

/** Habits of wiring that recur on both pages. */
final class Wiring {

    private Wiring() {
    }

    /**
     * Leads the pins of a part into an upright bus, one labelled wire each, with a slanted end.
     *
     * @param part   the part
     * @param pins   numbers of its pins, in the order of the names
     * @param name   what the members are called, before their number
     * @param busX   column of the bus
     * @param labelX column where the names start
     */
    static void members(Page page, Placed part, List<String> pins, String name, int busX, int labelX) {
        for (int i = 0; i < pins.size(); i++) {
            Spot pin = part.pin(pins.get(i));
            int step = busX > pin.x() ? 2 : -2;
            page.wire(pin).toX(busX - step).slant(step, -2).done();
            page.label(name + i, labelX, pin.y());
        }
    }

    /** A short wire from a pin to the left that bears a name. */
    static void named(Page page, Spot pin, int length, String name) {
        page.wire(pin).right(-length).done();
        page.label(name, pin.plus(-length, 0));
    }
}
