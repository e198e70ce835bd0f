// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

import org.probeleaf.diagnosis.circuit.Cell;
import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Level;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.Evidence.Sight;
import org.probeleaf.diagnosis.simulation.Simulator;

/**
 * Conflicts where only good and bad are known, not levels. What is bad must come from a part that leads to it without a
 * good place between; and where something bad goes in and something good comes out of a part that passes everything on,
 * that part is not sound.
 */
final class DoubtConflicts {

    private final Circuit circuit;
    private final Evidence evidence;
    private final Simulator simulator;

    DoubtConflicts(Circuit circuit, Evidence evidence, Simulator simulator) {
        this.circuit = circuit;
        this.evidence = evidence;
        this.simulator = simulator;
    }

    List<BitSet> all() {
        List<BitSet> conflicts = new ArrayList<>();
        for (Node node : circuit.nodes()) {
            if (simulator.isDoubted(node.index())) {
                conflicts.add(causes(node));
            }
            if (evidence.at(node.index()) == Sight.GOOD && !Level.known(simulator.expected(node.index()))) {
                BitSet hidden = hiding(node);
                if (hidden != null) {
                    conflicts.add(hidden);
                }
            }
        }
        return conflicts;
    }

    /** The parts that lead to a node. */
    private BitSet causes(Node bad) {
        BitSet parts = new BitSet();
        BitSet found = new BitSet();
        Deque<Integer> next = new ArrayDeque<>(List.of(bad.index()));
        found.set(bad.index());
        while (!next.isEmpty()) {
            Node node = circuit.nodes().get(next.poll());
            if (node.rail()) {
                // Whatever hangs on a supply may short it.
                node.terminals().forEach(t -> parts.set(t.part()));
            }
            for (int index : node.drivers()) {
                Cell cell = circuit.cells().get(index);
                parts.set(cell.part());
                cell.in().stream().filter(t -> t != null).forEach(t -> reach(t, found, next));
                cell.power().forEach(t -> reach(t, found, next));
            }
        }
        return parts;
    }

    private void reach(Terminal t, BitSet found, Deque<Integer> next) {
        if (!found.get(t.node()) && !isSound(t.node())) {
            found.set(t.node());
            next.add(t.node());
        }
    }

    /** Whether what is there is right for certain. */
    private boolean isSound(int node) {
        Node n = circuit.nodes().get(node);
        int due = simulator.expected(node);
        Sight sight = evidence.at(node);
        return sight == Sight.GOOD || evidence.isGiven(node) || n.rail() && !evidence.isSeen(node)
                || sight == Sight.LOW && due == Level.LOW || sight == Sight.HIGH && due == Level.HIGH;
    }

    /** The parts between something bad and a good node, where each passes on whatever it gets; null where none. */
    private BitSet hiding(Node good) {
        BitSet parts = new BitSet();
        BitSet found = new BitSet();
        int at = good.index();
        while (!found.get(at)) {
            found.set(at);
            Node node = circuit.nodes().get(at);
            if (node.drivers().size() != 1) {
                return null;
            }
            Cell cell = circuit.cells().get(node.drivers().get(0));
            if (!cell.transparent()) {
                return null;
            }
            parts.set(cell.part());
            at = cell.in().stream().filter(t -> t != null).findFirst().orElseThrow().node();
            if (simulator.isDoubted(at)) {
                return parts;
            }
            if (evidence.isSeen(at)) {
                return null;
            }
        }
        return null;
    }
}
