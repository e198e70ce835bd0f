// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.Boards;

class SuppliesTest {

    private final Supplies supplies = new Supplies(PartBook.standard());

    @ParameterizedTest
    @CsvSource({"GND, GROUND", "0V, GROUND", "VSS, GROUND", "+5V, SUPPLY", "-12V, SUPPLY", "+3.3V, SUPPLY", "Vcc, SUPPLY",
        "V+, SUPPLY", "VBAT, SIGNAL", "A0, SIGNAL", "/RD, SIGNAL", "+, SIGNAL"})
    void kind_byName(String name, NetKind kind) {
        assertEquals(kind, supplies.kind(net(name), List.of()));
    }

    /** A power symbol tells a supply where its text is that of one; some sheets name signals with such symbols. */
    @ParameterizedTest
    @CsvSource({"VBAT, SUPPLY", "AGND, GROUND", "EARTH, GROUND", "VBATT_SW, SUPPLY", "SHLD_GND, GROUND", "0, GROUND",
        "VMot, SUPPLY", "5V_USB, SUPPLY", "+12V, SUPPLY", "SD_PWR, SUPPLY", "SWCLK, SIGNAL", "USB_D+, SIGNAL",
        "/RESET, SIGNAL"})
    void kind_byPowerSymbol(String symbol, NetKind kind) {
        Net net = net(null, new NetLabel(symbol, 1, new Point(0, 0), LabelKind.POWER));
        assertEquals(kind, supplies.kind(net, List.of()));
    }

    /** The part book knows the supply pins of chips, so a net without a name is a supply or ground by them. */
    @ParameterizedTest
    @CsvSource({"N1, SUPPLY", "N2, GROUND", "N3, SIGNAL", "N4, SIGNAL", "N5, SUPPLY", "N6, GROUND"})
    void kind_bySupplyPins(String id, NetKind kind) {
        SignalNetwork network = SignalNetwork.of(Boards.of("IC1 74LS00 14=N1 7=N2 1=N3 3=N4",
                "IC2 HM6116 24=N4", "IC3 XC9536 1:VCC=N5 2:GND=N6"), PartBook.standard());
        assertEquals(kind, network.kind(id));
    }

    /** A capacitor on a net with a power symbol tells a supply, unless an output drives it. */
    @ParameterizedTest
    @CsvSource({"'C1 10u 1=+X 2=GND', SUPPLY", "'R1 10k 1=+X 2=GND', SIGNAL", "'IC1 74LS04 2=+X | C1 1n 1=+X 2=GND', SIGNAL"})
    void kind_powerSymbolOfNoSupply_byWhatHangsOnIt(String parts, NetKind kind) {
        assertEquals(kind, SignalNetwork.of(Boards.of(parts.split(" \\| ")), PartBook.standard()).kind("+X"));
    }

    @Test
    void kind_unknownNet_isASignal() {
        assertEquals(NetKind.SIGNAL, SignalNetwork.of(Boards.of(), PartBook.standard()).kind("N1"));
    }

    private static Net net(String name, NetLabel... labels) {
        return new Net("N9", name, List.of(1), List.of(), List.of(), List.of(labels), 1);
    }
}
