// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.Boards;

class BoardStateTest {

    private static final Netlist BOARD = Boards.of(
            "IC1 Z80A 21=/RD 11=+5V 29=GND 22=/WR",
            "IC2 27C128 22=/RD 14=GND 28=+5V",
            "IC3 74LS32 1=/RD 2=/WR 3=N1 4",
            "R1 4k7 =N1 =N2",
            "R2 10k 1=N2 2=GND");

    /** Changes as a person would say them, for short tests. */
    static BoardChange change(String words) {
        String[] w = words.split(" ");
        return switch (w[0]) {
            case "lift" -> new BoardChange.Lift((Place.OfPin) Place.parse(w[1]));
            case "remove" -> new BoardChange.Remove(w[1]);
            case "fit" -> new BoardChange.Fit(w[1].split("=")[0], w[1].contains("=") ? w[1].split("=")[1] : null,
                    Arrays.stream(w).skip(2).map(Place::parse).toList());
            case "replace" -> new BoardChange.Replace(w[1], w.length < 3 ? null : w[2]);
            case "link" -> new BoardChange.Link(Place.parse(w[1]), Place.parse(w[2]));
            case "cut" -> new BoardChange.Cut(Place.parse(w[1]));
            case "value" -> new BoardChange.Value(w[1], w[2]);
            default -> throw new IllegalArgumentException(words);
        };
    }

    private static BoardState board(String... changes) {
        return BoardState.of(BOARD, Arrays.stream(changes).map(BoardStateTest::change).toList());
    }

    /** The pins of each net, by pin: what hangs together, whatever it is called. */
    static TreeSet<String> together(Netlist netlist) {
        Map<String, TreeSet<String>> nets = new TreeMap<>();
        netlist.parts().forEach(part -> {
            for (int i = 0; i < part.pins().size(); i++) {
                String label = part.pins().get(i).label();
                String pin = part.ref() + "." + (label.equals("?") ? String.valueOf(i + 1) : label);
                String net = part.pins().get(i).net();
                nets.computeIfAbsent(net == null ? "alone " + pin : net, n -> new TreeSet<>()).add(pin);
            }
        });
        TreeSet<String> all = new TreeSet<>();
        nets.values().forEach(pins -> all.add(String.join(" ", pins)));
        return all;
    }

    private static void checkNets(String expected, String... changes) {
        BoardState state = board(changes);
        state.outcomes().forEach(o -> assertTrue(o.done(), o.text()));
        List<String> several = new ArrayList<>(together(state.netlist()));
        several.removeIf(n -> !n.contains(" "));
        assertEquals(expected, String.join(", ", several));
    }

    @Test
    void of_noChange_isTheDrawingItself() {
        assertSame(BOARD, board().netlist());
        checkNets("IC1.11 IC2.28, IC1.21 IC2.22 IC3.1, IC1.22 IC3.2, IC1.29 IC2.14 R2.2, IC3.3 R1.1, R1.2 R2.1");
    }

    @Test
    void lift_pin_leavesItsNet() {
        checkNets("IC1.11 IC2.28, IC1.22 IC3.2, IC1.29 IC2.14 R2.2, IC2.22 IC3.1, IC3.3 R1.1, R1.2 R2.1",
                "lift IC1.21");
        assertTrue(board("lift IC1.21").isLifted("ic1", "21"));
        assertFalse(board("lift IC1.21").isLifted("IC1", "22"));
    }

    @Test
    void remove_part_takesItsPinsAndIsListedAsDrawn() {
        checkNets("IC1.11 IC2.28, IC1.21 IC2.22, IC1.29 IC2.14 R2.2, R1.2 R2.1", "remove IC3");
        assertEquals(List.of(BOARD.part("IC3").orElseThrow()), board("remove IC3").removed());
        assertTrue(board("remove IC3").netlist().part("IC3").isEmpty());
    }

    @Test
    void fit_removedPart_isTheDrawingAgain() {
        assertSame(BOARD, board("remove R1", "fit R1").netlist());
        assertEquals("2k2", board("remove R1", "fit R1=2k2").netlist().part("R1").orElseThrow().value());
        assertEquals(List.of(new ChangedValue("R1", "4k7", "2k2")), board("remove R1", "fit R1=2k2").values());
    }

    @Test
    void fit_newPart_joinsItsPinsOneByOne() {
        checkNets("IC1.11 IC2.28 R99.2, IC1.21 IC2.22 IC3.1 R99.1, IC1.22 IC3.2, IC1.29 IC2.14 R2.2, IC3.3 R1.1, "
                + "R1.2 R2.1", "fit R99=10k net:/RD IC1.11");
        assertEquals("R99", board("fit R99=10k net:/RD IC1.11").fitted().get(0).ref());
    }

    @Test
    void fit_betweenALiftedPinAndItsPad_putsThePartInSeries() {
        checkNets("IC1.11 IC2.28, IC1.21 R99.1, IC1.22 IC3.2, IC1.29 IC2.14 R2.2, IC2.22 IC3.1 R99.2, IC3.3 R1.1, "
                + "R1.2 R2.1", "lift IC1.21", "fit R99=100 IC1.21 net:/RD");
    }

