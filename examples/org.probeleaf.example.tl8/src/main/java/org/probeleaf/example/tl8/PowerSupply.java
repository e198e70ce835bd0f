// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import java.util.List;

import org.probeleaf.example.tl8.sheet.Page;
import org.probeleaf.example.tl8.sheet.Placed;
import org.probeleaf.example.tl8.sheet.Placed.Words;
import org.probeleaf.example.tl8.sheet.Spot;
import org.probeleaf.example.tl8.symbol.Chips;
import org.probeleaf.example.tl8.symbol.Passives;
import org.probeleaf.example.tl8.symbol.Semiconductors;
import org.probeleaf.example.tl8.symbol.Turn;

/** Nine volts in, five volts out: fuse, reverse-polarity diode, regulator, and a lamp that says so. */
final class PowerSupply {
    private static final int PLUS = 143;
    private static final int GROUND = 155;

    private PowerSupply() {
    }

    static void draw(Page page) {
        Placed plug = page.part("J1", "DC IN", Chips.box(10, List.of(), List.of("1 9V", "", "2 0V"), null, null), 10,
                PLUS - 2);
        Placed fuse = page.part("F1", "1 A T", Passives.fuse(), Turn.NONE, 27, PLUS, Words.CENTRED);
        Placed regulator = page.part("IC14", "7805", PartSymbols.regulator(), 68, PLUS - 4);
        page.wire(plug.pin("1")).toX(fuse.end(0).x()).done();
        page.wire(fuse.end(1)).toX(regulator.pin("1").x()).done();
        page.wire(plug.pin("2")).toX(26).toY(GROUND).toX(138).done();

        between(page, page.part("D5", "1N4001", Semiconductors.diode(), Turn.UP, 44, PLUS + 10, Words.RIGHT), true);
        between(page, page.part("C20", "1000u 25V", Passives.electrolytic(), Turn.DOWN, 55, PLUS + 3, Words.RIGHT),
                false);
        page.wire(regulator.pin("2")).toY(GROUND).done();
        between(page, page.part("C21", "100n", Passives.capacitor(), Turn.DOWN, 92, PLUS + 3, Words.RIGHT), false);
        between(page, page.part("C22", "100u 10V", Passives.electrolytic(), Turn.DOWN, 101, PLUS + 3, Words.RIGHT),
                false);
        Placed guard = page.part("D6", "1N4001", Semiconductors.diode(), Turn.MIRROR, 79, PLUS - 8, Words.CENTRED);
        page.wire(guard.end(0)).levelTo(new Spot(89, PLUS));
        page.wire(guard.end(1)).levelTo(new Spot(62, PLUS));

        Placed dropper = page.part("R27", "330", Passives.resistor(), Turn.NONE, 115, PLUS, Words.CENTRED);
        Placed lamp = page.part("D7", "POWER", Semiconductors.led(), Turn.NONE, 127, PLUS, Words.BOTH_BELOW);
        page.wire(regulator.pin("3")).toX(dropper.end(0).x()).done();
        page.wire(dropper.end(1)).toX(lamp.end(0).x()).done();
        page.wire(lamp.end(1)).toX(138).toY(GROUND).done();
        page.power("+5V", page.wire(109, PLUS).toY(PLUS - 2).done());
        page.part("TP3", null, Passives.testPoint(), Turn.UP, 97, PLUS, Words.LEFT);
        page.power("GND", new Spot(116, GROUND));
    }

    private static void between(Page page, Placed part, boolean firstBelow) {
        page.wire(part.end(firstBelow ? 1 : 0)).toY(PLUS).done();
        page.wire(part.end(firstBelow ? 0 : 1)).toY(GROUND).done();
    }
}
