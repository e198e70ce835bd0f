// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.fault.FaultKind;
import org.probeleaf.diagnosis.simulation.Effect;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.Fault;
import org.probeleaf.diagnosis.simulation.FaultFinder;
import org.probeleaf.diagnosis.simulation.Simulator;
import org.probeleaf.diagnosis.simulation.Simulator.Change;
import org.probeleaf.diagnosis.simulation.Simulator.State;

/**
 * Weighs explanations: prior times how well they agree with all that was seen. Single faults come first; where none will
 * do, the diagnoses of several parts.
 */
final class Ranking {

    /** What a reading that an explanation speaks against is still worth: readings are mistaken now and then. */
    private static final double MISTAKE = 1e-4;
    /** What is so much less likely than the likeliest is left out. */
    private static final double NEGLIGIBLE = 1e-3;
    /** How much less likely each further part at fault is, at a weight of 1. */
    private static final double ONE_MORE = 1e-2;
    /** Faults within a part that show at its outputs: logic tells whether the part can be the only one. */
    private static final Set<FaultKind> WITHIN = EnumSet.of(FaultKind.STUCK_LOW, FaultKind.STUCK_HIGH, FaultKind.OPEN,
            FaultKind.DEAD);

    private final Circuit circuit;
    private final Evidence evidence;
    private final Simulator simulator;
    private final FaultFinder finder;
    private final Logic logic;
    private final Map<Effect, Change> changes = new HashMap<>();
    private final List<Weighed> weighed;

    Ranking(Circuit circuit, Evidence evidence, Simulator simulator, FaultFinder finder, Logic logic,
            List<Node> wrong) {
        this.circuit = circuit;
        this.evidence = evidence;
        this.simulator = simulator;
        this.finder = finder;
        this.logic = logic;
        List<Weighed> all = wrong.isEmpty() ? new ArrayList<>() : single(wrong.get(0));
        if (all.stream().noneMatch(w -> w.fit() > MISTAKE)) {
            List<Weighed> several = several();
            all = several.isEmpty() ? all : several;
        }
        this.weighed = shares(all);
    }

    /** The explanations, the likeliest first; their weights add up to 1. */
    List<Weighed> weighed() {
        return weighed;
    }

    /** Whether one fault alone explains all that was seen. */
    boolean explainedByOne() {
        return weighed.stream().anyMatch(w -> w.faults().size() == 1 && w.fit() > MISTAKE);
    }

    private List<Weighed> single(Node wrong) {
        List<Weighed> all = new ArrayList<>();
        for (Fault fault : finder.workingOn(wrong.index())) {
            if (!WITHIN.contains(fault.kind()) || logic.mayBeAlone(fault.part())) {
                Change change = changes.computeIfAbsent(fault.effect(), simulator::run);
                double fit = fit(change);
                all.add(new Weighed(List.of(fault), change, fault.prior() * fit, fit));
            }
        }
        return all;
    }

    private double fit(Change change) {
        Map<Integer, State> changed = new HashMap<>();
        for (int i = 0; i < change.nodes().size(); i++) {
            changed.put(change.nodes().get(i), change.states().get(i));
        }
        double fit = 1;
        for (Node node : circuit.nodes()) {
            if (evidence.isSeen(node.index())) {
                State state = changed.getOrDefault(node.index(), simulator.base(node.index()));
                fit *= Math.max(MISTAKE, simulator.agreement(node.index(), state));
            }
        }
        return fit;
    }

    /** Minimal diagnoses, each part of them wrong in some way. */
    private List<Weighed> several() {
        List<Weighed> all = new ArrayList<>();
        for (BitSet parts : logic.diagnoses()) {
            List<Fault> faults = parts.stream().mapToObj(finder::anyOf).toList();
            double prior = 1;
            Map<Integer, State> together = new TreeMap<>();
            for (Fault fault : faults) {
                prior *= fault.prior() * ONE_MORE;
                Change change = changes.computeIfAbsent(fault.effect(), simulator::run);
                for (int i = 0; i < change.nodes().size(); i++) {
                    together.merge(change.nodes().get(i), change.states().get(i), (a, b) -> a.bad() > b.bad() ? a : b);
                }
            }
            if (!faults.isEmpty() && prior > 0) {
                all.add(new Weighed(faults, new Change(List.copyOf(together.keySet()), List.copyOf(together.values())),
                        prior, 1));
            }
        }
        return all;
    }

    private static List<Weighed> shares(List<Weighed> all) {
        List<Weighed> kept = new ArrayList<>(all);
        kept.sort(Comparator.comparingDouble(Weighed::weight).reversed());
        double most = kept.isEmpty() ? 0 : kept.get(0).weight();
        kept.removeIf(w -> w.weight() < most * NEGLIGIBLE || w.weight() <= 0);
        double total = kept.stream().mapToDouble(Weighed::weight).sum();
        return kept.stream().map(w -> w.weighing(w.weight() / total)).toList();
    }
}
