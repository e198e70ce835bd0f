// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Pin;

/** How symbols are told apart and put together, each rule on the smallest sheet that needs it. */
class SymbolRulesTest {

    /** Two chips face to face, so that the sheet has a pitch and wires to go by. */
    private static Sketch chips() {
        return new Sketch().chip("IC1", 100, 100, 3, 3).chip("IC2", 400, 100, 3, 3);
    }

    private static String nets(Sketch sketch) {
        return Reading.nets(Reading.read(sketch.page(1)));
    }

    @Test
    void recognise_supplyUnitWithoutBody_hasItsPins() {
        Sketch unit = chips().line(300, 340, 300, 354).line(300, 380, 300, 366).text("14", 294, 352, 5)
                .text("7", 294, 376, 5).text("IC1P", 290, 362, 6).wire(300, 340, 300, 300).wire(300, 300, 60, 300)
                .wire(60, 300, 60, 100).wire(60, 100, 100, 100).wire(300, 380, 300, 420).wire(300, 420, 380, 420)
                .wire(380, 420, 380, 100).wire(380, 100, 400, 100);

        assertEquals("-: IC1.1 IC1.14; -: IC1.7 IC2.1", nets(unit));
    }

    @Test
    void recognise_barDrawnInTwoHalves_isABar() {
        Sketch diode = chips().wire(200, 100, 280, 100).line(280, 100, 294, 100).outline(294, 95, 294, 105, 304, 100)
                .line(304, 95, 304, 100).line(304, 100, 304, 105).line(304, 100, 318, 100).wire(318, 100, 400, 100)
                .text("D1", 294, 92, 6);

        assertEquals("-: D1.?1 IC1.4; -: D1.?1 IC2.1", nets(diode));
    }

    @Test
    void recognise_arrowDrawnTogetherWithItsLead_isASupply() {
        Sketch arrows = chips().wire(200, 100, 230, 100).line(230, 100, 240, 100, 240, 105, 246, 100, 240, 95, 240, 100)
                .text("GND", 248, 102, 6).wire(200, 110, 230, 110)
                .line(230, 110, 240, 110, 240, 115, 246, 110, 240, 105, 240, 110).text("GND", 248, 112, 6)
                .wire(200, 120, 400, 120);

        assertEquals("-: IC1.6 IC2.3; GND: IC1.4 IC1.5", nets(arrows));
    }

    @Test
    void recognise_flagsWallToWall_areEachAFlag() {
        Sketch flags = chips().wire(200, 100, 240, 100).flag("CLK", 240, 100).wire(200, 110, 240, 110)
                .flag("RST", 240, 110).wire(340, 100, 400, 100).wire(340, 100, 340, 60).flag("CLK", 340, 60)
                .wire(200, 120, 400, 120);

        assertTrue(nets(flags).contains("CLK: IC1.4 IC2.1"), nets(flags));
        assertTrue(nets(flags).contains("RST: IC1.5"), nets(flags));
    }

    @Test
    void recognise_resistorWithALetterInIt_isAPart() {
        Sketch lettered = chips().wire(200, 100, 280, 100).resistor("R1", 280, 100).text("Ra", 296, 102, 5)
                .wire(320, 100, 400, 100);

        assertEquals("-: IC1.4 R1.?1; -: IC2.1 R1.?1", nets(lettered));
    }

    @Test
    void recognise_plateThatTouchesAFlag_belongsToItsCapacitor() {
        Sketch touching = chips().wire(200, 100, 250, 100).line(250, 100, 262, 100).line(262, 93, 262, 107)
                .line(266, 93, 266, 107).line(266, 100, 278, 100).wire(278, 100, 400, 100).text("C1", 254, 90, 6)
                .wire(200, 110, 230, 110).outline(230, 110, 234, 107, 262, 107, 262, 113, 234, 113)
                .text("RST", 236, 112, 5).wire(200, 120, 400, 120);

        assertEquals("-: C1.?1 IC1.4; -: C1.?1 IC2.1; -: IC1.6 IC2.3; RST: IC1.5", nets(touching));
    }

    @Test
    void recognise_diodesThatTouch_areOnePartEach() {
        Sketch rows = chips();
        for (int i = 0; i < 2; i++) {
            double y = 100 + 10 * i;
            rows.wire(200, y, 280, y).line(280, y, 294, y).outline(294, y - 5, 294, y + 5, 304, y)
                    .line(304, y - 5, 304, y + 5).line(304, y, 318, y).wire(318, y, 400, y);
        }
        rows.text("D1", 284, 92, 6).text("D2", 284, 124, 6);

        assertEquals("-: D1.?1 IC1.4; -: D1.?1 IC2.1; -: D2.?1 IC1.5; -: D2.?1 IC2.2", nets(rows));
    }

