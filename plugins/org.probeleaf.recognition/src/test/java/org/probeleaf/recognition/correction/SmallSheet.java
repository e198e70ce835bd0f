// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.Junction;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Sheet;
import org.probeleaf.schematic.netlist.SheetKind;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.schematic.place.Place;

/**
 * A sheet with one thing of each kind. Two wires cross without a dot at 50,50 (N1 named A lies, N2 stands); three are
 * joined at 50,120 (N3 named T); N4 named VCC is in two runs that a name joins; N5 is a loop; IC5 has two units.
 */
final class SmallSheet {

    private SmallSheet() {
    }

    static Netlist netlist() {
        List<Net> nets = List.of(
                net("N1", "A", List.of(wire(10, 50, 90, 50)), List.of(), List.of(label("A", 20, 50))),
                net("N2", null, List.of(wire(50, 10, 50, 90)), List.of(), List.of()),
                net("N3", "T", List.of(wire(10, 120, 90, 120), wire(50, 120, 50, 150)),
                        List.of(new Junction(1, new Point(50, 120))), List.of(label("T", 20, 120))),
                net("N4", "VCC", List.of(wire(110, 10, 150, 10), wire(110, 40, 150, 40)), List.of(),
                        List.of(label("VCC", 110, 10), label("VCC", 110, 40))),
                net("N5", null, List.of(wire(110, 70, 150, 70), wire(150, 70, 150, 100), wire(150, 100, 110, 100),
                        wire(110, 100, 110, 70)), List.of(), List.of()));
        List<Part> parts = List.of(
                part("IC5", "74LS00", List.of(new PartUnit("A", 1, new Box(200, 10, 220, 30)),
                        new PartUnit("B", 1, new Box(200, 50, 220, 70))),
                        pin("1", "A", 200, 15, null), pin("2", "A", 220, 20, null), pin("4", "B", 200, 55, null),
                        new Pin("14", "VCC", null, 1, null, "N4", true)),
                part("R1", "4k7", box(240, 40), bare(240, 30, null), bare(240, 50, null)),
                part("U1", null, box(5, 80), pin("1", null, 10, 50, "N1"), pin("2", null, 10, 120, "N3"),
                        pin("3", null, 150, 10, "N4"), pin("4", null, 110, 70, "N5")),
                part("U2", null, box(95, 80), pin("1", null, 90, 50, "N1"), pin("2", null, 90, 120, "N3"),
                        pin("3", null, 150, 40, "N4"), pin("4", null, 150, 100, "N5")),
                part("U3", null, box(50, 5), pin("1", null, 50, 10, "N2"), pin("2", null, 50, 150, "N3")),
                part("U4", null, box(50, 95), pin("1", null, 50, 90, "N2")));
        List<Doubt> doubts = List.of(new Doubt("open-crossing", 1, new Point(50, 50), "A crossing or a joint."));
        return new Netlist("small.pdf", "00", List.of(new Sheet(1, 300, 200, SheetKind.VECTOR)), parts, nets, doubts);
    }

    private static Net net(String id, String name, List<Wire> wires, List<Junction> dots, List<NetLabel> labels) {
        return new Net(id, name, List.of(1), wires, dots, labels, id.equals("N1") ? 0.6 : 0.98);
    }

    private static Wire wire(double x0, double y0, double x1, double y1) {
        return new Wire(1, List.of(new Point(x0, y0), new Point(x1, y1)));
    }

    private static NetLabel label(String text, double x, double y) {
        return new NetLabel(text, 1, new Point(x, y), LabelKind.LABEL);
    }

    private static List<PartUnit> box(double x, double y) {
        return List.of(new PartUnit(null, 1, new Box(x - 4, y - 4, x + 4, y + 4)));
    }

    private static Part part(String ref, String value, List<PartUnit> units, Pin... pins) {
        return new Part(ref, value, units, List.of(pins));
    }

    private static Pin pin(String number, String unit, double x, double y, String net) {
        return Pin.drawn(number, null, unit, 1, new Point(x, y), net);
    }

    private static Pin bare(double x, double y, String net) {
        return Pin.drawn(null, null, null, 1, new Point(x, y), net);
    }

    /** A spot on page 1. */
    static Spot at(double x, double y) {
        return Spot.of(1, new Point(x, y));
    }

    /** A spot named otherwise. */
    static Spot at(String place, double x, double y) {
        return new Spot(Place.parse(place), 1, new Point(x, y));
    }

    /** A pin by its name, pinned to where it ends. */
    static Spot pin(String place) {
        Place.OfPin p = (Place.OfPin) Place.parse(place);
        Part part = netlist().part(p.ref()).orElseThrow();
        Pin pin = part.pins().stream().filter(q -> p.pin().equals(q.number())).findFirst()
                .orElseGet(() -> part.pins().get(Integer.parseInt(p.pin()) - 1));
        return new Spot(p, 1, pin.at() == null ? part.units().get(0).box().centre() : pin.at());
    }

    /** Pins by net, in the order of names; pins on no net are left out. */
    static Set<String> nets(Netlist netlist) {
        Map<String, Set<String>> byNet = new TreeMap<>();
        for (Part part : netlist.parts()) {
            for (int i = 0; i < part.pins().size(); i++) {
                Pin pin = part.pins().get(i);
                if (pin.net() != null) {
                    String label = pin.number() != null ? pin.number() : pin.implied() ? pin.name() : "#" + (i + 1);
                    byNet.computeIfAbsent(pin.net(), k -> new TreeSet<>()).add(part.ref() + "." + label);
                }
            }
        }
        return byNet.values().stream().map(s -> String.join(" ", s)).collect(Collectors.toCollection(TreeSet::new));
    }

    /** The same netlist with other ids. */
    static Netlist renamed(Netlist n, UnaryOperator<String> id) {
        List<Net> nets = new ArrayList<>();
        Map<String, String> ids = new HashMap<>();
        n.nets().forEach(net -> ids.put(net.id(), id.apply(net.id())));
        for (Net net : n.nets()) {
            nets.add(0, new Net(ids.get(net.id()), net.name(), net.pages(), net.wires(), net.junctions(), net.labels(),
                    net.confidence()));
        }
        List<Part> parts = n.parts().stream().map(p -> new Part(p.ref(), p.value(), p.units(), p.pins().stream()
                .map(q -> new Pin(q.number(), q.name(), q.unit(), q.page(), q.at(), ids.get(q.net()), q.implied()))
                .toList())).toList();
        return new Netlist(n.file(), n.sha256(), n.sheets(), parts, nets, n.doubts());
    }
}
