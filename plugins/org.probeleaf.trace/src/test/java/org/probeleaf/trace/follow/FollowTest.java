// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.Boards;
import org.probeleaf.trace.UnknownPlaceException;
import org.probeleaf.trace.follow.Followed.Node;

class FollowTest {

    private static final FollowOptions ALL = FollowOptions.all();

    /** A strobe into a memory, a gate and a resistor; behind the gate a transistor stage and a connector. */
    private static final Netlist BOARD = Boards.of(
            "IC1 Z80A 21=/RD 11=+5V 29=GND 22=/WR",
            "IC2 27C128 22=/RD 14=GND 28=+5V",
            "IC3 74LS32 1=/RD 2=/WR 3=N1 4=N1 5=N7 6=N8 9=N9 10=N9 8=N10",
            "R1 33 1=N1 2=N2",
            "R2 10k 1=N2 2=GND",
            "Q1 BC548 :B=N2 :C=N3 :E=GND",
            "R3 1k 1=N3 2=+5V",
            "J1 OUT 1=N3 2=GND",
            "TP1 - 1=/RD");

    @Test
    void follow_strobe_isATreeWithPinsAndEnds() {
        assertEquals(List.of("/RD ! FUNCTION@IC2.22",
                "  N1 by IC3.1>IC3.3",
                "    N8 by IC3.4>IC3.6",
                "    N2 by R1.1>R1.2",
                "      GND by R2.1>R2.2 ! GROUND",
                "      N3 by Q1.B>Q1.C ! CONNECTOR@J1.1",
                "        +5V by R3.1>R3.2 ! SUPPLY"), Trees.follow(BOARD, "IC1.21", ALL));
    }

    @Test
    void follow_upstream_isWhereItComesFrom() {
        assertEquals(List.of("N3",
                "  N2 by Q1.B>Q1.C",
                "    N1 by R1.1>R1.2",
                "      /RD by IC3.1>IC3.3 ! FUNCTION@IC1.21",
                "      /WR by IC3.2>IC3.3 ! FUNCTION@IC1.22",
                "    GND by R2.2>R2.1 ! GROUND",
                "  +5V by R3.2>R3.1 ! SUPPLY"), Trees.follow(BOARD, "J1.1", ALL.with(Flow.UPSTREAM)));
    }

    @Test
    void follow_seriesOnly_stopsAtGatesAndTransistors() {
        assertEquals(List.of("N1 ! NOT_ASKED@IC3.4", "  N2 by R1.1>R1.2 ! NOT_ASKED@Q1.B",
                "    GND by R2.1>R2.2 ! GROUND"), Trees.follow(BOARD, "net:N1", FollowOptions.seriesOnly()));
    }

    @Test
    void follow_netOnly_staysOnTheNet() {
        assertEquals(List.of("N1 ! NOT_ASKED@IC3.4 NOT_ASKED@R1.1"),
                Trees.follow(BOARD, "net:N1", FollowOptions.netOnly()));
    }

    @Test
    void follow_steps_haveTheirReasons() {
        Followed tree = SignalNetwork.of(BOARD, PartBook.standard()).follow(Place.parse("IC1.21"), ALL);
        assertEquals(List.of("through gate A of IC3 (74LS32, OR): pin 1 drives pin 3",
                "through gate B of IC3 (74LS32, OR): pin 4 drives pin 6", "through R1 (33 \u03a9, series)",
                "through R2 (10 k\u03a9, series)", "through transistor Q1 (BC548), base to collector, inverted",
                "through R3 (1 k\u03a9, series)"),
                tree.nodes().stream().filter(n -> n.step() != null).map(n -> n.step().reason()).toList());
        assertEquals(List.of("IC2 (27C128), a 16K x 8 EPROM, takes it in at pin 22 (/OE)", "GND is ground",
                "leaves the sheet at pin 1 of connector J1 (OUT)", "+5V is a supply"),
                tree.nodes().stream().flatMap(n -> n.stops().stream()).map(Stop::reason).toList());
        assertFalse(tree.cut());
    }