    /** A capacitor between two wires at height {@code y}, its plates 12 points high. */
    private static Sketch capacitor(Sketch sketch, double y) {
        return sketch.wire(200, y, 270, y).line(270, y, 280, y).line(280, y - 6, 280, y + 6)
                .line(284, y - 6, 284, y + 6).line(284, y, 294, y).wire(294, y, 400, y);
    }

    @Test
    void recognise_capacitorsWithPlatesInLine_areOnePartEach() {
        Sketch stacked = capacitor(capacitor(chips(), 100), 110).text("C1", 268, 92, 6).text("C2", 268, 124, 6);

        assertEquals("-: C1.?1 IC1.4; -: C1.?1 IC2.1; -: C2.?1 IC1.5; -: C2.?1 IC2.2", nets(stacked));
    }

    @Test
    void recognise_capacitorCloseUnderACoil_isAPartOfItsOwn() {
        Sketch coil = chips().wire(200, 100, 260, 100).wire(304, 100, 400, 100).line(260, 100, 270, 100)
                .line(294, 100, 304, 100).line(270, 100, 272, 96, 276, 96, 278, 100, 280, 96, 284, 96, 286, 100, 288, 96,
                        292, 96, 294, 100);
        Sketch both = capacitor(coil, 110).text("L1", 276, 92, 6).text("C1", 268, 126, 6);

        assertEquals("-: C1.?1 IC1.5; -: C1.?1 IC2.2; -: IC1.4 L1.?1; -: IC2.1 L1.?1", nets(both));
    }

    @Test
    void recognise_contactsApart_areOneSwitch() {
        Sketch contacts = chips();
        for (int i = 0; i < 3; i++) {
            double y = 100 + 20 * i;
            contacts.outline(290, y - 5, 296, y - 5, 296, y + 5, 290, y + 5).line(276, y, 290, y)
                    .outline(308, y - 5, 314, y - 5, 314, y + 5, 308, y + 5).line(314, y, 328, y)
                    .text(String.valueOf(i + 1), 280, y - 1, 5).text(String.valueOf(i + 4), 319, y - 1, 5);
        }
        contacts.text("SW_SP", 288, 160, 6).wire(200, 100, 276, 100).wire(328, 100, 400, 100);

        Netlist netlist = Reading.read(contacts.page(1));

        assertEquals(List.of("1", "2", "3", "4", "5", "6"), netlist.part("SW_SP").orElseThrow().pins().stream()
                .map(Pin::number).toList());
        assertEquals("-: IC1.4 SW_SP.1; -: IC2.1 SW_SP.4", Reading.nets(netlist));
    }

    @Test
    void recognise_pictureInAChip_joinsNoPins() {
        Sketch picture = chips().line(180, 100, 170, 100).line(170, 100, 170, 110).line(170, 110, 180, 110)
                .wire(200, 100, 400, 100).wire(200, 110, 400, 110);

        assertEquals("-: IC1.4 IC2.1; -: IC1.5 IC2.2", nets(picture));
    }

    @Test
    void recognise_wiresAsThinFills_areWires() {
        Sketch filled = new Sketch().chip("IC1", 100, 100, 3, 3).chip("IC2", 400, 100, 3, 3)
                .thinFill(200, 100, 300, 100).thinFill(300, 100, 300, 120).thinFill(300, 120, 400, 120)
                .thinFill(200, 110, 400, 110);

        assertEquals("-: IC1.4 IC2.3; -: IC1.5 IC2.2", nets(filled));
    }

    @Test
    void recognise_wireInOneStrokeWithPointsAtEachStep_isOneWire() {
        assertEquals("-: IC1.4 IC2.3", nets(chips().polyline(200, 100, 210, 100, 220, 100, 220, 100, 300, 100, 300, 110,
                300, 120, 400, 120)));
    }

    @Test
    void recognise_dotsOfAnyMake_join() {
        for (int make = 0; make < 3; make++) {
            Sketch crossing = chips().wire(200, 100, 400, 100).wire(300, 60, 300, 200).wire(300, 200, 120, 200)
                    .wire(120, 200, 120, 240).chip("IC3", 120, 240, 1, 1);
            Sketch dotted = make == 0 ? crossing.roundCap(300, 100) : make == 1 ? crossing.polygonDot(300, 100)
                    : crossing.dot(300, 100);

            assertEquals("-: IC1.4 IC2.1 IC3.1", nets(dotted), "make " + make);
        }
    }
}
