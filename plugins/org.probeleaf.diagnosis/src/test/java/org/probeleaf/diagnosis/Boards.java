// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;

/** Netlists written as one line a part: {@code "IC1 Z80A 21=/RD 22=/WR"}; {@code 21/RD=N1} gives a pin a name. */
public final class Boards {

    private Boards() {
    }

    public static Netlist of(String... lines) {
        Map<String, Net> nets = new LinkedHashMap<>();
        List<Part> parts = new ArrayList<>();
        double y = 0;
        for (String line : lines) {
            String[] words = line.split(" ");
            List<Pin> pins = new ArrayList<>();
            for (int i = 2; i < words.length; i++) {
                String[] pin = words[i].split("=");
                int name = pin[0].indexOf(':');
                String number = name < 0 ? pin[0] : pin[0].substring(0, name);
                String net = pin.length < 2 ? null : pin[1];
                pins.add(Pin.drawn(number.isEmpty() ? null : number, name < 0 ? null : pin[0].substring(name + 1),
                        null, 1, new Point(100 * i, y), net));
                if (net != null) {
                    nets.computeIfAbsent(net, Boards::net);
                }
            }
            parts.add(new Part(words[0], words[1].equals("-") ? null : words[1],
                    List.of(new PartUnit(null, 1, new Box(0, y, 1, y + 1))), pins));
            y += 100;
        }
        return new Netlist("board.pdf", "", List.of(), parts, List.copyOf(nets.values()), List.of());
    }

    private static Net net(String id) {
        boolean power = id.equals("GND") || id.startsWith("+");
        List<NetLabel> labels = power ? List.of(new NetLabel(id, 1, new Point(-1000, -1000), LabelKind.POWER))
                : List.of();
        return new Net(id, id.matches("N\\d+") ? null : id, List.of(1), List.of(), List.of(), labels, 1);
    }
}
