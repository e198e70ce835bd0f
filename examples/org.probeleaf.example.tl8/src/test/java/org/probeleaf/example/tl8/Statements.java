// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

/** What a netlist says, in lines of text that do not depend on its ids: two netlists that say the same are equal. */
final class Statements {

    private Statements() {
    }

    /** One line for each part: designator, value, and its units with their pages. */
    static List<String> parts(Netlist netlist) {
        List<String> lines = new ArrayList<>();
        for (Part part : netlist.parts()) {
            List<String> units = part.units().stream().map(u -> u.name() + "@" + u.page()).sorted().toList();
            lines.add(part.ref() + " " + part.value() + " " + units);
        }
        return lines.stream().sorted().toList();
    }

    /** One line for each drawn name: its text, kind and page. */
    static List<String> labels(Netlist netlist) {
        return netlist.nets().stream().flatMap(n -> n.labels().stream())
                .map(l -> l.text() + " " + l.kind() + " page " + l.page()).sorted().toList();
    }

    /** One line for each place where wires are joined, to the nearest point. */
    static List<String> junctions(Netlist netlist) {
        return netlist.nets().stream().flatMap(n -> n.junctions().stream())
                .map(j -> "page " + j.page() + " at " + nearest(j.at())).sorted().toList();
    }

    /** One line for each pin that bears a number: where wires meet it, to the nearest point. */
    static List<String> pinPlaces(Netlist netlist) {
        List<String> lines = new ArrayList<>();
        for (Part part : netlist.parts()) {
            part.pins().stream().filter(p -> p.number() != null && !p.implied()).forEach(
                    p -> lines.add(part.ref() + "." + p.number() + " page " + p.page() + " at " + nearest(p.at())));
        }
        return lines.stream().sorted().toList();
    }

    private static String nearest(Point p) {
        return Math.round(p.x()) + ", " + Math.round(p.y());
    }

    /** One line for each pin: part, unit, number, name and page. */
    static List<String> pins(Netlist netlist) {
        List<String> lines = new ArrayList<>();
        for (Part part : netlist.parts()) {
            part.pins().stream().filter(p -> !p.implied()).forEach(p -> lines.add(
                    part.ref() + "." + p.number() + " name " + p.name() + " unit " + p.unit() + " page " + p.page()));
        }
        return lines.stream().sorted().toList();
    }

    /** One line for each net: its name and its pins; a pin without a net stands alone. */
    static List<String> nets(Netlist netlist) {
        Map<String, List<String>> pinsByNet = new TreeMap<>();
        List<String> lines = new ArrayList<>();
        for (Part part : netlist.parts()) {
            for (Pin pin : part.pins()) {
                String text = part.ref() + "." + (pin.number() == null ? "?" : pin.number());
                if (pin.net() == null) {
                    lines.add("unconnected: " + text);
                } else if (!pin.implied()) {
                    pinsByNet.computeIfAbsent(pin.net(), n -> new ArrayList<>()).add(text);
                }
            }
        }
        for (Map.Entry<String, List<String>> e : pinsByNet.entrySet()) {
            String name = netlist.net(e.getKey()).map(Net::name).orElse("(no name)");
            lines.add(name + ": " + String.join(" ", e.getValue().stream().sorted().toList()));
        }
        return lines.stream().sorted().toList();
    }

    /** The lines that only one side has, "-" those of the truth and "+" those of the reading; "" where there are none. */
    static String difference(List<String> truth, List<String> reading) {
        List<String> lines = new ArrayList<>();
        truth.stream().filter(t -> !reading.contains(t)).forEach(t -> lines.add("- " + t));
        reading.stream().filter(t -> !truth.contains(t)).forEach(t -> lines.add("+ " + t));
        if (lines.isEmpty() && truth.size() != reading.size()) {
            lines.add(truth.size() + " lines, and " + reading.size() + " with repetitions");
        }
        return String.join("\n", lines);
    }
}
