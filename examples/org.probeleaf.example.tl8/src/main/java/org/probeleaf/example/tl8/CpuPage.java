// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import java.util.List;

import org.probeleaf.example.tl8.sheet.Page;
import org.probeleaf.example.tl8.sheet.Placed;
import org.probeleaf.example.tl8.sheet.Placed.Words;
import org.probeleaf.example.tl8.sheet.Spot;
import org.probeleaf.example.tl8.symbol.Gates;
import org.probeleaf.example.tl8.symbol.Passives;
import org.probeleaf.example.tl8.symbol.Turn;

/** Page 1: processor, memory, and the decoding of addresses. */
final class CpuPage {
    static final List<String> CPU_DATA = List.of("14", "15", "12", "8", "7", "9", "10", "13");
    private static final List<String> CPU_ADDRESS = List.of("30", "31", "32", "33", "34", "35", "36", "37", "38", "39",
            "40", "1", "2", "3", "4", "5");
    private static final List<String> MEMORY_ADDRESS = List.of("10", "9", "8", "7", "6", "5", "4", "3", "25", "24",
            "21", "23", "2", "26", "1");
    private static final List<String> MEMORY_DATA = List.of("11", "12", "13", "15", "16", "17", "18", "19");
    private static final int FLAGS = 216;

    private final Page page = Frame.page(1, "Processor and memory");
    private final Placed cpu = page.part("IC1", "Z80A", PartSymbols.cpu(), 60, 24);
    private final Placed rom = page.part("IC2", "27128", PartSymbols.eprom(), 130, 28);
    private final Placed ram = page.part("IC3", "62256", PartSymbols.ram(), 182, 28);

    private CpuPage() {
    }

    /** Draws the page. */
    static Page draw() {
        CpuPage p = new CpuPage();
        p.buses();
        p.supplies();
        p.strobes();
        p.memorySelect();
        p.portSelect();
        ClockAndReset.draw(p.page, p.cpu);
        p.pullUps();
        p.decoupling();
        return p.page;
    }

    private void buses() {
        page.bus(102, 38).toY(11).toX(218).done();
        page.bus(162, 42).toY(11).done();
        page.bus(214, 42).toY(11).done();
        page.busName("D[0..7]", 120, 11);
        page.offSheet("D[0..7]", new Spot(218, 11), true, true);
        page.bus(108, 72).toY(16).toX(168).toY(56).done();
        page.bus(116, 16).toY(54).done();
        page.busName("A[0..15]", 120, 16);
        Wiring.members(page, cpu, CPU_DATA, "D", 102, 92);
        Wiring.members(page, cpu, CPU_ADDRESS, "A", 108, 92);
        Wiring.members(page, rom, MEMORY_ADDRESS.subList(0, 14), "A", 116, 120);
        Wiring.members(page, rom, MEMORY_DATA, "D", 162, 154);
        Wiring.members(page, ram, MEMORY_ADDRESS, "A", 168, 172);
        Wiring.members(page, ram, MEMORY_DATA, "D", 214, 206);
    }

    private void supplies() {
        page.power("+5V", cpu.pin("11"));
        page.power("GND", cpu.pin("29"));
        page.power("+5V", rom.pin("28"));
        page.power("GND", rom.pin("14"));
        page.power("+5V", ram.pin("28"));
        page.power("GND", ram.pin("14"));
        // the programming pins of the EPROM rest at +5 V
        page.wire(rom.pin("27")).toX(156).done();
        page.power("+5V", page.wire(rom.pin("1")).toX(156).toY(57).done());
    }

    /** The read strobe to both memories and to page 2, the write strobe to the RAM and to page 2. */
    private void strobes() {
        page.wire(cpu.pin("21")).toX(FLAGS).done();
        page.offSheet("/RD", new Spot(FLAGS, 90), true, true);
        page.label("/RD", 100, 90);
        page.wire(122, 90).uprightTo(rom.pin("22"));
        page.wire(174, 90).uprightTo(ram.pin("22"));
        page.wire(cpu.pin("22")).toX(FLAGS).done();
        page.offSheet("/WR", new Spot(FLAGS, 94), true, true);
        page.label("/WR", 100, 94);
        page.wire(176, 94).uprightTo(ram.pin("27"));
        page.part("TP2", null, Passives.testPoint(), Turn.UP, 110, 90, Words.LEFT);
    }