    /** A gate does not lead from its output to its input, nor from one section to another. */
    @ParameterizedTest
    @CsvSource({"net:N8, DOWNSTREAM, N8", "net:N9, DOWNSTREAM, N9 N10", "net:N10, DOWNSTREAM, N10",
        "net:N10, UPSTREAM, N10 N9", "net:N7, DOWNSTREAM, N7 N8"})
    void follow_gate_onlyInItsDirectionAndSection(String from, Flow flow, String nets) {
        Followed tree = SignalNetwork.of(BOARD, PartBook.standard()).follow(Place.parse(from), ALL.with(flow));
        assertEquals(nets, String.join(" ", tree.nodes().stream().map(n -> n.net().title()).toList()));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "C1 22n 1=N1 2=N2                | through C1 (22 nF, series)",
        "L1 10u 1=N1 2=N2                | through L1 (10u, series)",
        "FB1 - 1=N1 2=N2                 | through FB1 (series)",
        "F1 1A 1=N1 2=N2                 | through F1 (1A, series)",
        "JP1 - 1=N1 2=N2                 | through JP1 (series)",
        "JP1 - 1=N3 2=N1 3=N2            | through JP1 (as its link is set)",
        "SW1 RESET 1=N1 2=N2             | through SW1 (RESET, as its contacts stand)",
        "D3 1N4148 1:A=N1 2:K=N2         | through diode D3 (1N4148), anode to cathode",
        "D3 - :A=N1 :K=N2                | through diode D3, anode to cathode",
        "D3 1N4148 1=N1 2=N2             | through D3 (1N4148, which end is the anode is not known)",
        "Q1 BC548 :B=N1 :E=N2 :C=+5V     | through transistor Q1 (BC548), base to emitter, following",
        "Q1 2N7000 :G=N5 :D=N1 :S=N2     | through transistor Q1 (2N7000), drain to source",
        "TR1 BC548 B=N1 C=N2 E=GND       | through transistor TR1 (BC548), base to collector, inverted",
        "T1 BSS84 1:G=N1 2:D=N2 3:S=+5V  | through transistor T1 (BSS84), gate to drain, inverted",
        "LED1 RED 1:A=N1 2:K=N2          | through diode LED1 (RED), anode to cathode",
        "XX1 - 1=N1 2=N2                 | through XX1 (what kind of part it is is not known)",
        "IC1 74LS74 2=N1 3=N7 5=N2       | through flip-flop A of IC1 (74LS74): pin 2 drives pin 5",
        "IC1 74LS74 2=N7 3=N1 5=N2       | through flip-flop A of IC1 (74LS74): pin 3 (clock) works on pin 5",
        "IC1 74HC373 3=N1 2=N2 11=N7 1=GND | through latch 1 of IC1 (74HC373): pin 3 drives pin 2",
        "IC1 74LS244 2=N1 18=N2 1=N7     | through buffer 1.1 of IC1 (74LS244): pin 2 drives pin 18, while pin 1 enables it",
        "IC1 74LS138 1=N1 15=N2          | through decoder IC1 (74LS138): pin 1 drives pin 15",
        "IC1 74161 2=N1 14=N2            | through counter IC1 (74161): pin 2 (clock) works on pin 14",
        "IC1 74LS245 2=N1 18=N2 1=+5V 19=GND | through transceiver 1 of IC1 (74LS245): pin 2 drives pin 18",
        "IC1 74LS245 2=N2 18=N1 1=GND 19=GND | through transceiver 1 of IC1 (74LS245): pin 18 drives pin 2"})
    void follow_part_saysHowItLeadsOn(String line, String reason) {
        Followed tree = SignalNetwork.of(Boards.of(line, "TP1 - 1=N1", "TP2 - 1=N2"), PartBook.standard())
                .follow(Place.parse("net:N1"), ALL);
        Node reached = tree.root().next().stream().filter(n -> n.net().id().equals("N2")).findFirst().orElseThrow();
        assertEquals(reason, reached.step().reason());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "D3 1N4148 1:K=N1 2:A=N2      | AGAINST    | D3 (1N4148) conducts the other way only, from N2",
        "R1 1k 1=N1 2                 | OPEN       | the other end of R1 (1k) is on no net",
        "X1 4MHz 1=N1 2=N2            | USED       | ends in crystal X1 (4MHz)",
        "T1 PULSE 1=N1 2=N2 3=N3 4=N4 | USED       | ends in transformer T1 (PULSE)",
        "XX1 - 1=N1 2=N2 3=N3         | FUNCTION   | what XX1 does at pin 1 is not in the part book",
        "LS1 8R 1=N1 2=N2             | USED       | ends in transducer LS1 (8R)",
        "IC9 LM358 3=N1 1=N2          | FUNCTION   | what IC9 (LM358) does at pin 3 is not in the part book",
        "RN1 10k 1=N1 2=N2 3=N3 4=N4  | PAIRS      | which pin of RN1 (10k) goes with pin 1 is not known",
        "IC1 74LS244 2=N1 18=N2 1=+5V | DISABLED   | pin 18 (1Y1) of IC1 (74LS244) is switched off for good: its enable is on a supply",
        "IC1 74LS244 1=N1 18=N2 2=N3  | ENABLE     | pin 1 (/1G) of IC1 (74LS244) only switches output 18 on and off",
        "IC1 74LS245 1=N1 18=N2 2=N3  | ENABLE     | pin 1 (DIR) of IC1 (74LS245) turns its direction",
        "IC1 74LS04 1=N1 2            | OPEN       | what pin 1 (1A) of IC1 (74LS04) works on is on no net",
        "J1 - 1=N1 2=N2               | CONNECTOR  | leaves the sheet at pin 1 of connector J1"})
    void follow_partThatLeadsNowhere_saysWhy(String line, StopKind kind, String reason) {
        Followed tree = SignalNetwork.of(Boards.of(line, "TP1 - 1=N1"), PartBook.standard())
                .follow(Place.parse("net:N1"), ALL);
        assertEquals(List.of(), tree.root().next());
        assertEquals(List.of(kind + " " + reason), tree.root().stops().stream().map(s -> s.kind() + " " + s.reason())
                .toList());
    }

    @Test
    void follow_enablesAsked_leadToTheOutputs() {
        Netlist board = Boards.of("IC1 74LS244 1=N1 18=N2 2=N3");
        assertEquals(List.of("N1", "  N2 by IC1.1>IC1.18"), Trees.follow(board, "net:N1", ALL.withEnables(true)));
    }

    /** A diode at a pulled-up line hands a low on against its arrow. */
    @Test
    void follow_diodeAtAPullUp_pullsItDown() {
        Netlist board = Boards.of("D1 - :A=N2 :K=N1", "R1 10k 1=N2 2=+5V");
        assertEquals(List.of("N1", "  N2 by D1.K>D1.A", "    +5V by R1.1>R1.2 ! SUPPLY"),
                Trees.follow(board, "net:N1", ALL));
    }

    @Test
    void follow_netMetAgain_saysWhereItStands() {
        Netlist board = Boards.of("R1 1k 1=N1 2=N2", "R2 1k 1=N1 2=N3", "R3 1k 1=N2 2=N3");
        Followed tree = SignalNetwork.of(board, PartBook.standard()).follow(Place.parse("net:N1"), ALL);
        assertEquals(List.of("N1", "  N2 by R1.1>R1.2", "    N3 by R3.1>R3.2 ! SHOWN", "  N3 by R2.1>R2.2",
                "    N2 by R3.2>R3.1 ! SHOWN"), Trees.lines(tree));
        assertEquals("already shown at R2.2", tree.nodes().get(2).stops().get(0).reason());
        assertTrue(tree.nodes().get(2).shownElsewhere());
    }

    @Test
    void follow_ring_comesBackToWhereItBegan() {
        Netlist board = Boards.of("IC1 74LS04 1=N1 2=N2 3=N2 4=N3 5=N3 6=N1");
        Followed tree = SignalNetwork.of(board, PartBook.standard()).follow(Place.parse("net:N1"), ALL);
        assertEquals(List.of("N1", "  N2 by IC1.1>IC1.2", "    N3 by IC1.3>IC1.4", "      N1 by IC1.5>IC1.6 ! SHOWN"),
                Trees.lines(tree));
        assertEquals("already shown: this is where it began", tree.nodes().get(3).stops().get(0).reason());
    }

    @Test
    void follow_drivenNetBehindAResistor_endsThere() {
        Netlist board = Boards.of("IC1 74LS04 1=N7 2=N1 3=N8 4=N2", "R1 1k 1=N1 2=N2", "R2 1k 1=N2 2=N3");
        assertEquals(List.of("N1", "  N2 by R1.1>R1.2 ! DRIVEN@IC1.4"), Trees.follow(board, "net:N1", ALL));
    }

    /** What a resistor brings to a driven net does not count; what its driver brings does, however it is met first. */
    @Test
    void follow_netMetAtAResistorFirst_isStillFollowedFromItsDriver() {
        Netlist board = Boards.of("IC1 74LS04 1=N0 2=N1 3=N1 4=N2", "R1 1k 1=N0 2=N2", "R2 1k 1=N2 2=N3");
        assertEquals(List.of("N0", "  N1 by IC1.1>IC1.2", "    N2 by IC1.3>IC1.4", "      N0 by R1.2>R1.1 ! SHOWN",
                "      N3 by R2.1>R2.2", "  N2 by R1.1>R1.2 ! DRIVEN@IC1.4"), Trees.follow(board, "net:N0", ALL));
    }

    @Test
    void follow_bus_isNotLeft() {
        Netlist board = Boards.of("R1 33 1=N1 2=D0", "IC1 Z80A 14=D0", "IC2 6116 9=D0", "IC3 27C128 11=D0",
                "IC4 74LS04 1=D0 2=N5");
        Followed tree = SignalNetwork.of(board, PartBook.standard()).follow(Place.parse("net:N1"), ALL);
        assertEquals(List.of("N1", "  D0 by R1.1>R1.2 ! BUS"), Trees.lines(tree));
        Stop stop = tree.nodes().get(1).stops().get(0);
        assertEquals(3, stop.count());
        assertEquals("D0 is a bus that 3 parts drive by turns", stop.reason());
        assertEquals(List.of("D0 ! FUNCTION@IC1.14 FUNCTION@IC2.9", "  N1 by R1.2>R1.1", "  N5 by IC4.1>IC4.2"),
                Trees.follow(board, "net:D0", ALL));
    }

    @Test
    void follow_manyPlaces_stopWithTheirCount() {
        String[] lines = IntStream.range(0, 21).mapToObj(i -> i == 20 ? "R1 33 1=N100 2=N0"
                : "R" + (i + 2) + " 1k 1=N0 2=N" + (i + 1)).toArray(String[]::new);
        Followed tree = SignalNetwork.of(Boards.of(lines), PartBook.standard()).follow(Place.parse("net:N100"), ALL);
        assertEquals(List.of("N100", "  N0 by R1.1>R1.2 ! FAN_OUT"), Trees.lines(tree));
        assertEquals(20, tree.nodes().get(1).stops().get(0).count());
        assertEquals("N0 goes on to 20 places, more than the 16 that are followed",
                tree.nodes().get(1).stops().get(0).reason());
        assertTrue(tree.cut());
        assertEquals(22, SignalNetwork.of(Boards.of(lines), PartBook.standard())
                .follow(Place.parse("net:N100"), ALL.withLimits(20, 24, 400)).nodes().size());
    }

    @Test
    void follow_limits_areKeptAndSaid() {
        String[] lines = IntStream.range(0, 50).mapToObj(i -> "R" + (i + 1) + " 1k 1=N" + i + " 2=N" + (i + 1))
                .toArray(String[]::new);
        SignalNetwork network = SignalNetwork.of(Boards.of(lines), PartBook.standard());
        Followed shallow = network.follow(Place.parse("net:N0"), ALL.withLimits(16, 5, 400));
        assertEquals(List.of(6, true), List.of(shallow.nodes().size(), shallow.cut()));
        assertEquals("followed through 5 parts, as far as was asked", shallow.nodes().get(5).stops().get(0).reason());
        Followed small = network.follow(Place.parse("net:N0"), ALL.withLimits(16, 100, 10));
        assertEquals(List.of(10, true), List.of(small.nodes().size(), small.cut()));
        assertEquals(StopKind.SIZE, small.nodes().get(9).stops().get(0).kind());
        Followed whole = network.follow(Place.parse("net:N0"), ALL.withLimits(16, 100, 400));
        assertEquals(List.of(51, false), List.of(whole.nodes().size(), whole.cut()));
        assertEquals(51, whole.wayTo(whole.nodes().get(50)).size());
    }

    @Test
    void follow_placeThatIsNone_saysWhy() {
        SignalNetwork network = SignalNetwork.of(BOARD, PartBook.standard());
        UnknownPlaceException e = assertThrows(UnknownPlaceException.class,
                () -> network.follow(Place.parse("IC77"), ALL));
        assertTrue(e.getMessage().contains("no part IC77"), e.getMessage());
    }

    @Test
    void options_wrongLimits_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> ALL.withLimits(0, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> ALL.withLimits(1, -1, 1));
        assertThrows(IllegalArgumentException.class, () -> ALL.withLimits(1, 1, 0));
    }
}