    @Test
    void link_twoNets_areOneByBothNames() {
        BoardState state = board("link IC1.21 IC1.22");
        checkNets("IC1.11 IC2.28, IC1.21 IC1.22 IC2.22 IC3.1 IC3.2, IC1.29 IC2.14 R2.2, IC3.3 R1.1, R1.2 R2.1",
                "link IC1.21 IC1.22");
        assertEquals("/RD", state.netlist().part("IC1").orElseThrow().pins().get(3).net());
        assertEquals(List.of("/WR"), state.netlist().net("/RD").orElseThrow().labels().stream().map(l -> l.text())
                .toList());
    }

    @Test
    void link_overThePadsOfARemovedPart_joinsItsNets() {
        checkNets("IC1.11 IC2.28, IC1.21 IC2.22 IC3.1, IC1.22 IC3.2, IC1.29 IC2.14 R2.2, IC3.3 R2.1",
                "remove R1", "link R1.1 R1.2");
    }

    @Test
    void link_liftedPins_joinsThePinsAndNotTheirPads() {
        checkNets("IC1.11 IC2.28, IC1.21 IC1.22, IC1.29 IC2.14 R2.2, IC2.22 IC3.1, IC3.3 R1.1, R1.2 R2.1",
                "lift IC1.21", "lift IC1.22", "link IC1.21 IC1.22");
        assertEquals("IC1.21", board("lift IC1.21", "lift IC1.22", "link IC1.21 IC1.22").netlist().part("IC1")
                .orElseThrow().pins().get(0).net());
    }

    @Test
    void link_toAnIdThatALinkDidAwayWith_findsTheJoinedNet() {
        checkNets("IC1.11 IC1.22 IC2.28 IC3.2 IC3.3 R1.1 R1.2 R2.1, IC1.21 IC2.22 IC3.1, IC1.29 IC2.14 R2.2",
                "link net:N1 net:N2", "link net:N2 net:/WR", "link net:N1 net:+5V");
    }

    @Test
    void cut_atAPin_takesThatPinOffAndOutlivesTheLift() {
        BoardState state = board("cut IC2.22");
        assertEquals("[IC1.21 IC3.1]", together(state.netlist()).stream().filter(n -> n.contains("IC3.1")).toList()
                .toString());
        assertFalse(state.isLifted("IC2", "22"));
        assertTrue(state.loosePin(new Place.OfPin("IC2", "/OE")).isEmpty());
        assertTrue(state.loosePin(new Place.OfPin("IC2", "22")).orElseThrow().cut());
        assertEquals(1, state.cuts().size());
    }

    @Test
    void value_andReplace_changeTheValueAlone() {
        assertEquals("[ChangedValue[ref=IC3, drawn=74LS32, now=74HCT32], ChangedValue[ref=R1, drawn=4k7, now=47k]]",
                board("value R1 47k", "replace IC3 74HCT32", "replace R2").values().toString());
        checkNets("IC1.11 IC2.28, IC1.21 IC2.22 IC3.1, IC1.22 IC3.2, IC1.29 IC2.14 R2.2, IC3.3 R1.1, R1.2 R2.1",
                "value R1 47k", "replace IC3 74HCT32");
    }

    @ParameterizedTest
    @CsvSource({
        "lift IC9.1, there is no part IC9 on the board", "lift IC1.99, part IC1 has no pin 99",
        "lift IC2.22, IC2.22 is lifted already", "lift R2.1, R2 is out; fit it first",
        "remove R2, R2 is out already", "remove R77, there is no part R77 on the board",
        "fit R1, R1 is on the board already; remove it first or replace it",
        "fit R77=1k, the drawing has no part R77; name the places that its pins touch",
        "fit R77=1k net:NOPE IC1.21, there is no net NOPE on the drawing",
        "replace R2 1k, R2 is out; fit it first", "value R2 1k, R2 is out; fit it first",
        "link IC1.21 IC1.21, a link needs two places; both name IC1.21",
        "link IC1 IC1.21, IC1 has 4 pins; name one of them such as IC1.21",
        "cut net:/RD, a cut needs a pin or a spot on a wire not net:/RD",
        "'cut 1@5,5', 'there is no wire within 5 points of 1@5,5'"})
    void tried_changeThatCannotBe_saysWhy(String words, String why) {
        BoardState state = board("lift IC2.22", "remove R2");
        ChangeOutcome outcome = state.tried(change(words));
        assertFalse(outcome.done());
        assertEquals(why, outcome.text().replace("first, or", "first or").replace("them, such", "them such")
                .replace("wire, not", "wire not"));
        assertEquals(state.netlist(), state.with(change(words)).netlist());
    }

    @Test
    void bothSides_liftedDriver_namesThePinAndItsFormerLoads() {
        BothSides sides = board("lift IC1.21").bothSides(Place.parse("IC1.21")).orElseThrow();
        assertEquals("IC1.21", sides.onPin().text());
        assertEquals("/RD", sides.pin().pad().name());
        assertEquals("[IC2.22, IC3.1]", sides.padPins().stream().map(Place::text).toList().toString());
        assertEquals("IC2.22", sides.onPad().text());
        assertTrue(board("lift IC1.21").bothSides(Place.parse("IC1.22")).isEmpty());
    }

    @Test
    void outcomes_areInTheOrderOfTheChanges() {
        assertEquals(List.of("IC1.21 is lifted off /RD", "R1 is out", "IC1.22 and net:N1 are linked, on /WR"),
                board("lift IC1.21", "remove R1", "link IC1.22 net:N1").outcomes().stream().map(ChangeOutcome::text)
                        .toList());
    }
}
