// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.diagnosis.simulation.Effect;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.Fault;
import org.probeleaf.diagnosis.simulation.FaultFinder;
import org.probeleaf.diagnosis.simulation.Simulator;
import org.probeleaf.diagnosis.simulation.Simulator.Change;
import org.probeleaf.diagnosis.simulation.Simulator.State;
import org.probeleaf.schematic.partbook.PartBook;

/** Weighs every single fault that could work on what does not fit: its prior times how well it agrees with all seen. */
final class Ranking {

    /** What a reading that a fault speaks against is still worth: readings are mistaken now and then. */
    private static final double MISTAKE = 1e-4;
    /** What is so much less likely than the likeliest is left out. */
    private static final double NEGLIGIBLE = 1e-3;

    private final List<Weighed> weighed = new ArrayList<>();
    private final boolean explained;

    Ranking(Circuit circuit, Evidence evidence, Simulator simulator, List<Node> wrong, Priors priors, PartBook book) {
        Map<Effect, Change> changes = new HashMap<>();
        List<Integer> seen = circuit.nodes().stream().map(Node::index).filter(evidence::isSeen).toList();
        List<Weighed> all = new ArrayList<>();
        for (Fault fault : new FaultFinder(circuit, evidence, simulator, priors, book).workingOn(wrong.get(0).index())) {
            Change change = changes.computeIfAbsent(fault.effect(), simulator::run);
            double fit = 1;
            for (int node : seen) {
                int at = change.nodes().indexOf(node);
                State state = at < 0 ? simulator.base(node) : change.states().get(at);
                fit *= Math.max(MISTAKE, simulator.agreement(node, state));
            }
            all.add(new Weighed(fault, change, fault.prior() * fit, fit));
        }
        all.sort(Comparator.comparingDouble(Weighed::weight).reversed());
        double most = all.isEmpty() ? 0 : all.get(0).weight();
        all.removeIf(w -> w.weight() < most * NEGLIGIBLE);
        double total = all.stream().mapToDouble(Weighed::weight).sum();
        all.forEach(w -> weighed.add(new Weighed(w.fault(), w.change(), w.weight() / total, w.fit())));
        this.explained = all.stream().anyMatch(w -> w.fit() > MISTAKE);
    }

    /**
     * A fault with its share.
     *
     * @param weight over all faults they add up to 1
     * @param fit    how well it agrees with all that was seen, 0 to 1
     */
    record Weighed(Fault fault, Change change, double weight, double fit) {
    }

    List<Weighed> weighed() {
        return weighed;
    }

    /** Whether one fault alone explains all that was seen. */
    boolean explained() {
        return explained;
    }
}
