// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PinType;
import org.probeleaf.schematic.place.Place;

/** Makes the circuit of a netlist: nodes and terminals first, then the cells of each part. */
final class CircuitBuilder {

    private final Netlist board;
    private final PartBook book;
    private final List<Terminal> terminals = new ArrayList<>();
    private final List<List<Terminal>> ofPart = new ArrayList<>();
    private final List<Net> nets = new ArrayList<>();
    private final List<List<Terminal>> onNode = new ArrayList<>();
    private final Map<String, Integer> nodeOfNet = new HashMap<>();

    CircuitBuilder(Netlist board, PartBook book) {
        this.board = board;
        this.book = book;
    }

    Circuit build() {
        for (Net net : board.nets()) {
            nodeOfNet.put(net.id(), newNode(net));
        }
        for (int p = 0; p < board.parts().size(); p++) {
            ofPart.add(terminals(p, board.parts().get(p)));
        }
        boolean[] rail = new boolean[nets.size()];
        int[] level = new int[nets.size()];
        for (int n = 0; n < nets.size(); n++) {
            OptionalInt found = nets.get(n) == null ? OptionalInt.empty() : Rails.level(nets.get(n), onNode.get(n));
            rail[n] = found.isPresent();
            level[n] = found.orElse(Level.UNKNOWN);
        }
        List<Cell> cells = new CellBuilder(board.parts(), book, ofPart, onNode, rail).build();
        return new Circuit(board.parts(), nodes(rail, level, cells), terminals, cells);
    }

    private int newNode(Net net) {
        nets.add(net);
        onNode.add(new ArrayList<>());
        return nets.size() - 1;
    }

    private List<Terminal> terminals(int index, Part part) {
        List<Terminal> all = new ArrayList<>();
        for (int i = 0; i < part.pins().size(); i++) {
            Pin pin = part.pins().get(i);
            Integer node = pin.net() == null ? null : nodeOfNet.get(pin.net());
            int on = node == null ? newNode(null) : node;
            PinType type = book.pin(part, pin).orElse(null);
            Terminal t = new Terminal(terminals.size(), index, pin, type, book.direction(part, pin), on,
                    place(part, pin, i));
            terminals.add(t);
            onNode.get(on).add(t);
            all.add(t);
        }
        return all;
    }

    private static Place place(Part part, Pin pin, int index) {
        if (pin.number() != null || pin.name() != null) {
            return new Place.OfPin(part.ref(), pin.label());
        }
        // The pins of a resistor bear nothing on the sheet; people count them.
        return part.pins().size() == 2 ? new Place.OfPin(part.ref(), String.valueOf(index + 1))
                : new Place.OfPart(part.ref());
    }

    private List<Node> nodes(boolean[] rail, int[] level, List<Cell> cells) {
        List<List<Integer>> drivers = new ArrayList<>();
        List<List<Integer>> listeners = new ArrayList<>();
        for (int n = 0; n < nets.size(); n++) {
            drivers.add(new ArrayList<>());
            listeners.add(new ArrayList<>());
        }
        for (Cell cell : cells) {
            drivers.get(cell.out().node()).add(cell.index());
            cell.in().stream().filter(t -> t != null).map(Terminal::node).distinct()
                    .forEach(n -> listeners.get(n).add(cell.index()));
            cell.power().stream().map(Terminal::node).distinct().filter(n -> !listeners.get(n).contains(cell.index()))
                    .forEach(n -> listeners.get(n).add(cell.index()));
        }
        List<Node> nodes = new ArrayList<>();
        for (int n = 0; n < nets.size(); n++) {
            Net net = nets.get(n);
            String title = net != null ? net.title() : onNode.get(n).get(0).title();
            nodes.add(new Node(n, net, title, rail[n], level[n], List.copyOf(onNode.get(n)),
                    List.copyOf(drivers.get(n)), List.copyOf(listeners.get(n))));
        }
        return nodes;
    }
}
