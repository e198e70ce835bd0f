// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import java.util.List;

import org.probeleaf.example.tl8.sheet.Page;
import org.probeleaf.example.tl8.sheet.Placed;
import org.probeleaf.example.tl8.sheet.Placed.Words;
import org.probeleaf.example.tl8.sheet.Spot;
import org.probeleaf.example.tl8.symbol.Chips;
import org.probeleaf.example.tl8.symbol.Gates;
import org.probeleaf.example.tl8.symbol.Passives;
import org.probeleaf.example.tl8.symbol.Semiconductors;
import org.probeleaf.example.tl8.symbol.Turn;

/** Page 2: the ports on the buffered data bus, the display mixer, and the power supply. */
final class PortPage {
    private static final int FLAGS = 18;
    private static final int PORT_BUS = 105;

    private final Page page = Frame.page(2, "Ports, display and supply");

    private PortPage() {
    }

    /** Draws the page. */
    static Page draw() {
        PortPage p = new PortPage();
        p.busDriver();
        p.floatInput();
        p.tick();
        Spot sync = p.outputLatch();
        Spot pixel = p.shifter();
        DisplayMixer.draw(p.page, sync, pixel);
        PowerSupply.draw(p.page);
        p.readings();
        return p.page;
    }

    private Spot arrives(String name, int y) {
        Spot spot = new Spot(FLAGS, y);
        page.offSheet(name, spot, false, false);
        return spot;
    }

    private void busDriver() {
        Placed driver = page.part("IC8", "74LS245", PartSymbols.busDriver(), 44, 20);
        page.power("+5V", driver.pin("20"));
        page.power("GND", driver.pin("10"));
        arrives("D[0..7]", 14);
        page.bus(FLAGS, 14).toX(30).toY(34).done();
        page.busName("D[0..7]", 21, 14);
        Wiring.members(page, driver, List.of("2", "3", "4", "5", "6", "7", "8", "9"), "D", 30, 34);
        page.wire(arrives("/RD", 40)).toX(driver.pin("1").x()).done();
        page.wire(arrives("/IORQ", 44)).toX(driver.pin("19").x()).done();
        page.bus(74, 34).toY(12).toX(PORT_BUS).toY(80).done();
        page.busName("BD[0..7]", 84, 12);
        Wiring.members(page, driver, List.of("18", "17", "16", "15", "14", "13", "12", "11"), "BD", 74, 66);
    }

    /** The float's two phases, its index and two keys, read with /INP. */
    private void floatInput() {
        Placed plug = page.part("J3", "FLOAT", Chips.box(10, List.of(),
                List.of("1 PHA", "2 PHB", "3 INDEX", "4 SET", "5 SCAN", "6 GND"), null, null), 10, 64);
        Placed buffer = page.part("IC9", "74LS244", PartSymbols.inputBuffer(), 76, 64);
        page.power("+5V", buffer.pin("20"));
        page.power("GND", buffer.pin("10"));
        String[] names = {"PHA", "PHB", "INDEX", "SET", "SCAN"};
        String[] inputs = {"2", "4", "6", "8", "11"};
        for (int i = 0; i < names.length; i++) {
            Spot from = plug.pin(String.valueOf(i + 1));
            page.wire(from).toX(buffer.pin(inputs[i]).x()).done();
            page.label(names[i], 62, from.y());
            Placed r = page.part("R" + (10 + i), "4k7", Passives.resistor(), Turn.DOWN, 34 + 6 * i, 55, Words.RIGHT);
            page.wire(r.end(1)).toY(from.y()).done();
        }
        page.wire(34, 55).toX(58).done();
        page.power("+5V", new Spot(34, 55));
        page.power("GND", page.wire(plug.pin("6")).toX(26).toY(78).done());
        Wiring.named(page, buffer.pin("13"), 10, "TICK");
        page.wire(buffer.pin("17")).toX(64).done();
        page.power("GND", page.wire(buffer.pin("15")).toX(64).toY(82).done());
        page.wire(arrives("/INP", 96)).toX(68).uprightTo(buffer.pin("1"));
        page.wire(68, 86).toX(buffer.pin("19").x()).done();
        Wiring.members(page, buffer, List.of("18", "16", "14", "12", "9", "7", "5", "3"), "BD", PORT_BUS, 98);
    }

    /** Each turn of the float sets the flip-flop and interrupts; reading port 3 clears it. */
    private void tick() {
        Placed gate = page.unit("IC13", "A", "74LS32", Gates.or("1", "2", "3"), 40, 114);
        Placed flip = page.unit("IC12", "A", "74LS74", PartSymbols.flipFlop(), 66, 102,
                Words.ABOVE_AND_BELOW);
        page.wire(30, 40).uprightTo(gate.pin("1"));
        page.wire(arrives("/IO3", 116)).toX(gate.pin("2").x()).done();
        page.wire(gate.pin("3")).toX(flip.pin("1").x()).done();
        page.label("/TCLR", 56, 114);
        page.power("+5V", flip.pin("4"));
        page.power("+5V", page.wire(flip.pin("2")).toX(58).toY(102).done());
        Wiring.named(page, flip.pin("3"), 8, "PHA");
        page.wire(flip.pin("5")).right(8).done();
        page.label("TICK", flip.pin("5").plus(2, 0));
        page.offSheet("/INT", page.wire(flip.pin("6")).right(3).done(), true, true);
    }

