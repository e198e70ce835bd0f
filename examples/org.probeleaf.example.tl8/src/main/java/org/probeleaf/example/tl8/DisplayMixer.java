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

/** Sync and pixels, weighted by two resistors and buffered by an emitter follower, become the display signal. */
final class DisplayMixer {

    private DisplayMixer() {
    }

    static void draw(Page page, Spot sync, Spot pixel) {
        int line = pixel.y();
        Placed pixelR = page.part("R22", "470", Passives.resistor(), Turn.NONE, 160, line, Words.CENTRED);
        Placed syncR = page.part("R23", "1k", Passives.resistor(), Turn.NONE, 160, line - 12, Words.CENTRED);
        page.wire(pixel).toX(160).done();
        page.label("PIXEL", 152, line);
        page.wire(sync).right(2).uprightTo(syncR.end(0));
        page.label("SYNC", 152, line - 12);
        Placed q = page.part("Q1", "BC548", Semiconductors.npn(), Turn.NONE, 186, line, Words.RIGHT);
        page.wire(pixelR.end(1)).toX(186).done();
        page.wire(syncR.end(1)).toX(174).toY(line).done();
        // R24 and R28 hold the base just below conduction, so that the sync tip comes out at 0 V
        Placed foot = page.part("R24", "820", Passives.resistor(), Turn.DOWN, 178, line + 2, Words.RIGHT);
        page.wire(foot.end(0)).toY(line).done();
        page.power("GND", foot.end(1));
        Placed bias = page.part("R28", "2k2", Passives.resistor(), Turn.DOWN, 182, line - 13, Words.RIGHT);
        page.wire(bias.end(1)).toY(line).done();
        page.power("+5V", bias.end(0));
        page.power("+5V", page.wire(q.pin("C")).down(-3).done());

        Placed load = page.part("R25", "470", Passives.resistor(), Turn.DOWN, 192, line + 11, Words.RIGHT);
        Placed match = page.part("R26", "75", Passives.resistor(), Turn.NONE, 197, line + 9, Words.CENTRED);
        page.wire(q.pin("E")).levelTo(load.end(0));
        page.wire(match.end(0)).toX(192).done();
        page.power("GND", load.end(1));
        Placed socket = page.part("J4", "DISPLAY", Chips.box(10, List.of("1 VID", "2 GND"), List.of(), null, null),
                218, line + 7);
        page.wire(match.end(1)).toX(socket.pin("1").x()).done();
        page.power("GND", page.wire(socket.pin("2")).left(2).down(2).done());
    }
}
