// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;

/** Sheets whose wires, symbols and texts are all of one style, with pin names outside the blocks. */
class OneStyleTest {

    /** Rows of pins are this far apart, in points. */
    private static final double STEP = 15;

    private final Sketch sketch = new Sketch();

    /** A block with names P1, P2, ... down its left side and on down its right side; its first row is at y. */
    private void block(String ref, double x, double y, int left, int right) {
        double bottom = y - 7.5 + STEP * Math.max(left, right);
        sketch.outline(x, y - 7.5, x + 22.5, y - 7.5, x + 22.5, bottom, x, bottom).text(ref, x + 7, y - 9, 7.5);
        for (int i = 0; i < left; i++) {
            sketch.text("P" + (i + 1), x - 11, y - 3 + STEP * i, 7.5);
        }
        for (int i = 0; i < right; i++) {
            sketch.text("P" + (left + i + 1), x + 26, y - 3 + STEP * i, 7.5);
        }
    }

    private void wire(double... xy) {
        for (int i = 2; i < xy.length; i += 2) {
            sketch.line(xy[i - 2], xy[i - 1], xy[i], xy[i + 1]);
        }
    }

    private List<String> refs() {
        return Reading.read(sketch.page(1)).parts().stream().map(Part::ref).toList();
    }

    @Test
    void recognise_nameOfABlockOverALongWire_isNoPinOfAnother() {
        block("U1", 250, 150, 4, 4);
        block("U2", 350, 217, 4, 4);
        wire(272.5, 195, 335, 195, 335, 217, 350, 217);
        wire(335, 195, 405, 195, 405, 262, 372.5, 262);
        for (int i = 0; i < 3; i++) {
            wire(272.5, 150 + STEP * i, 330 - 8 * i, 150 + STEP * i, 330 - 8 * i, 232 + STEP * i, 350, 232 + STEP * i);
            wire(250, 150 + STEP * i, 180, 150 + STEP * i);
        }

        assertEquals(List.of("U1", "U2"), refs());
    }

    @Test
    void recognise_blockWithFewPinsDrawn_isNotNamedAfterAPin() {
        block("U1", 250, 150, 2, 2);
        for (int i = 0; i < 6; i++) {
            double y = 250 + 40 * i;
            sketch.outline(200, y, 207.5, y, 207.5, y + 22.5, 200, y + 22.5).text("R" + (i + 1), 211, y + 5, 7.5);
            wire(203.75, y - 17.5, 203.75, y);
        }
        wire(203.75, 472.5, 203.75, 500);
        wire(250, 150, 203.75, 150, 203.75, 250);
        wire(250, 165, 190, 165, 190, 500, 203.75, 500);

        assertEquals(List.of("R1", "R2", "R3", "R4", "R5", "R6", "U1"), refs());
    }

    @Test
    void recognise_platesThickerThanAllElse_areNoBuses() {
        block("U1", 250, 150, 3, 3);
        for (int i = 0; i < 3; i++) {
            double y = 150 + STEP * i;
            double x = 100 + 40 * i;
            wire(250, y, x + 7.5, y);
            sketch.bus(x + 7.5, y - 11, x + 7.5, y + 11).bus(x, y - 11, x, y + 11);
            wire(x, y, x - 20, y, x - 20, 250);
            sketch.text("C" + (i + 1), x + 11, y - 12, 7.5);
        }
        wire(80, 250, 160, 250);

        Netlist netlist = Reading.read(sketch.page(1));

        assertEquals("-: C1.?1 C2.?1 C3.?1; -: C1.?1 U1.P1; -: C2.?1 U1.P2; -: C3.?1 U1.P3", Reading.nets(netlist));
    }

    @Test
    void recognise_wireThatJumpsAHairAside_goesOn() {
        block("U1", 200, 150, 3, 3);
        block("U2", 400, 150, 3, 3);
        wire(222.5, 150, 300, 150, 300, 150.75, 400, 150.75);
        wire(222.5, 165, 400, 165);
        wire(380, 180, 400, 180);
        wire(222.5, 180, 310, 180, 310, 225, 180, 225, 180, 180, 200, 180);

        assertEquals("-: U1.P3 U1.P6; -: U1.P4 U2.P1; -: U1.P5 U2.P2", Reading.nets(Reading.read(sketch.page(1))));
    }

    @Test
    void recognise_coilWithAShortOpenEnd_hasBothLeads() {
        block("U1", 250, 150, 3, 3);
        wire(250, 150, 200, 150, 200, 180, 250, 180);
        wire(250, 165, 180, 165);
        sketch.curve(150, 165, 152, 161, 156, 161, 160, 165, 162, 161, 166, 161, 170, 165).line(170, 165, 180, 165)
                .line(147.5, 165, 150, 165).text("L1", 156, 156, 7.5);

        assertEquals("-: L1.?1 U1.P2; -: U1.P1 U1.P3", Reading.nets(Reading.read(sketch.page(1))));
    }

