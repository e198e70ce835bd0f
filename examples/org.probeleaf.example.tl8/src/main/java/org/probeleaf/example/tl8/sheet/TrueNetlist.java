// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import org.probeleaf.example.tl8.sheet.Connections.Cluster;
import org.probeleaf.example.tl8.sheet.Connections.PinAt;
import org.probeleaf.example.tl8.symbol.Symbol;
import org.probeleaf.schematic.netlist.Junction;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Sheet;
import org.probeleaf.schematic.netlist.SheetKind;
import org.probeleaf.schematic.netlist.Wire;

/** The netlist that a set of pages was drawn from. */
public final class TrueNetlist {
    private final Map<PinAt, String> netOfPin = new LinkedHashMap<>();
    private final List<Net> nets = new ArrayList<>();

    private TrueNetlist() {
    }

    /**
     * Derives the netlist from the model.
     *
     * @param file   name of the drawn file
     * @param sha256 of its bytes
     * @param pages  the pages
     */
    public static Netlist of(String file, String sha256, List<Page> pages) {
        TrueNetlist builder = new TrueNetlist();
        for (Cluster cluster : Connections.of(pages)) {
            if (cluster.pins().size() + cluster.wires().size() + cluster.names().size() > 1) {
                builder.addNet(cluster);
            }
        }
        List<Sheet> sheets = pages.stream().map(p -> new Sheet(p.number(), p.columns() * Symbol.GRID,
                p.rows() * Symbol.GRID, SheetKind.VECTOR)).toList();
        return new Netlist(file, sha256, sheets, builder.parts(pages), builder.nets, List.of());
    }

    private void addNet(Cluster cluster) {
        String id = "N" + (nets.size() + 1);
        cluster.pins().forEach(p -> netOfPin.put(p, id));
        String name = cluster.names().isEmpty() ? null : cluster.names().get(0).tag().text();
        TreeSet<Integer> pages = new TreeSet<>();
        List<Wire> wires = new ArrayList<>();
        List<Junction> junctions = new ArrayList<>();
        cluster.pins().forEach(p -> pages.add(p.page().number()));
        for (Connections.WireAt w : cluster.wires()) {
            pages.add(w.page().number());
            wires.add(new Wire(w.page().number(), w.run().spots().stream().map(Spot::point).toList()));
            for (Spot s : Connections.junctions(w.page())) {
                Junction junction = new Junction(w.page().number(), s.point());
                if (w.run().passes(s) && !junctions.contains(junction)) {
                    junctions.add(junction);
                }
            }
        }
        List<NetLabel> labels = new ArrayList<>();
        for (Connections.NameAt n : cluster.names()) {
            pages.add(n.page().number());
            labels.add(new NetLabel(n.tag().text(), n.page().number(), n.tag().at().point(), n.tag().kind()));
        }
        nets.add(new Net(id, name, List.copyOf(pages), wires, junctions, labels, 1.0));
    }

    private List<Part> parts(List<Page> pages) {
        Map<String, List<PartUnit>> units = new LinkedHashMap<>();
        Map<String, String> values = new LinkedHashMap<>();
        for (Page page : pages) {
            for (Placed p : page.parts()) {
                units.computeIfAbsent(p.ref(), r -> new ArrayList<>())
                        .add(new PartUnit(p.unit(), page.number(), p.box()));
                values.put(p.ref(), p.value());
            }
        }
        Map<String, List<Pin>> pins = new LinkedHashMap<>();
        for (Page page : pages) {
            for (Placed p : page.parts()) {
                p.symbol().pins().forEach(s -> pins.computeIfAbsent(p.ref(), r -> new ArrayList<>())
                        .add(Pin.drawn(s.number(), s.calledBy(), p.unit(), page.number(), p.spot(s).point(),
                                netOfPin.get(new PinAt(page, p, s)))));
            }
        }
        return units.keySet().stream().sorted(byDesignator())
                .map(ref -> new Part(ref, values.get(ref), units.get(ref), pins.get(ref))).toList();
    }

    /** R2 before R10. */
    private static Comparator<String> byDesignator() {
        return Comparator.comparing((String ref) -> ref.replaceAll("\\d+$", ""))
                .thenComparingInt(ref -> Integer.parseInt(ref.replaceAll("^\\D+", "")));
    }
}