    /** Two lamps, the log output, and the sync of the display. Returns where the sync leaves the latch. */
    private Spot outputLatch() {
        Placed latch = page.part("IC10", "74LS374", PartSymbols.outputLatch(), 128, 22);
        page.power("+5V", latch.pin("20"));
        page.power("GND", latch.pin("10"));
        Wiring.members(page, latch, List.of("3", "4", "7", "8", "13", "14", "17", "18"), "BD", PORT_BUS, 112);
        page.offSheet("/OUTP", page.wire(latch.pin("11")).left(2).done(), false, false);
        page.power("GND", page.wire(latch.pin("1")).toX(120).toY(46).done());
        lamp(latch.pin("2"), 16, 150, "R20", "D3", "RUN");
        lamp(latch.pin("5"), 26, 150, "R21", "D4", "ALARM");
        page.power("+5V", page.wire(178, 26).toY(14).done());
        Placed log = page.part("J5", "LOG OUT", Chips.box(12,
                List.of("1 TXD", "2 RTS", "3 STB", "4 GND"), List.of(), null, null), 172, 34);
        page.wire(latch.pin("6")).toX(156).uprightTo(log.pin("1"));
        page.wire(latch.pin("9")).toX(154).uprightTo(log.pin("2"));
        page.wire(latch.pin("12")).toX(152).uprightTo(log.pin("3"));
        page.power("GND", page.wire(log.pin("4")).toX(166).toY(44).done());
        return latch.pin("19");
    }

    private void lamp(Spot output, int row, int turn, String resistor, String diode, String colour) {
        Placed r = page.part(resistor, "330", Passives.resistor(), Turn.NONE, 154, row, Words.CENTRED);
        Placed d = page.part(diode, colour, Semiconductors.led(), Turn.MIRROR, 174, row, Words.BOTH_BELOW);
        page.wire(output).toX(turn).uprightTo(r.end(0));
        page.wire(r.end(1)).toX(d.end(1).x()).done();
        page.wire(d.end(0)).toX(178).done();
    }

    /** Eight pixels in with /PIX, one out with each tick of the clock. Returns where the pixels come out. */
    private Spot shifter() {
        Placed shift = page.part("IC11", "74LS166", PartSymbols.shifter(), 128, 67);
        page.power("+5V", shift.pin("16"));
        page.power("GND", shift.pin("8"));
        Wiring.members(page, shift, List.of("2", "3", "4", "5", "10", "11", "12", "14"), "BD", PORT_BUS, 112);
        Placed gate = page.unit("IC13", "B", "74LS32", Gates.or("4", "5", "6"), 40, 127);
        page.wire(arrives("/WR", 125)).toX(gate.pin("4").x()).done();
        page.wire(arrives("/IO2", 129)).toX(gate.pin("5").x()).done();
        page.wire(gate.pin("6")).toX(109).uprightTo(shift.pin("15"));
        page.label("/PIX", 56, 127);
        page.offSheet("CLK", page.wire(shift.pin("7")).left(2).done(), false, false);
        page.offSheet("/RESET", page.wire(shift.pin("9")).left(2).done(), false, false);
        page.wire(shift.pin("1")).toX(120).done();
        page.power("GND", page.wire(shift.pin("6")).toX(120).toY(103).done());
        page.wire(120, 99).toY(101).done();
        return shift.pin("13");
    }

    private void readings() {
        double x = 178;
        double y = 112;
        page.rule(0.5, x - 2, y - 3.5, x + 50, y - 3.5, x + 50, y + 26, x - 2, y + 26, x - 2, y - 3.5);
        page.note("Readings on a working board", x, y, 8);
        String[] lines = {
            "TP1   4.00 MHz, 0.2 V to 4.8 V",
            "TP2   active low, about 0.4 us wide while running",
            "TP3   5.00 V, 4.85 V to 5.15 V",
            "IC14 pin 1   8.5 V to 11 V",
            "Q1 base   sync tip 0.6 V, blank 1.3 V, white 2.7 V",
            "J4 pin 1   1.0 V peak to peak into 75 ohms",
            "Current at 9 V   420 mA, lamps off",
            "Caution: C20 stays charged after the plug is pulled."};
        for (int i = 0; i < lines.length; i++) {
            page.note(lines[i], x, y + 3.6 + 2.8 * i, 6.5);
        }
    }
}
