// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import java.util.Map;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

/** What a test asks of a recognised netlist, as text that can be compared. */
final class Reading {

    private Reading() {
    }

    static Netlist read(Drawing... pages) {
        return new Recogniser().recognise("test.pdf", "", List.of(pages), Progress.NONE);
    }

    /** One line a net with pins: its name, or "-", and its pins in order. */
    static String nets(Netlist netlist) {
        Map<String, TreeSet<String>> pins = new TreeMap<>();
        for (Part part : netlist.parts()) {
            for (Pin pin : part.pins()) {
                if (pin.net() != null) {
                    pins.computeIfAbsent(pin.net(), k -> new TreeSet<>())
                            .add(part.ref() + "." + (pin.number() == null ? "?" + sameNet(part, pin) : pin.number()));
                }
            }
        }
        TreeSet<String> lines = new TreeSet<>();
        for (Net net : netlist.nets()) {
            if (pins.containsKey(net.id())) {
                lines.add((net.name() == null ? "-" : net.name()) + ": " + String.join(" ", pins.get(net.id())));
            }
        }
        return String.join("; ", lines);
    }

    /** Tells apart the pins without numbers that one part has on one net. */
    private static long sameNet(Part part, Pin pin) {
        return part.pins().stream().filter(p -> p.number() == null && pin.net().equals(p.net())).count();
    }
}
