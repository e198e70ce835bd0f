// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import org.probeleaf.job.mark.Anchor;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;

/**
 * What the person points at.
 *
 * @param page  1-based
 * @param at    the spot on the page, in points
 * @param place how it is named in the job
 * @param net   the net there, or null
 * @param part  the part there, or null
 * @param pin   the pin there, or null
 */
public record Selection(int page, Point at, Place place, Net net, Part part, Pin pin) {

    /** A bare spot. */
    public static Selection spot(int page, Point at) {
        return new Selection(page, at, new Place.OnPage(page, at.x(), at.y()), null, null, null);
    }

    /**
     * A drawn pin.
     *
     * @param net its net, or null
     */
    public static Selection pin(Part part, Pin pin, Net net) {
        Place place = pin.number() == null && pin.name() == null
                ? new Place.OnPage(pin.page(), pin.at().x(), pin.at().y()) : new Place.OfPin(part.ref(), pin.label());
        return new Selection(pin.page(), pin.at(), place, net, part, pin);
    }

    /** Where a mark made here is pinned. */
    public Anchor anchor() {
        return new Anchor(page, at);
    }
}
