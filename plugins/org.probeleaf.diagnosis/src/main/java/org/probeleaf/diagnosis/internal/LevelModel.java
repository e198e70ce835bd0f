// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.diagnosis.circuit.Cell;
import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Level;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.diagnosis.consistency.Rule;
import org.probeleaf.diagnosis.consistency.Rules;
import org.probeleaf.diagnosis.consistency.SystemModel;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.Evidence.Sight;
import org.probeleaf.diagnosis.simulation.Simulator;

/** The circuit as a model of levels: a variable for each node, a component for each part, a rule for what drives it. */
final class LevelModel {

    private final Circuit circuit;
    private final Evidence evidence;
    private final SystemModel.Builder builder = SystemModel.builder();
    private final Map<Integer, Integer> known = new HashMap<>();
    private final SystemModel model;

    LevelModel(Circuit circuit, Evidence evidence, Simulator simulator) {
        this.circuit = circuit;
        this.evidence = evidence;
        circuit.parts().forEach(p -> builder.component(p.ref()));
        circuit.nodes().forEach(n -> builder.newVariable(n.title()));
        for (Node node : circuit.nodes()) {
            know(node, simulator.expected(node.index()));
            boolean held = evidence.isGiven(node.index()) || node.rail();
            if (!held && !node.drivers().isEmpty()) {
                drive(node);
            }
        }
        this.model = builder.build();
    }

    SystemModel model() {
        return model;
    }

    /** The levels that are known: held, of rails, seen. */
    Map<Integer, Integer> known() {
        return known;
    }

    private void know(Node node, int due) {
        int n = node.index();
        Sight sight = evidence.at(n);
        int level = switch (sight) {
            case LOW -> Level.LOW;
            case HIGH -> Level.HIGH;
            case GOOD -> node.rail() ? node.level() : due;
            case BAD -> Level.not(due);
            case NOTHING -> evidence.isGiven(n) ? due : node.rail() ? node.level() : Level.UNKNOWN;
        };
        if (Level.known(level)) {
            known.put(n, level);
        }
    }

    private void drive(Node node) {
        List<Cell> cells = node.drivers().stream().map(circuit.cells()::get).toList();
        BitSet parts = new BitSet();
        cells.forEach(c -> parts.set(c.part()));
        Rule plain = cells.size() == 1 ? gate(cells.get(0)) : null;
        if (plain != null) {
            builder.rule(parts, plain);
        } else {
            List<Integer> in = new ArrayList<>();
            cells.forEach(c -> c.in().forEach(t -> in.add(variable(t))));
            builder.rule(parts, new TableRule(in.stream().mapToInt(Integer::intValue).toArray(), node.index(),
                    levels -> TableRule.together(cells, levels)));
        }
    }

    private int variable(Terminal t) {
        return t == null ? builder.newVariable("not drawn") : t.node();
    }

    /** The rule of a plain gate, or null. */
    private Rule gate(Cell cell) {
        boolean plain = cell.function() != null && cell.in().stream().allMatch(t -> t != null)
                && cell.kind() != Cell.Kind.OPEN_COLLECTOR;
        if (!plain) {
            return null;
        }
        int out = cell.out().node();
        int[] in = cell.in().stream().mapToInt(Terminal::node).toArray();
        return switch (cell.function()) {
            case "AND" -> Rules.and(out, in);
            case "NAND" -> Rules.nand(out, in);
            case "OR" -> Rules.or(out, in);
            case "NOR" -> Rules.nor(out, in);
            case "XOR" -> Rules.parity(in, out, false);
            case "XNOR" -> Rules.parity(in, out, true);
            case "NOT" -> in.length == 1 ? Rules.follow(in[0], out, true) : null;
            case "BUF" -> in.length == 1 ? Rules.follow(in[0], out, false) : null;
            default -> null;
        };
    }
}
