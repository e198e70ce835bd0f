// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Pin;

/** What texts name, each rule on the smallest sheet that needs it. */
class NameRulesTest {

    private static Sketch chips() {
        return new Sketch().chip("IC1", 100, 100, 4, 4).chip("IC2", 400, 100, 4, 4);
    }

    private static String nets(Sketch sketch) {
        return Reading.nets(Reading.read(sketch.page(1)));
    }

    /** Wires from the right of IC1 and the left of IC2 into a bus between them. */
    private static Sketch bus() {
        Sketch sketch = chips().bus(300, 60, 300, 180);
        for (int i = 0; i < 4; i++) {
            sketch.wire(200, 100 + 10 * i, 290, 100 + 10 * i, 300, 90 + 10 * i)
                    .wire(400, 100 + 10 * i, 310, 100 + 10 * i, 300, 110 + 10 * i);
        }
        return sketch;
    }

    @Test
    void recognise_membersOfABus_areJoinedByTheirLabels() {
        Sketch labelled = bus();
        for (int i = 0; i < 4; i++) {
            labelled.text("D" + i, 240, 99 + 10 * i, 5).text("D" + (3 - i), 350, 99 + 10 * i, 5);
        }

        assertEquals("D0: IC1.5 IC2.4; D1: IC1.6 IC2.3; D2: IC1.7 IC2.2; D3: IC1.8 IC2.1",
                nets(labelled.text("D[0..3]", 302, 58, 5)));
    }

    @Test
    void recognise_labelAcrossTheMemberOfABus_namesIt() {
        Sketch across = bus().wire(320, 240, 320, 180, 300, 160).line(320, 240, 320, 250)
                .outline(317, 250, 323, 250, 323, 270, 317, 270).line(320, 270, 320, 280).text("R1", 326, 262, 6)
                .wire(320, 280, 320, 300).text("BERR", 320.3, 214, 5).text("BERR", 240, 99, 5)
                .text("A", 240, 109, 5).text("B", 240, 119, 5).text("C", 240, 129, 5);

        assertTrue(nets(across).contains("BERR: IC1.5 R1.?1"), nets(across));
    }

    @Test
    void recognise_portMarksInARow_nameTheirNets() {
        Sketch ports = chips();
        for (int i = 0; i < 4; i++) {
            double y = 100 + 10 * i;
            ports.wire(200, y, 240, y).line(240, y, 243, y - 3).line(243, y - 3, 246, y).line(246, y, 243, y + 3)
                    .line(243, y + 3, 240, y).text("BD" + i, 248, y + 2, 5)
                    .wire(360, y, 400, y).text("BD" + i, 370, y - 1, 5);
        }

        assertEquals("BD0: IC1.5 IC2.1; BD1: IC1.6 IC2.2; BD2: IC1.7 IC2.3; BD3: IC1.8 IC2.4", nets(ports));
    }

    @Test
    void recognise_labelOnAShortWireAndItsLead_namesTheNet() {
        Sketch stubs = chips().wire(200, 100, 206, 100).text("ENABLE", 190, 99, 5).wire(394, 100, 400, 100)
                .text("ENABLE", 396, 99, 5).wire(200, 120, 400, 120);

        assertTrue(nets(stubs).contains("ENABLE: IC1.5 IC2.1"), nets(stubs));
    }

    @Test
    void recognise_crossAtAnOpenPin_takesNoName() {
        Sketch crossed = chips().line(197, 97, 203, 103).line(197, 103, 203, 97).text("CLK", 206, 109, 5)
                .wire(200, 110, 400, 110);

        assertTrue(nets(crossed).contains("CLK: IC1.6 IC2.2"), nets(crossed));
        assertFalse(nets(crossed).contains("IC1.5"), nets(crossed));
    }

    @Test
    void recognise_portAndSupplyOfOneName_areTwoNetsWhereAPartLiesBetween() {
        Sketch sensed = chips().wire(200, 100, 240, 100).wire(240, 100, 240, 60).supply("VBAT", 240, 60)
                .wire(240, 100, 260, 100).resistor("R1", 260, 100).wire(300, 100, 340, 100).flag("VBAT", 340, 100)
                .wire(200, 120, 240, 120).flag("VBAT", 240, 120);

        assertEquals("VBAT: IC1.5 R1.?1; VBAT: IC1.7 R1.?1", nets(sensed));
    }

    @Test
    void recognise_portAndSupplyOfOneName_areOneNetOtherwise() {
        Sketch plain = chips().wire(200, 100, 240, 100, 240, 60).supply("VBAT", 240, 60)
                .wire(200, 120, 240, 120).flag("VBAT", 240, 120);

        assertEquals("VBAT: IC1.5 IC1.7", nets(plain));
    }

    @Test
    void recognise_marksOfSuppliedNets_joinNothing() {
        Sketch flagged = chips().wire(200, 100, 240, 100, 240, 60).supply("PWR_FLAG", 240, 60)
                .wire(400, 100, 360, 100, 360, 60).supply("PWR_FLAG", 360, 60).wire(200, 120, 400, 120);

        assertEquals("-: IC1.7 IC2.3; PWR_FLAG: IC1.5; PWR_FLAG: IC2.1", nets(flagged));
    }

    @Test
    void recognise_equationsAndRanges_nameNoNet() {
        Sketch remarks = chips().wire(200, 100, 400, 100).text("V=2*I", 240, 99, 5).wire(200, 110, 400, 110)
                .text("A1-A13", 240, 109, 5);

        assertEquals("-: IC1.5 IC2.1; -: IC1.6 IC2.2", nets(remarks));
    }

    /** Pin 14 is the supply and pin 7 the ground of a quad NAND gate. */
    @Test
    void recognise_chipWithoutDrawnSupplyPins_getsThemImplied() {
        Sketch gates = new Sketch().chip("IC1A", 100, 100, 2, 1).text("74LS00", 120, 84, 6)
                .wire(100, 100, 60, 100, 60, 60).supply("VCC", 60, 60)
                .wire(100, 110, 40, 110, 40, 60).supply("GND", 40, 60).resistor("R1", 260, 100).wire(200, 100, 260, 100)
                .wire(300, 100, 330, 100, 330, 60).supply("VCC", 330, 60);

        Netlist netlist = Reading.read(gates.page(1));

        List<Pin> implied = netlist.part("IC1").orElseThrow().pins().stream().filter(Pin::implied).toList();
        assertEquals(List.of("7 GND", "14 VCC"), implied.stream().map(p -> p.number() + " "
                + netlist.net(p.net()).orElseThrow().name()).toList());
        implied.forEach(p -> assertNull(p.at()));
    }
}
