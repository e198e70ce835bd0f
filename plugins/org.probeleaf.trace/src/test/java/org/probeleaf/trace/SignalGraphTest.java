// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;

class SignalGraphTest {

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
    private final SignalGraph graph = SignalGraph.of(BOARD, PartBook.standard());

    @Test
    void trace_pin_tellsDriversLoadsAndTheRest() {
        NetTrace trace = graph.trace(Place.parse("IC2.22"));
        assertEquals("/RD", trace.net().name());
        assertEquals("[IC1.21]", places(trace.drivers()));
        assertEquals("[IC2.22, IC3.1]", places(trace.loads()));
        assertEquals("[IC1.21, IC2.22, IC3.1, TP1.1]", places(trace.pins()));
    }

    @Test
    void trace_pinWithoutPrintedName_takesItFromThePartBook() {
        assertEquals("/OE", graph.trace(Place.parse("IC2.22")).loads().get(0).name());
    }

    @ParameterizedTest
    @CsvSource({"IC1.21, /RD", "ic1.21, /RD", "net:/RD, /RD", "net:/rd, /RD", "net:RD, /RD", "net:N1, N1",
        "TP1, /RD", "Q1.B, N2", "D1.1, OUT", "D1.2, N5", "'1@198,3', /RD"})
    void netAt_placeAsPeopleWriteIt_isFound(String at, String net) {
        assertEquals(net, graph.netAt(Place.parse(at)).orElseThrow().title());
    }

    @ParameterizedTest
    @CsvSource({"IC1, name one of its pins, such as IC1.21", "IC99, no part IC99", "IC1.99, has no pin 99",
        "net:XYZ, no net XYZ", "J1.3, is on no net", "'1@150,3', no net within"})
    void trace_placeThatIsNone_saysWhy(String at, String why) {
        UnknownPlaceException e = assertThrows(UnknownPlaceException.class, () -> graph.trace(Place.parse(at)));
        assertTrue(e.getMessage().contains(why), e.getMessage());
        assertTrue(graph.netAt(Place.parse(at)).isEmpty());
    }

    /** Every pin of a net finds the same pins. */
    @Property(tries = 200)
    void trace_fromAnyPinOfANet_isTheSame(@ForAll("boards") Netlist board) {
        SignalGraph g = SignalGraph.of(board, PartBook.standard());
        board.nets().forEach(net -> g.pinsOn(net.id()).forEach(pin ->
                assertEquals(g.pinsOn(net.id()), g.trace(pin.place()).pins())));
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

    private static String places(List<TracedPin> pins) {
        return pins.stream().map(p -> p.place().text()).toList().toString();
    }
}
