// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.diagnosis.circuit.Cell;
import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.circuit.Terminal;

/** The shortest way from any node to one node, in the direction of signals. */
final class Ways {

    private final Circuit circuit;
    private final Node to;
    private final Map<Integer, Cell> next = new HashMap<>();

    Ways(Circuit circuit, Node to) {
        this.circuit = circuit;
        this.to = to;
        Deque<Integer> open = new ArrayDeque<>(List.of(to.index()));
        next.put(to.index(), null);
        while (!open.isEmpty()) {
            for (int index : circuit.nodes().get(open.poll()).drivers()) {
                Cell cell = circuit.cells().get(index);
                for (Terminal t : cell.in()) {
                    if (t != null && !next.containsKey(t.node())) {
                        next.put(t.node(), cell);
                        open.add(t.node());
                    }
                }
            }
        }
    }

    boolean lead(int from) {
        return next.containsKey(from);
    }

    /** Designators of the parts on the way, in its order. */
    List<String> through(int from) {
        List<String> refs = new ArrayList<>();
        for (int at = from; at != to.index() && next.get(at) != null; at = next.get(at).out().node()) {
            String ref = circuit.ref(next.get(at).part());
            if (refs.isEmpty() || !refs.get(refs.size() - 1).equals(ref)) {
                refs.add(ref);
            }
        }
        return refs;
    }
}
