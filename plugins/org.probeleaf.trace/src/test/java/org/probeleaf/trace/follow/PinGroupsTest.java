// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.Boards;

class PinGroupsTest {

    @Test
    void pack_drawnAsUnits_conductsWithinEach() {
        Part pack = new Part("RN1", "4x33", List.of(unit("A"), unit("B")), List.of(
                Pin.drawn("1", null, "A", 1, new Point(0, 0), "N1"), Pin.drawn("8", null, "A", 1, new Point(10, 0), "N2"),
                Pin.drawn("2", null, "B", 1, new Point(0, 9), "N3"), Pin.drawn("7", null, "B", 1, new Point(10, 9), "N4")));
        assertEquals("N1>N2 N2>N1 N3>N4 N4>N3", ways(pack));
    }

    @Test
    void pack_drawnWithPinsOpposite_conductsAcross() {
        assertEquals("N1>N2 N2>N1 N3>N4 N4>N3", ways(box(new Point(0, 10), new Point(60, 10), new Point(0, 20),
                new Point(60, 20.5))));
    }

    @Test
    void pack_drawnWithPinsAboveAndBelow_conductsAcross() {
        assertEquals("N1>N2 N2>N1 N3>N4 N4>N3", ways(box(new Point(15, 0), new Point(15, 40), new Point(30, 0),
                new Point(30, 40))));
    }

    @Test
    void pack_drawnWithPinsOutOfLine_isNotGuessed() {
        assertEquals("", ways(box(new Point(0, 10), new Point(60, 12), new Point(0, 20), new Point(60, 26))));
        assertEquals("", ways(box(new Point(0, 10), new Point(0, 15), new Point(0, 20), new Point(60, 20))));
    }

    @Test
    void bussedPack_pinOneOnASupply_pullsTheOthers() {
        SignalNetwork network = SignalNetwork.of(Boards.of("RN1 4k7 1=+5V 2=N1 3=N2 4=N3"), PartBook.standard());
        assertEquals("N1>+5V +5V>N1", ways(network.waysFrom("N1")) + " " + ways(network.waysTo("N1")));
        assertEquals(3, network.waysFrom("+5V").size());
    }

    @Test
    void bussedPack_anotherPinOnASupply_isNotGuessed() {
        SignalNetwork network = SignalNetwork.of(Boards.of("RN1 4k7 1=N9 2=N1 3=N2 4=+5V"), PartBook.standard());
        assertEquals(List.of(), network.waysFrom("+5V"));
    }

    @Test
    void plugAndSocketOfOneNumber_withTheSamePins_areMates() {
        SignalNetwork network = SignalNetwork.of(Boards.of("P3 MAIN 1=N1 2=N2", "J3 FRONT 1=N3 2=N4", "J4 - 1=N5 2=N6"),
                PartBook.standard());
        assertEquals("N1>N3", ways(network.waysFrom("N1")));
        assertEquals("N4>N2", ways(network.waysFrom("N4")));
        assertEquals("through connector P3 (MAIN) into its mate J3 (FRONT), pin 1 of both",
                network.waysFrom("N1").get(0).reason());
    }

    @Test
    void plugAndSocket_withOtherPins_areNoMates() {
        SignalNetwork network = SignalNetwork.of(Boards.of("P3 - 1=N1 2=N2", "J3 - 1=N3 2=N4 3=N5"), PartBook.standard());
        assertEquals(List.of(), network.waysFrom("N1"));
    }

    private static Part box(Point... at) {
        List<Pin> pins = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            pins.add(Pin.drawn(String.valueOf(i + 1), null, null, 1, at[i], "N" + (i + 1)));
        }
        return new Part("RN1", "4x33", List.of(new PartUnit(null, 1, new Box(5, 5, 55, 35))), pins);
    }

    private static PartUnit unit(String name) {
        return new PartUnit(name, 1, new Box(0, 0, 1, 1));
    }

    private static String ways(Part part) {
        List<Net> nets = List.of("N1", "N2", "N3", "N4").stream()
                .map(n -> new Net(n, null, List.of(1), List.of(), List.of(), List.of(), 1)).toList();
        SignalNetwork network = SignalNetwork.of(new Netlist("", "", List.of(), List.of(part), nets, List.of()),
                PartBook.standard());
        return String.join(" ", nets.stream().map(n -> ways(network.waysFrom(n.id()))).filter(w -> !w.isEmpty()).toList());
    }

    private static String ways(List<Step> steps) {
        return String.join(" ", steps.stream().map(s -> Map.entry(s.fromNet(), s.toNet()))
                .map(e -> e.getKey() + ">" + e.getValue()).toList());
    }
}
