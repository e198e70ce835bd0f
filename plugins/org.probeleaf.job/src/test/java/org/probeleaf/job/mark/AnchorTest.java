// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.schematic.place.Place;

class AnchorTest {

    private static final Netlist NETLIST = new Netlist("b.pdf", "", List.of(),
            List.of(new Part("IC4", "Z80", List.of(new PartUnit(null, 2, new Box(10, 10, 30, 50))), List.of(
                    Pin.drawn("21", "/RD", null, 2, new Point(35, 20), "N1"),
                    new Pin("29", "GND", null, 2, null, "N2", true)))),
            List.of(new Net("N1", "/RD", List.of(1, 2), List.of(
                    new Wire(2, List.of(new Point(35, 20), new Point(300, 20))),
                    new Wire(1, List.of(new Point(0, 0), new Point(10, 0), new Point(10, 40)))), List.of(), List.of(),
                    1)),
            List.of());

    private static Optional<Anchor> find(String place) {
        return Anchor.of(Place.parse(place), NETLIST);
    }

    @Test
    void of_eachSortOfPlace_theSpotOnTheSheet() {
        assertEquals(Optional.of(new Anchor(2, new Point(35, 20))), find("IC4.21"));
        assertEquals(Optional.of(new Anchor(2, new Point(35, 20))), find("IC4./RD"));
        assertEquals(Optional.of(new Anchor(2, new Point(20, 30))), find("IC4.29"));
        assertEquals(Optional.of(new Anchor(2, new Point(20, 30))), find("ic4"));
        assertEquals(Optional.of(new Anchor(1, new Point(10, 20))), find("net:/RD"));
        assertEquals(Optional.of(new Anchor(1, new Point(10, 20))), find("net:N1"));
        assertEquals(Optional.of(new Anchor(3, new Point(1, 2.5))), find("3@1,2.5"));
    }

    @Test
    void of_whatIsNotThere_empty() {
        assertEquals(Optional.empty(), find("IC5"));
        assertEquals(Optional.empty(), find("IC4.99"));
        assertEquals(Optional.empty(), find("net:/WR"));
        assertEquals(Optional.empty(), Anchor.of(Place.parse("IC4"), null));
    }
}