    /** The EPROM answers below 8000h, the RAM above. */
    private void memorySelect() {
        Placed romGate = page.unit("IC5", "A", "74LS32", Gates.or("1", "2", "3"), 134, 84);
        page.wire(cpu.pin("19")).toX(romGate.pin("1").x()).done();
        page.label("/MREQ", 100, 82);
        Wiring.named(page, romGate.pin("2"), 6, "A15");
        page.wire(romGate.pin("3")).right(3).toY(77).toX(120).uprightTo(rom.pin("20"));
        page.label("/ROMCS", 124, 77);

        Placed invert = page.unit("IC6", "D", "74LS04", Gates.not("9", "8"), 112, 110);
        Placed ramGate = page.unit("IC5", "B", "74LS32", Gates.or("4", "5", "6"), 134, 102);
        page.wire(114, 82).uprightTo(ramGate.pin("4"));
        Wiring.named(page, invert.pin("9"), 6, "A15");
        page.wire(invert.pin("8")).toX(126).uprightTo(ramGate.pin("5"));
        page.wire(ramGate.pin("6")).toX(172).uprightTo(ram.pin("20"));
        page.label("/RAMCS", 151, 102);
    }

    /** Four ports, each sixteen addresses wide; read and write gated with the strobes. */
    private void portSelect() {
        Placed decoder = page.part("IC4", "74LS138", PartSymbols.decoder(), 112, 122);
        page.power("+5V", decoder.pin("16"));
        page.power("GND", decoder.pin("8"));
        Wiring.named(page, decoder.pin("1"), 5, "A4");
        Wiring.named(page, decoder.pin("2"), 5, "A5");
        Wiring.named(page, decoder.pin("3"), 5, "A6");
        Wiring.named(page, decoder.pin("5"), 5, "A7");
        page.wire(cpu.pin("27")).toX(96).uprightTo(decoder.pin("6"));
        page.label("/M1", 99, 132);
        page.wire(cpu.pin("20")).toX(98).uprightTo(decoder.pin("4"));
        page.offSheet("/IORQ", page.wire(98, 134).toY(152).toX(140).done(), true, true);

        Placed readGate = page.unit("IC5", "C", "74LS32", Gates.or("9", "10", "8"), 184, 116);
        page.wire(166, 90).uprightTo(readGate.pin("9"));
        page.wire(decoder.pin("15")).toX(150).uprightTo(readGate.pin("10"));
        page.label("/IO0", 134, 124);
        page.offSheet("/INP", page.wire(readGate.pin("8")).toX(FLAGS).done(), true, true);

        Placed writeGate = page.unit("IC5", "D", "74LS32", Gates.or("12", "13", "11"), 184, 130);
        page.wire(162, 94).uprightTo(writeGate.pin("12"));
        page.wire(decoder.pin("14")).toX(154).uprightTo(writeGate.pin("13"));
        page.label("/IO1", 134, 126);
        page.offSheet("/OUTP", page.wire(writeGate.pin("11")).toX(FLAGS).done(), true, true);

        page.offSheet("/IO2", page.wire(decoder.pin("13")).toX(146).toY(139).toX(FLAGS).done(), true, true);
        page.offSheet("/IO3", page.wire(decoder.pin("12")).toX(142).toY(142).toX(FLAGS).done(), true, true);
    }

    private void pullUps() {
        String[] pins = {"16", "17", "24", "25"};
        int rail = 18;
        for (int i = 0; i < pins.length; i++) {
            Spot pin = cpu.pin(pins[i]);
            Placed r = page.part("R" + (4 + i), "4k7", Passives.resistor(), Turn.NONE, 26, pin.y(), Words.CENTRED);
            page.wire(r.end(1)).toX(pin.x()).done();
            if (i < pins.length - 1) {
                page.wire(r.end(0)).toX(rail).done();
            } else {
                page.power("+5V", page.wire(r.end(0)).toX(rail).toY(82).done());
            }
        }
        Spot interrupt = cpu.pin("16");
        page.offSheet("/INT", page.wire(40, interrupt.y()).toY(80).toX(34).done(), false, false);
    }

    /** One capacitor beside each of the logic chips. */
    private void decoupling() {
        page.note("Beside IC1 to IC4 and IC8 to IC11:", 10, 114.5, 6.5);
        int count = 8;
        for (int i = 0; i < count; i++) {
            int x = 14 + 10 * i;
            Placed c = page.part("C" + (10 + i), "100n", Passives.capacitor(), Turn.DOWN, x, 123, Words.RIGHT);
            page.wire(c.end(0)).down(-2).done();
            page.wire(c.end(1)).down(2).done();
        }
        int last = 14 + 10 * (count - 1);
        page.wire(14, 121).toX(last).done();
        page.wire(14, 131).toX(last).done();
        page.power("+5V", new Spot(14, 121));
        page.power("GND", new Spot(14, 131));
        page.note("Supply of the gates: IC5, IC6, IC7, IC12, IC13 pin 14 to +5V, pin 7 to GND.", 10, 143, 6.5);
        page.note("Unused inputs are tied to GND. All resistors 0.25 W, 5 %.", 10, 145.6, 6.5);
        page.note("A dot joins; lines that cross without a dot do not.", 10, 148.2, 6.5);
        page.note("Same name, same line, on both sheets.", 10, 150.8, 6.5);
    }
}
