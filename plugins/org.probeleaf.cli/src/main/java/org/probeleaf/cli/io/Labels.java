// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.SignalGraph;

/** The technician's net labels put on a netlist: a net can then be named by them, and one without a name has it. */
final class Labels {

    private Labels() {
    }

    static Netlist applied(Netlist netlist, List<LabelMark> labels) {
        if (labels.isEmpty()) {
            return netlist;
        }
        SignalGraph graph = SignalGraph.of(netlist, PartBook.standard());
        Map<String, Net> nets = new HashMap<>();
        netlist.nets().forEach(n -> nets.put(n.id(), n));
        for (LabelMark label : labels) {
            Optional<Net> named = graph.netAt(label.place());
            // A correction may have taken the wire at the label off the net that it was named by.
            boolean elsewhere = label.place() instanceof Place.OfNet && named.filter(n -> lies(n, label)).isEmpty();
            Optional<Net> there = named.isPresent() && !elsewhere ? named : graph.netAt(
                    new Place.OnPage(label.page(), label.at().x(), label.at().y()));
            Optional<Net> net = there.or(() -> named);
            net.ifPresent(n -> nets.compute(n.id(), (id, now) -> labelled(now, label)));
        }
        return new Netlist(netlist.file(), netlist.sha256(), netlist.sheets(), netlist.parts(),
                netlist.nets().stream().map(n -> nets.get(n.id())).toList(), netlist.doubts());
    }

    private static boolean lies(Net net, LabelMark label) {
        return net.wires().stream().filter(w -> w.page() == label.page()).anyMatch(w -> {
            for (int i = 1; i < w.points().size(); i++) {
                Point a = w.points().get(i - 1);
                Point b = w.points().get(i);
                if (Math.abs(a.distance(label.at()) + label.at().distance(b) - a.distance(b)) < 0.5) {
                    return true;
                }
            }
            return false;
        });
    }

    private static Net labelled(Net net, LabelMark label) {
        List<NetLabel> all = new ArrayList<>(net.labels());
        all.add(new NetLabel(label.text(), label.page(), label.at(), LabelKind.LABEL));
        return new Net(net.id(), net.name() == null ? label.text() : net.name(), net.pages(), net.wires(),
                net.junctions(), all, net.confidence());
    }
}
