// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Wire;

class NetLocatorTest {

    @Test
    void netAt_besideAWire_isItsNetWithinTheTolerance() {
        NetLocator locator = NetLocator.of(netlist(List.of(new Wire(2, List.of(new Point(0, 0), new Point(500, 0))))));
        assertEquals("N0", locator.netAt(2, new Point(250, 3), 3).orElseThrow().id());
        assertTrue(locator.netAt(2, new Point(250, 3.01), 3).isEmpty());
        assertTrue(locator.netAt(1, new Point(250, 0), 3).isEmpty());
    }

    @Test
    void netAt_pinWithoutWire_isThePinsNet() {
        NetLocator locator = NetLocator.of(Boards.of("IC1 - 1=A 2=B 3"));
        assertEquals("B", locator.netAt(1, new Point(301, 0), 2).orElseThrow().id());
        assertTrue(locator.netAt(1, new Point(400, 0), 2).isEmpty());
        assertEquals("3", locator.pinAt(1, new Point(400, 0), 2).orElseThrow().pin().number());
    }

    /** The index against looking at every wire. */
    @Property(tries = 500)
    void netAt_anySpot_isAsNearAsAnyNet(@ForAll("wires") List<Wire> wires,
            @ForAll @DoubleRange(min = -50, max = 650) double x, @ForAll @DoubleRange(min = -50, max = 650) double y,
            @ForAll @DoubleRange(min = 0, max = 60) double tolerance) {
        Point at = new Point(x, y);
        Optional<Net> found = NetLocator.of(netlist(wires)).netAt(1, at, tolerance);
        double nearest = wires.stream().mapToDouble(w -> distance(w, at)).min().orElse(Double.MAX_VALUE);
        if (Math.abs(nearest - tolerance) > 1e-9) {
            assertEquals(nearest < tolerance, found.isPresent());
            found.ifPresent(net -> assertEquals(nearest, distance(net.wires().get(0), at), 1e-9));
        }
    }

    @Provide
    Arbitrary<List<Wire>> wires() {
        Arbitrary<Double> length = Arbitraries.doubles().between(0, 600);
        Arbitrary<Point> point = Combinators.combine(length, length).as(Point::new);
        return point.list().ofMinSize(2).ofMaxSize(4).map(p -> new Wire(1, p)).list().ofMaxSize(12);
    }

    private static Netlist netlist(List<Wire> wires) {
        List<Net> nets = new ArrayList<>();
        for (Wire wire : wires) {
            nets.add(new Net("N" + nets.size(), null, List.of(wire.page()), List.of(wire), List.of(), List.of(), 1));
        }
        return new Netlist("", "", List.of(), List.of(), nets, List.of());
    }

    private static double distance(Wire wire, Point at) {
        double least = Double.MAX_VALUE;
        for (int i = 1; i < wire.points().size(); i++) {
            least = Math.min(least, new java.awt.geom.Line2D.Double(wire.points().get(i - 1).x(),
                    wire.points().get(i - 1).y(), wire.points().get(i).x(), wire.points().get(i).y())
                    .ptSegDist(at.x(), at.y()));
        }
        return least;
    }
}
