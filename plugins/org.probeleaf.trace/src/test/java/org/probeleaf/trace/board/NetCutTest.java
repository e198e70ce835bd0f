// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Junction;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.schematic.place.Place;

/**
 * Cuts on one drawn net. Each pin is a part of its own:
 * <pre>
 *   A(0,0)----------+(50,0)---------C(100,0)      gap of 4      E(104,0)----F(120,0)
 *                   |
 *   "X"             |(50,40)
 *                   +--------------B(100,40)       page 2: "X"----D(90,10)
 * </pre>
 */
class NetCutTest {

    private static Netlist board(NetLabel... labels) {
        List<Wire> wires = List.of(wire(1, 0, 0, 100, 0), wire(1, 50, 0, 50, 40, 100, 40), wire(1, 104, 0, 120, 0),
                wire(2, 10, 10, 90, 10));
        Net net = new Net("N1", "X", List.of(1, 2), wires, List.of(new Junction(1, new Point(50, 0))),
                Arrays.asList(labels), 1);
        return new Netlist("", "", List.of(), List.of(part("A", 1, 0, 0), part("B", 1, 100, 40), part("C", 1, 100, 0),
                part("D", 2, 90, 10), part("E", 1, 104, 0), part("F", 1, 120, 0)), List.of(net), List.of());
    }

    private static final Netlist BOARD = board(label(1, 0, 0), label(2, 10, 10));

    private static Wire wire(int page, double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return new Wire(page, points);
    }

    private static NetLabel label(int page, double x, double y) {
        return new NetLabel("X", page, new Point(x, y), LabelKind.LABEL);
    }

    private static Part part(String ref, int page, double x, double y) {
        return new Part(ref, null, List.of(new PartUnit(null, page, new Box(x, y, x, y))),
                List.of(Pin.drawn("1", null, null, page, new Point(x, y), "N1")));
    }

    private static BoardState cut(Netlist board, String... spots) {
        return BoardState.of(board, Arrays.stream(spots).map(s -> BoardStateTest.change("cut " + s)).toList());
    }

    @ParameterizedTest
    @CsvSource({
        "'1@25,0', 'A.1 D.1, B.1 C.1 E.1 F.1'", "'1@25,4.9', 'A.1 D.1, B.1 C.1 E.1 F.1'",
        "'1@75,0', 'A.1 B.1 D.1, C.1 E.1 F.1'", "'1@50,20', 'A.1 C.1 D.1 E.1 F.1, B.1'",
        "'1@50,40', 'A.1 C.1 D.1 E.1 F.1, B.1'", "'1@110,0', 'A.1 B.1 C.1 D.1 E.1, F.1'",
        "'2@50,10', 'A.1 B.1 C.1 E.1 F.1, D.1'", "'1@100,40', 'A.1 C.1 D.1 E.1 F.1, B.1'"})
    void cut_spotOfAWire_partsWhatHangsTogether(String spot, String nets) {
        BoardState state = cut(BOARD, spot);
        assertTrue(state.outcomes().get(0).done(), state.outcomes().get(0).text());
        assertEquals(nets, String.join(", ", BoardStateTest.together(state.netlist())));
    }

    @Test
    void cut_sideWithTheName_keepsTheIdAndTheOtherHasNone() {
        BoardState state = cut(BOARD, "1@25,0");
        assertEquals("N1", state.netlist().part("A").orElseThrow().pins().get(0).net());
        assertEquals("N1b", state.netlist().part("C").orElseThrow().pins().get(0).net());
        assertEquals("X is cut at 1@25,0: 2 pins on X, 4 pins on N1b", state.outcomes().get(0).text());
        Net far = state.netlist().net("N1b").orElseThrow();
        assertEquals(null, far.name());
        assertEquals(List.of(1), far.pages());
        assertEquals(List.of(wire(1, 25, 0, 100, 0), wire(1, 50, 0, 50, 40, 100, 40), wire(1, 104, 0, 120, 0)),
                far.wires());
        assertEquals(1, far.junctions().size());
        assertEquals(List.of(new CutMark(state.cuts().get(0).change(), new Spot(1, new Point(25, 0)),
                List.of("N1", "N1b"))), state.cuts());
    }

    @Test
    void cut_linkAcross_isOneNetAgain() {
        BoardState state = cut(BOARD, "1@25,0").with(BoardStateTest.change("link 1@20,0 1@30,0"));
        assertEquals(BoardStateTest.together(BOARD), BoardStateTest.together(state.netlist()));
        BoardState before = BoardState.of(BOARD, List.of(BoardStateTest.change("link A.1 C.1"))).with(
                BoardStateTest.change("cut 1@25,0"));
        assertEquals(BoardStateTest.together(BOARD), BoardStateTest.together(before.netlist()));
    }

    @Test
    void cut_twoCuts_partInThree() {
        assertEquals("[A.1 D.1, B.1, C.1 E.1 F.1]",
                BoardStateTest.together(cut(BOARD, "1@25,0", "1@50,20").netlist()).toString());
    }

    @Test
    void cut_loop_hangsTogetherAllTheSame() {
        Netlist both = board(label(1, 0, 0), label(1, 100, 0));
        BoardState state = cut(both, "1@25,0");
        assertTrue(state.outcomes().get(0).done());
        assertTrue(state.outcomes().get(0).text().contains("another way"), state.outcomes().get(0).text());
        assertEquals(BoardStateTest.together(both), BoardStateTest.together(state.netlist()));
    }

    @Test
    void tried_cutThatCannotBe_saysWhy() {
        BoardState state = cut(BOARD, "1@25,0");
        assertEquals("the wire is cut at 1@25,0 already", state.tried(BoardStateTest.change("cut 1@25.5,0")).text());
        assertEquals("several wires meet at 1@50,0; name a spot on the one that is cut, away from where they meet",
                state.tried(BoardStateTest.change("cut 1@50,0")).text());
        assertFalse(state.tried(BoardStateTest.change("cut 3@50,0")).done());
    }

    @Test
    void bothSides_liftedPinOnAWire_measuresThePadAtTheWiresEnd() {
        BoardState state = BoardState.of(BOARD, List.of(BoardStateTest.change("lift C.1")));
        assertEquals("1@100,0", state.bothSides(Place.parse("C.1")).orElseThrow().onPad().text());
    }
}
