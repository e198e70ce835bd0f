// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.probeleaf.diagnosis.circuit.Cell;
import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Level;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.diagnosis.simulation.Effect;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.Evidence.Sight;
import org.probeleaf.diagnosis.simulation.Fault;
import org.probeleaf.diagnosis.simulation.Simulator;

/** Says in a sentence why a fault is suspected. */
final class Reasons {

    private final Circuit circuit;
    private final Evidence evidence;
    private final Simulator simulator;
    private final List<Node> wrong;
    private final List<Terminal> apart;
    private final Map<Integer, Ways> ways = new HashMap<>();

    Reasons(Situation situation) {
        this.circuit = situation.circuit();
        this.evidence = situation.evidence();
        this.simulator = situation.simulator();
        this.wrong = situation.wrong();
        this.apart = situation.apart();
    }

    String why(Fault fault, Weighed from) {
        String ref = fault.ref();
        if (from.faults().size() > 1) {
            return "no one part explains all that was seen; " + from.faults().stream()
                    .map(Fault::ref).collect(Collectors.joining(" and ")) + " together do";
        }
        if (fault.terminal() != null && apart.contains(fault.terminal())) {
            return fault.terminal().title() + " reads otherwise than the rest of "
                    + circuit.nodes().get(fault.terminal().node()).title();
        }
        if (wrong.isEmpty()) {
            return "what was seen round " + ref + " does not fit together";
        }
        Terminal at = place(fault);
        if (at == null) {
            return ref + " leads to " + wrong.get(0).title() + ", which " + reads(wrong.get(0));
        }
        Node node = circuit.nodes().get(at.node());
        Node to = target(node);
        Ways way = ways.computeIfAbsent(to.index(), n -> new Ways(circuit, to));
        String end = to == node ? ", which " + reads(to)
                : way.lead(node.index()) ? ", which leads to " + to.title() + " through "
                        + join(way.through(node.index())) + "; " + to.title() + " " + reads(to) : "";
        return begin(fault, ref, at, node) + end + inputs(fault.part(), at);
    }

    private static String begin(Fault fault, String ref, Terminal at, Node node) {
        return switch (fault.kind()) {
            case LOADS_LOW, LOADS_HIGH -> ref + " hangs on " + node.title();
            case BRIDGED -> fault.text().contains("joined") ? ref + " has " + node.title() + " next to pin "
                    + fault.beside() : ref + " lies across " + node.title();
            default -> ref + " drives " + node.title();
        };
    }

    /** The output at which a fault shows: the pin itself, or that which it works on. */
    private Terminal place(Fault fault) {
        boolean own = fault.terminal() != null && !(fault.effect() instanceof Effect.Sees);
        if (own) {
            return fault.terminal();
        }
        Terminal best = null;
        int shortest = Integer.MAX_VALUE;
        for (Cell cell : circuit.cells()) {
            boolean fits = cell.part() == fault.part()
                    && (fault.terminal() == null || cell.in().contains(fault.terminal()));
            for (Node to : fits ? wrong : List.<Node>of()) {
                Ways way = ways.computeIfAbsent(to.index(), n -> new Ways(circuit, to));
                int length = way.lead(cell.out().node()) ? way.through(cell.out().node()).size() : Integer.MAX_VALUE;
                if (length < shortest) {
                    shortest = length;
                    best = cell.out();
                }
            }
        }
        return best;
    }

    /** The wrong node that a node leads to. */
    private Node target(Node node) {
        if (wrong.contains(node)) {
            return node;
        }
        return wrong.stream().filter(w -> ways.computeIfAbsent(w.index(), n -> new Ways(circuit, w)).lead(node.index()))
                .findFirst().orElse(wrong.get(0));
    }

    /** What was seen at a node, against what is due. */
    private String reads(Node node) {
        int due = simulator.expected(node.index());
        Sight sight = evidence.at(node.index());
        if (Level.known(due)) {
            int is = sight == Sight.LOW ? 0 : sight == Sight.HIGH ? 1 : 1 - due;
            return "reads " + is + " where " + due + " is due";
        }
        return switch (sight) {
            case LOW -> "reads 0 against its inputs";
            case HIGH -> "reads 1 against its inputs";
            case GOOD -> "reads good where bad goes in";
            default -> "reads bad";
        };
    }

    /** What was seen at the inputs of an output. */
    private String inputs(int part, Terminal out) {
        List<String> good = new ArrayList<>();
        List<String> levels = new ArrayList<>();
        for (int index : circuit.nodes().get(out.node()).drivers()) {
            Cell cell = circuit.cells().get(index);
            if (cell.part() == part && cell.out() == out) {
                for (Terminal t : cell.in()) {
                    Sight sight = t == null || circuit.nodes().get(t.node()).rail() ? Sight.NOTHING
                            : evidence.at(t.node());
                    if (sight == Sight.GOOD) {
                        good.add(circuit.nodes().get(t.node()).title());
                    } else if (sight == Sight.LOW || sight == Sight.HIGH) {
                        levels.add(circuit.nodes().get(t.node()).title() + " " + (sight == Sight.LOW ? "0" : "1"));
                    }
                }
            }
        }
        String text = "";
        if (!good.isEmpty()) {
            text += "; its input" + (good.size() == 1 ? " " : "s ") + join(good) + (good.size() == 1 ? " reads" : " read")
                    + " good";
        }
        return levels.isEmpty() ? text : text + "; at its inputs " + join(levels);
    }

    private static String join(List<String> words) {
        return words.size() < 2 ? String.join("", words)
                : String.join(", ", words.subList(0, words.size() - 1)) + " and " + words.get(words.size() - 1);
    }
}
