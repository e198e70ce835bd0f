// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

import java.util.List;
import java.util.Optional;

import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.PartBook;

/**
 * A board as a circuit. Immutable; any thread may use it.
 *
 * @param parts     of the board, in the netlist's order
 * @param nodes     nets first, in the netlist's order
 * @param terminals by part
 * @param cells     by part
 */
public record Circuit(List<Part> parts, List<Node> nodes, List<Terminal> terminals, List<Cell> cells) {

    public Circuit {
        parts = List.copyOf(parts);
        nodes = List.copyOf(nodes);
        terminals = List.copyOf(terminals);
        cells = List.copyOf(cells);
    }

    /** Makes the circuit of a board as it is. */
    public static Circuit of(Netlist board, PartBook book) {
        return new CircuitBuilder(board, book).build();
    }

    /** The node of a net. */
    public Optional<Node> nodeOf(String netId) {
        return nodes.stream().filter(n -> n.net() != null && n.net().id().equals(netId)).findFirst();
    }

    public String ref(int part) {
        return parts.get(part).ref();
    }
}