    /** A chip drawn in plain lines with a number on each lead, 10 points apart; its first left pin ends at (x, y). */
    private void chip(String ref, double x, double y, int rows) {
        double bottom = y + 10 * rows;
        wire(x + 20, y - 10, x + 80, y - 10, x + 80, bottom, x + 20, bottom, x + 20, y - 10);
        sketch.text(ref, x + 20, y - 12, 6);
        for (int i = 0; i < rows; i++) {
            wire(x, y + 10 * i, x + 20, y + 10 * i);
            wire(x + 80, y + 10 * i, x + 100, y + 10 * i);
            sketch.text(String.valueOf(i + 1), x + 8, y + 10 * i - 1, 4)
                    .text(String.valueOf(2 * rows - i), x + 88, y + 10 * i - 1, 4);
        }
    }

    @Test
    void recognise_wiresAndDotsInTheStyleOfBoxes_areNoneOfTheBoxes() {
        chip("IC1", 100, 100, 4);
        chip("IC2", 400, 100, 4);
        wire(200, 100, 400, 100);
        wire(200, 110, 330, 110, 330, 160, 90, 160, 90, 130, 100, 130);
        wire(300, 100, 300, 180);
        wire(300, 180, 80, 180, 80, 120, 100, 120);
        sketch.dot(300, 100);
        wire(330, 130, 400, 130);
        sketch.dot(330, 130);

        assertEquals("-: IC1.3 IC1.8 IC2.1; -: IC1.4 IC1.7 IC2.4", Reading.nets(Reading.read(sketch.page(1))));
    }

    @Test
    void recognise_pinNameOnTheLeadsOfManyParts_isNoLabel() {
        chip("IC1", 100, 100, 4);
        for (int i = 0; i < 3; i++) {
            double x = 260 + 30 * i;
            wire(200, 100 + 10 * i, x, 100 + 10 * i, x, 160);
            wire(x, 160, x, 172);
            sketch.outline(x - 3, 172, x + 3, 172, x + 3, 190, x - 3, 190);
            wire(x, 190, x, 210);
            wire(x - 4, 210, x + 4, 210);
            sketch.upright("IO1", x - 1, 171, 4).upright("R" + (i + 1), x - 6, 186, 6).text("GND", x - 5, 218, 6);
        }

        assertEquals("-: IC1.6 R3.?1; -: IC1.7 R2.?1; -: IC1.8 R1.?1; GND: R1.?1 R2.?1 R3.?1",
                Reading.nets(Reading.read(sketch.page(1))));
    }

    @Test
    void recognise_wiresThroughAnOutlineToMarksInside_meetTheSymbolOnce() {
        chip("IC1", 100, 100, 4);
        wire(300, 90, 340, 90, 340, 140, 300, 140, 300, 90);
        sketch.text("J1", 300, 86, 6);
        for (int i = 0; i < 4; i++) {
            double y = 100 + 10 * i;
            wire(200, y, 310, y);
            wire(310, y, 312, y);
            sketch.ring(314, y, 2).text(String.valueOf(i + 1), 303, y - 1, 4);
        }

        assertEquals("-: IC1.5 J1.4; -: IC1.6 J1.3; -: IC1.7 J1.2; -: IC1.8 J1.1",
                Reading.nets(Reading.read(sketch.page(1))));
    }

    @Test
    void recognise_flagsDrawnInLinesOnNeighbouringPins_joinNothing() {
        chip("IC1", 100, 100, 4);
        for (int i = 0; i < 4; i++) {
            double y = 100 + 10 * i;
            wire(200, y, 204, y - 5, 234, y - 5, 234, y + 5, 204, y + 5, 200, y);
            sketch.text("S" + "ABCD".charAt(i), 210, y + 2, 5);
        }

        assertEquals("SA: IC1.8; SB: IC1.7; SC: IC1.6; SD: IC1.5",
                Reading.nets(Reading.read(sketch.page(1))));
    }

    @Test
    void recognise_transistorWithTwoPinsTied_keepsItsLeads() {
        chip("IC1", 100, 100, 4);
        wire(200, 100, 240, 100);
        // Base bar, collector and emitter lines without a circle; the collector goes back to the base.
        wire(240, 100, 250, 100);
        wire(250, 90, 250, 110);
        wire(250, 95, 262, 85);
        wire(250, 105, 262, 115);
        wire(262, 85, 262, 70, 225, 70, 225, 100);
        wire(262, 115, 262, 150, 90, 150, 90, 120, 100, 120);
        sketch.text("Q1", 268, 102, 6);

        assertEquals("-: IC1.3 Q1.?1; -: IC1.8 Q1.?2", Reading.nets(Reading.read(sketch.page(1))));
    }
}
