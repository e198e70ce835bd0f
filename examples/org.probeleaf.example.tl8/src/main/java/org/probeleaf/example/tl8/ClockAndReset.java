// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import org.probeleaf.example.tl8.sheet.Page;
import org.probeleaf.example.tl8.sheet.Placed;
import org.probeleaf.example.tl8.sheet.Placed.Words;
import org.probeleaf.example.tl8.sheet.Spot;
import org.probeleaf.example.tl8.symbol.Gates;
import org.probeleaf.example.tl8.symbol.Passives;
import org.probeleaf.example.tl8.symbol.Semiconductors;
import org.probeleaf.example.tl8.symbol.Turn;

/** The left edge of page 1: crystal oscillator and power-on reset. */
final class ClockAndReset {
    private static final int AXIS = 21;

    private ClockAndReset() {
    }

    static void draw(Page page, Placed cpu) {
        clock(page, cpu);
        reset(page, cpu);
    }

    /** Two inverters held in their middle by resistors; the crystal closes the loop. */
    private static void clock(Page page, Placed cpu) {
        Placed first = page.unit("IC6", "A", "74LS04", Gates.not("1", "2"), 16, AXIS);
        Placed second = page.unit("IC6", "B", "74LS04", Gates.not("3", "4"), 38, AXIS);
        page.part("C1", "22n", Passives.capacitor(), Turn.NONE, 28, AXIS, Words.BOTH_BELOW);
        Placed r1 = page.part("R1", "1k", Passives.resistor(), Turn.NONE, 15, 11, Words.CENTRED);
        Placed r2 = page.part("R2", "1k", Passives.resistor(), Turn.NONE, 37, 11, Words.CENTRED);
        Placed crystal = page.part("X1", "4.000 MHz", Passives.crystal(), Turn.NONE, 26, 34, Words.CENTRED);
        page.wire(r1.end(0)).levelTo(first.pin("1"));
        page.wire(r1.end(1)).levelTo(first.pin("2"));
        page.wire(r2.end(0)).levelTo(second.pin("3"));
        page.wire(r2.end(1)).levelTo(second.pin("4"));
        page.wire(crystal.end(0)).levelTo(first.pin("1"));
        page.wire(crystal.end(1)).levelTo(second.pin("4"));

        Placed buffer = page.unit("IC6", "C", "74LS04", Gates.not("5", "6"), 28, 44);
        page.wire(50, 34).toY(38).toX(20).uprightTo(buffer.pin("5"));
        page.wire(buffer.pin("6")).toX(53).uprightTo(cpu.pin("6"));
        // the processor wants a higher clock than TTL gives
        Placed pullUp = page.part("R8", "330", Passives.resistor(), Turn.DOWN, 53, 18, Words.RIGHT);
        page.wire(pullUp.end(1)).toY(cpu.pin("6").y()).done();
        page.power("+5V", pullUp.end(0));
        page.offSheet("CLK", page.wire(44, 44).toY(49).toX(46).done(), true, true);
        page.part("TP1", null, Passives.testPoint(), Turn.UP, 48, 44, Words.LEFT);
    }

    /** Low while C3 charges through R3, low while SW1 is held; D1 empties C3 when the supply goes. */
    private static void reset(Page page, Placed cpu) {
        int line = 60;
        Placed first = page.unit("IC7", "A", "74LS14", Gates.schmittNot("1", "2"), 34, line);
        Placed second = page.unit("IC7", "B", "74LS14", Gates.schmittNot("3", "4"), 32, 74);
        Placed r3 = page.part("R3", "47k", Passives.resistor(), Turn.DOWN, 20, line - 12, Words.RIGHT);
        Placed d1 = page.part("D1", "1N4148", Semiconductors.diode(), Turn.UP, 15, line - 3, Words.LEFT);
        Placed c3 = page.part("C3", "10u 16V", Passives.electrolytic(), Turn.DOWN, 24, line + 2, Words.RIGHT);
        Placed button = page.part("SW1", "RESET", Passives.button(), Turn.DOWN, 10, line + 2, Words.RIGHT);
        page.wire(button.end(0)).toY(line).toX(first.pin("1").x()).done();
        page.wire(d1.end(0)).toY(line).done();
        page.wire(r3.end(1)).toY(line).done();
        page.wire(c3.end(0)).toY(line).done();
        page.wire(d1.end(1)).uprightTo(r3.end(0));
        page.power("+5V", r3.end(0));
        page.power("GND", c3.end(1));
        page.power("GND", button.end(1));
        page.wire(first.pin("2")).right(2).toY(67).toX(26).uprightTo(second.pin("3"));
        page.wire(second.pin("4")).toX(52).uprightTo(cpu.pin("26"));
        page.offSheet("/RESET", page.wire(new Spot(45, 74)).toY(79).toX(46).done(), true, true);
    }
}
