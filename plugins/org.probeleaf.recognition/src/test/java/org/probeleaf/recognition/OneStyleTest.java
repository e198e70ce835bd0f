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
}
