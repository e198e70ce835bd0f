// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.place.Place;

/**
 * A second, plain way to change a netlist, to hold the real one against: all solder joints are knots that links tie
 * together (a union of sets), with no thought for drawings, names or words. It knows lifting, removing, fitting again,
 * links between pins, cuts at pins, and cuts of a net that is drawn as a row of pins.
 */
final class PlainEditor {

    private final Netlist drawn;
    private final Map<String, String> tied = new HashMap<>();
    private final Map<String, String> legs = new HashMap<>();
    private final Map<String, Boolean> lifted = new HashMap<>();
    private final Map<String, Boolean> cut = new HashMap<>();
    private final Map<String, Boolean> out = new HashMap<>();
    private int fresh;

    private PlainEditor(Netlist drawn) {
        this.drawn = drawn;
    }

    /**
     * The netlist after changes; those that are impossible are passed over.
     *
     * @param rows the pins of each net in the order they are drawn in, twenty points apart
     */
    static Netlist edited(Netlist drawn, Map<String, List<String>> rows, List<BoardChange> changes) {
        PlainEditor editor = new PlainEditor(drawn);
        editor.tieRows(rows, changes);
        changes.forEach(editor::change);
        return editor.netlist();
    }

    /** Ties each pad to its neighbours of the row, unless the wire between is cut. */
    private void tieRows(Map<String, List<String>> rows, List<BoardChange> changes) {
        rows.forEach((net, pads) -> {
            for (int i = 0; i < pads.size(); i++) {
                Place between = i == 0 ? null : BoardTraceTest.between(drawn, pads.get(i - 1), pads.get(i));
                if (i == 0) {
                    tie(pads.get(0), "name of " + net);
                } else if (changes.stream().noneMatch(c -> c instanceof BoardChange.Cut k && k.at().equals(between))) {
                    tie(pads.get(i - 1), pads.get(i));
                }
            }
        });
    }

    private void change(BoardChange change) {
        if (change instanceof BoardChange.Lift lift && !isOut(lift.pin()) && !lifted.containsKey(lift.pin().text())) {
            lifted.put(lift.pin().text(), true);
            legs.put(lift.pin().text(), "leg " + fresh++);
        } else if (change instanceof BoardChange.Cut c && c.at() instanceof Place.OfPin pin && !cut.containsKey(pin.text())) {
            cut.put(pin.text(), true);
            legs.computeIfAbsent(pin.text(), p -> "leg " + fresh++);
        } else if (change instanceof BoardChange.Remove remove) {
            out.put(remove.ref(), true);
        } else if (change instanceof BoardChange.Fit fit) {
            out.remove(fit.ref());
        } else if (change instanceof BoardChange.Link link && !link.from().equals(link.to())) {
            tie(knot((Place.OfPin) link.from()), knot((Place.OfPin) link.to()));
        }
    }

    private boolean isOut(Place.OfPin pin) {
        return out.containsKey(pin.ref());
    }

    /** What solder touches at a pin: its leg where that is off, its pad else and where the part is out. */
    private String knot(Place.OfPin pin) {
        return isOut(pin) ? pin.text() : legs.getOrDefault(pin.text(), pin.text());
    }

    private void tie(String a, String b) {
        tied.put(root(a), root(b));
    }

    private String root(String knot) {
        String at = knot;
        while (tied.containsKey(at) && !tied.get(at).equals(at)) {
            at = tied.get(at);
        }
        return at;
    }

    private Netlist netlist() {
        Map<String, Integer> size = new TreeMap<>();
        List<String> knots = new ArrayList<>(tied.keySet());
        knots.addAll(tied.values());
        knots.stream().distinct().forEach(k -> size.merge(root(k), 1, Integer::sum));
        Map<String, Net> nets = new LinkedHashMap<>();
        List<Part> parts = new ArrayList<>();
        for (Part part : drawn.parts()) {
            List<Pin> pins = new ArrayList<>();
            for (Pin pin : part.pins()) {
                String root = root(legs.getOrDefault(part.ref() + "." + pin.number(), part.ref() + "." + pin.number()));
                boolean wired = size.getOrDefault(root, 1) > 1 || pin.net() != null && root.equals(part.ref() + "."
                        + pin.number());
                if (wired) {
                    nets.computeIfAbsent(root, this::net);
                }
                pins.add(Pin.drawn(pin.number(), pin.name(), pin.unit(), pin.page(), pin.at(), wired ? root : null));
            }
            if (!out.containsKey(part.ref())) {
                parts.add(new Part(part.ref(), part.value(), part.units(), pins));
            }
        }
        return new Netlist("", "", List.of(), parts, List.copyOf(nets.values()), List.of());
    }

    /** A net with the power symbols of all that is tied to it. */
    private Net net(String root) {
        List<NetLabel> labels = drawn.nets().stream().filter(n -> root("name of " + n.id()).equals(root))
                .flatMap(n -> n.labels().stream()).toList();
        return new Net(root, null, List.of(1), List.of(), List.of(), labels, 1);
    }
}
