// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;

import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.SignalGraph;

/** What is connected, for people: the nets by name with their pins, then the doubts. */
public final class NetsText {

    private static final Comparator<Net> BY_NAME = Comparator.comparing((Net n) -> n.name() == null)
            .thenComparing(Net::title, NaturalOrder.INSTANCE);

    private NetsText() {
    }

    public static void write(PrintStream out, Path drawing, Netlist netlist) {
        SignalGraph graph = SignalGraph.of(netlist, PartBook.standard());
        List<Net> wired = netlist.nets().stream().filter(n -> !graph.pinsOn(n.id()).isEmpty()).sorted(BY_NAME)
                .toList();
        out.println(drawing + ": " + Words.count(netlist.sheets().size(), "sheet") + ", "
                + Words.count(netlist.parts().size(), "part") + ", " + Words.count(wired.size(), "net") + " with pins, "
                + Words.count(netlist.doubts().size(), "doubt"));
        int width = wired.stream().mapToInt(n -> n.title().length()).filter(l -> l <= 24).max().orElse(8);
        for (Net net : wired) {
            List<String> pins = graph.pinsOn(net.id()).stream().map(p -> p.place().text()).toList();
            Words.wrapped(out, "  " + Words.padded(net.title(), width) + "  ", pins);
        }
        List<String> alone = netlist.parts().stream().filter(p -> p.pins().stream().allMatch(q -> q.net() == null))
                .map(Part::ref).sorted(NaturalOrder.INSTANCE).toList();
        if (!alone.isEmpty()) {
            Words.wrapped(out, "  on no net: ", alone);
        }
        for (Doubt d : netlist.doubts()) {
            String at = d.at() == null ? "sheet " + d.page()
                    : new Place.OnPage(d.page(), d.at().x(), d.at().y()).text();
            out.println("  unsure at " + at + ": " + d.text());
        }
    }
}
