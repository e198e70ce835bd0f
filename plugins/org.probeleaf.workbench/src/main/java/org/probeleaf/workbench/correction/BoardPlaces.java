// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.correction;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.workbench.session.Selection;

/** How what is pointed at is named in a change of the board. */
final class BoardPlaces {

    private BoardPlaces() {
    }

    /**
     * The pin that is pointed at; one of two pins without numbers is counted.
     *
     * @throws IllegalArgumentException with one sentence for a person where it cannot be named
     */
    static Place.OfPin pin(Selection s) {
        Part part = s.part();
        Pin pin = s.pin();
        if (part == null || pin == null) {
            throw new IllegalArgumentException("Point at a pin.");
        }
        if (pin.number() != null || pin.name() != null) {
            return new Place.OfPin(part.ref(), pin.label());
        }
        if (part.pins().size() == 2) {
            return new Place.OfPin(part.ref(), String.valueOf(part.pins().indexOf(pin) + 1));
        }
        throw new IllegalArgumentException("That pin of " + part.ref()
                + " has no number; letter the pin first (Correct menu).");
    }

    /** A pin by its name, a wire by the spot: nets may be called otherwise when the sheets are read again. */
    static Place place(Selection s) {
        return Task.isPin(s) ? pin(s) : new Place.OnPage(s.page(), tenth(s.at().x()), tenth(s.at().y()));
    }

    /** The part that is pointed at. */
    static String ref(Selection s) {
        return s.part().ref();
    }

    /**
     * A designator as typed.
     *
     * @throws IllegalArgumentException with one sentence for a person where it is none
     */
    static String designator(String typed) {
        if (!typed.isBlank() && Place.parse(typed) instanceof Place.OfPart part) {
            return part.ref();
        }
        throw new IllegalArgumentException("Type a designator, such as R99.");
    }

    /**
     * A value as typed.
     *
     * @throws IllegalArgumentException with one sentence for a person where nothing was typed
     */
    static String said(String typed) {
        if (typed.isBlank()) {
            throw new IllegalArgumentException("Type the value that is on the board.");
        }
        return typed.strip();
    }

    private static double tenth(double points) {
        return Math.round(points * 10) / 10.0;
    }
}
