// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.probes;

import java.util.List;

/** Gates of the 74 series, with the pins of their first section (data sheets of the series). */
enum GateKind {
    NAND2("74LS00", List.of("1", "2"), "3"),
    NOR2("74LS02", List.of("2", "3"), "1"),
    NOT("74LS04", List.of("1"), "2"),
    AND2("74LS08", List.of("1", "2"), "3"),
    NAND3("74LS10", List.of("1", "2", "13"), "12"),
    NAND4("74LS20", List.of("1", "2", "4", "5"), "6"),
    OR2("74LS32", List.of("1", "2"), "3"),
    XOR2("74LS86", List.of("1", "2"), "3");

    private final String value;
    private final List<String> in;
    private final String out;

    GateKind(String value, List<String> in, String out) {
        this.value = value;
        this.in = in;
        this.out = out;
    }

    /** What is printed beside such a part. */
    String value() {
        return value;
    }

    List<String> in() {
        return in;
    }

    String out() {
        return out;
    }

    /** The output for inputs: what the gate is for, not how the product works it out. */
    boolean output(boolean[] in) {
        int high = 0;
        for (boolean level : in) {
            high += level ? 1 : 0;
        }
        return switch (this) {
            case NAND2, NAND3, NAND4 -> high < in.length;
            case AND2 -> high == in.length;
            case OR2 -> high > 0;
            case NOR2 -> high == 0;
            case NOT -> high == 0;
            case XOR2 -> high % 2 == 1;
        };
    }
}
