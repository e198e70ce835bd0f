// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.Boards;
import org.probeleaf.trace.SignalGraph;
import org.probeleaf.trace.SignalPath;

class PathsTest {

    private static final FollowOptions EVERYTHING = FollowOptions.all().withEnables(true);

    /** A strobe into memory and a gate; the gate's output through a resistor into a transistor. */
    private static final Netlist BOARD = Boards.of(
            "IC1 Z80A 21=/RD 11=+5V 29=GND 14=N7 22=/WR",
            "IC2 27C128 22=/RD 14=GND 28=+5V 11=N7",
            "IC3 74LS32 1=/RD 2=/WR 3=N1 4=N9 5=N9 6=N8",
            "R1 4k7 1=N1 2=N2",
            "R2 10k 1=N2 2=GND",
            "R3 10k 1=N9 2=GND",
            "Q1 BC548 :B=N2 :C=OUT :E=GND",
            "D1 1N4148 =OUT =N5",
            "TP1 - 1=/RD",
            "J1 - 1=OUT 2=GND 3");
    private final SignalNetwork network = SignalNetwork.of(BOARD, PartBook.standard());

    @ParameterizedTest
    @CsvSource({
        "IC1.21, IC2.22, IC1.21 > net:/RD > IC2.22",
        "IC1.21, Q1.B, IC1.21 > net:/RD > IC3.1 > IC3.3 > net:N1 > R1.1 > R1.2 > net:N2 > Q1.B",
        "net:/RD, net:OUT, net:/RD > IC3.1 > IC3.3 > net:N1 > R1.1 > R1.2 > net:N2 > Q1.B > Q1.C > net:OUT",
        "IC3.3, D1, IC3.3 > net:N1 > R1.1 > R1.2 > net:N2 > Q1.B > Q1.C > net:OUT > D1",
        "IC3.1, IC3.3, IC3.1 > IC3.3"})
    void paths_throughGateResistorTransistor_areFound(String from, String to, String path) {
        assertEquals("[" + path + "]", paths(from, to));
    }

    @ParameterizedTest
    @CsvSource({"Q1.B, IC1.21", "IC1.21, IC3.6", "IC1.21, R3", "IC1.21, IC1.14"})
    void paths_againstAGateOrOverASupplyOrThroughAProcessor_areNone(String from, String to) {
        assertEquals("[]", paths(from, to));
    }

    /** Whatever the board: a path begins and ends where asked, and steps along nets and within parts only. */
    @Property(tries = 200)
    void paths_anyBoard_stepAlongNetsAndParts(@ForAll("boards") Netlist board) {
        SignalNetwork n = SignalNetwork.of(board, PartBook.standard());
        SignalGraph g = n.signals();
        for (SignalPath path : n.paths(Place.parse("IC1.1"), Place.parse("IC4.3"), EVERYTHING, 20)) {
            List<Place> p = path.places();
            assertEquals("IC1.1", p.get(0).text());
            assertEquals("IC4.3", p.get(p.size() - 1).text());
            Set<String> seen = new HashSet<>();
            for (int i = 0; i < p.size(); i++) {
                assertTrue(seen.add(p.get(i).text()), () -> "comes back: " + p);
                assertTrue(i == 0 || together(g, p.get(i - 1), p.get(i)), () -> "jumps: " + p);
            }
        }
    }

    @Provide
    Arbitrary<Netlist> boards() {
        Arbitrary<String> net = Arbitraries.of("N1", "N2", "N3", "N4", "N5", "N6", "GND");
        return net.list().ofSize(16).map(n -> Boards.of(
                "IC1 74LS08 1=" + n.get(0) + " 2=" + n.get(1) + " 3=" + n.get(2),
                "IC2 74LS04 1=" + n.get(3) + " 2=" + n.get(4) + " 3=" + n.get(5) + " 4=" + n.get(6),
                "R1 1k 1=" + n.get(7) + " 2=" + n.get(8),
                "C1 1n 1=" + n.get(9) + " 2=" + n.get(10),
                "Q1 BC548 :B=" + n.get(11) + " :C=" + n.get(12) + " :E=" + n.get(13),
                "IC4 74LS00 1=" + n.get(14) + " 3=" + n.get(15)));
    }

    private static boolean together(SignalGraph g, Place a, Place b) {
        boolean samePart = a instanceof Place.OfPin p && b instanceof Place.OfPin q && p.ref().equals(q.ref());
        return samePart || g.netAt(a).equals(g.netAt(b));
    }

    private String paths(String from, String to) {
        return network.paths(Place.parse(from), Place.parse(to), EVERYTHING, 20).stream()
                .map(p -> String.join(" > ", p.places().stream().map(Place::text).toList())).toList().toString();
    }
}
