// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;

/** What is doubted, where, and that it lowers the confidence of the nets it touches and of no others. */
class DoubtsTest {

    private static Sketch chips() {
        return new Sketch().chip("IC1", 100, 100, 4, 4).chip("IC2", 400, 100, 4, 4).wire(200, 130, 400, 130);
    }

    private static void checkOnly(String code, String doubtedPin, Sketch sketch) {
        Netlist netlist = Reading.read(sketch.page(1));
        assertTrue(netlist.doubts().stream().map(Doubt::code).toList().contains(code), netlist.doubts().toString());
        List<Net> low = netlist.nets().stream().filter(n -> n.confidence() < 0.9).toList();
        assertEquals(List.of(netOf(netlist, doubtedPin)), low.stream().map(Net::id).toList());
        netlist.nets().stream().filter(n -> !low.contains(n)).forEach(n -> assertTrue(n.confidence() > 0.9));
    }

    private static String netOf(Netlist netlist, String pin) {
        String[] names = pin.split("[.]");
        return netlist.part(names[0]).orElseThrow().pins().stream().filter(p -> names[1].equals(p.number())).findFirst()
                .orElseThrow().net();
    }

    @Test
    void recognise_clearSheet_hasNoDoubts() {
        Netlist netlist = Reading.read(chips().wire(200, 100, 400, 100).page(1));

        assertEquals(List.of(), netlist.doubts());
        assertTrue(netlist.nets().stream().allMatch(n -> n.confidence() > 0.9));
    }

    @Test
    void recognise_supplySymbolWithoutName_isDoubted() {
        checkOnly("unknown-mark", "IC1.5", chips().wire(200, 100, 240, 100, 240, 60).line(236, 60, 244, 60));
    }

    @Test
    void recognise_wireThatEndsShortOfAnother_isDoubted() {
        Sketch shortOf = chips().wire(200, 100, 400, 100).wire(300, 60, 300, 97).wire(300, 60, 390, 60)
                .wire(390, 60, 390, 120).wire(390, 120, 400, 120);

        checkOnly("open-end", "IC2.3", shortOf);
    }

    @Test
    void recognise_netWithTwoSupplies_isDoubted() {
        checkOnly("two-supplies", "IC1.5", chips().wire(200, 100, 240, 100, 240, 60).supply("+5V", 240, 60)
                .wire(240, 100, 280, 100, 280, 60).supply("VCC", 280, 60));
    }
}
