// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.example.tl8.symbol.Chips;
import org.probeleaf.example.tl8.symbol.Symbol;

/** The boxed parts of the TL-8. Pin numbers and names are those of the makers' data sheets. */
final class PartSymbols {
    private static final String VCC_LAST = " VCC";

    private PartSymbols() {
    }

    /** 8-bit processor in 40 pins. */
    static Symbol cpu() {
        List<String> left = rows(39);
        left.set(2, "6 CLK");
        left.set(23, "26 /RESET");
        left.set(29, "16 /INT");
        left.set(32, "17 /NMI");
        left.set(35, "24 /WAIT");
        left.set(38, "25 /BUSREQ");
        List<String> right = rows(39);
        String[] data = {"14", "15", "12", "8", "7", "9", "10", "13"};
        fill(right, 0, data, "D");
        String[] address = {"30", "31", "32", "33", "34", "35", "36", "37", "38", "39", "40", "1", "2", "3", "4", "5"};
        fill(right, 9, address, "A");
        right.set(26, "27 /M1");
        right.set(28, "19 /MREQ");
        right.set(30, "20 /IORQ");
        right.set(32, "21 /RD");
        right.set(34, "22 /WR");
        right.set(36, "28 /RFSH");
        right.set(37, "18 /HALT");
        right.set(38, "23 /BUSACK");
        return Chips.box(26, left, right, "11 VCC", "29 GND");
    }

    /** 16 K EPROM in 28 pins. */
    static Symbol eprom() {
        List<String> left = rows(19);
        String[] address = {"10", "9", "8", "7", "6", "5", "4", "3", "25", "24", "21", "23", "2", "26"};
        fill(left, 0, address, "A");
        left.set(15, "20 /CE");
        left.set(16, "22 /OE");
        List<String> right = rows(19);
        String[] data = {"11", "12", "13", "15", "16", "17", "18", "19"};
        fill(right, 0, data, "O");
        right.set(15, "27 /PGM");
        right.set(16, "1 VPP");
        return Chips.box(18, left, right, 28 + VCC_LAST, "14 GND");
    }

    /** 32 K static memory in 28 pins. */
    static Symbol ram() {
        List<String> left = rows(19);
        String[] address = {"10", "9", "8", "7", "6", "5", "4", "3", "25", "24", "21", "23", "2", "26", "1"};
        fill(left, 0, address, "A");
        left.set(16, "20 /CE");
        left.set(17, "22 /OE");
        left.set(18, "27 /WE");
        List<String> right = rows(19);
        String[] data = {"11", "12", "13", "15", "16", "17", "18", "19"};
        fill(right, 0, data, "I/O");
        return Chips.box(18, left, right, 28 + VCC_LAST, "14 GND");
    }

    /** 74138, one of eight. */
    static Symbol decoder() {
        return Chips.box(16, List.of("1 A", "2 B", "3 C", "", "6 G1", "4 /G2A", "5 /G2B"),
                List.of("15 /Y0", "14 /Y1", "13 /Y2", "12 /Y3", "11 /Y4", "10 /Y5", "9 /Y6", "7 /Y7"),
                16 + VCC_LAST, "8 GND");
    }

    /** 74245, eight bus drivers both ways. */
    static Symbol busDriver() {
        List<String> left = new ArrayList<>();
        List<String> right = new ArrayList<>();
        for (int i = 1; i <= 8; i++) {
            left.add((i + 1) + " A" + i);
            right.add((19 - i) + " B" + i);
        }
        left.addAll(List.of("", "1 DIR", "", "19 /OE"));
        return Chips.box(16, left, right, 20 + VCC_LAST, "10 GND");
    }

    /** 74244, eight buffers in two groups. */
    static Symbol inputBuffer() {
        return Chips.box(16,
                List.of("2 1A1", "4 1A2", "6 1A3", "8 1A4", "11 2A1", "13 2A2", "15 2A3", "17 2A4", "", "1 /1G",
                        "19 /2G"),
                List.of("18 1Y1", "16 1Y2", "14 1Y3", "12 1Y4", "9 2Y1", "7 2Y2", "5 2Y3", "3 2Y4"),
                20 + VCC_LAST, "10 GND");
    }

    /** 74374, eight flip-flops. */
    static Symbol outputLatch() {
        return Chips.box(16,
                List.of("3 1D", "4 2D", "7 3D", "8 4D", "13 5D", "14 6D", "17 7D", "18 8D", "", "11 CLK", "1 /OE"),
                List.of("2 1Q", "5 2Q", "6 3Q", "9 4Q", "12 5Q", "15 6Q", "16 7Q", "19 8Q"),
                20 + VCC_LAST, "10 GND");
    }

    /** 74166, eight bits in, one out. */
    static Symbol shifter() {
        return Chips.box(16,
                List.of("2 A", "3 B", "4 C", "5 D", "10 E", "11 F", "12 G", "14 H", "", "15 SH//LD", "", "7 CLK", "",
                        "9 /CLR", "", "1 SER", "6 INH"),
                List.of("", "", "", "", "13 QH"), 16 + VCC_LAST, "8 GND");
    }

    /** The first flip-flop of a 7474. */
    static Symbol flipFlop() {
        return Chips.box(14, List.of("2 D", "", "3 CLK"), List.of("5 Q", "", "6 /Q"), "4 /PRE", "1 /CLR");
    }

    /** Three-legged regulator. */
    static Symbol regulator() {
        return Chips.box(14, List.of("", "1 IN", ""), List.of("", "3 OUT"), null, "2 GND");
    }

    private static List<String> rows(int n) {
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            rows.add("");
        }
        return rows;
    }

    private static void fill(List<String> rows, int from, String[] numbers, String name) {
        for (int i = 0; i < numbers.length; i++) {
            rows.set(from + i, numbers[i] + " " + name + i);
        }
    }
}
