// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import org.probeleaf.diagnosis.NextProbe;
import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.diagnosis.probe.Candidate;
import org.probeleaf.diagnosis.probe.ProbeChooser;
import org.probeleaf.diagnosis.probe.ProbeChooser.Choice;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.Fault;
import org.probeleaf.diagnosis.simulation.Simulator;
import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.place.Place;

/** Chooses the next probe among the nodes that can be touched and were not looked at. */
final class Prober {

    private final Circuit circuit;
    private final Evidence evidence;
    private final Simulator simulator;
    private final Ranking ranking;

    Prober(Circuit circuit, Evidence evidence, Simulator simulator, Ranking ranking) {
        this.circuit = circuit;
        this.evidence = evidence;
        this.simulator = simulator;
        this.ranking = ranking;
    }

    /** The next probe, or null where none tells anything. */
    NextProbe next() {
        List<Candidate> candidates = new ArrayList<>();
        Map<Set<Integer>, Integer> groups = new HashMap<>();
        for (Weighed w : ranking.weighed()) {
            Map<Integer, Double> bad = new HashMap<>();
            for (int i = 0; i < w.change().nodes().size(); i++) {
                bad.put(w.change().nodes().get(i), w.change().states().get(i).bad());
            }
            candidates.add(new Candidate(group(w, groups), w.weight(), bad));
        }
        ProbeChooser chooser = new ProbeChooser(candidates, n -> simulator.base(n).bad());
        List<Choice> choices = chooser.choices(n -> !evidence.isSeen(n) && !evidence.isGiven(n)
                && !circuit.nodes().get(n).rail() && touch(circuit.nodes().get(n)) != null);
        if (choices.isEmpty()) {
            return null;
        }
        Choice best = choices.get(0);
        Node node = circuit.nodes().get(best.place());
        String why = String.format(Locale.ROOT, "%s is as likely bad as good (%.0f to %.0f): it halves what is left",
                node.title(), best.bad() * 100, 100 - best.bad() * 100);
        return new NextProbe(touch(node).place(), node.net(), 1 + best.entropy(), why);
    }

    /** Explanations that blame the same parts need not be told apart. */
    private static int group(Weighed w, Map<Set<Integer>, Integer> groups) {
        Set<Integer> parts = w.faults().stream().map(Fault::part).collect(Collectors.toSet());
        return groups.computeIfAbsent(parts, p -> groups.size());
    }

    /** The pin of a node that is best to touch: a test point, else what drives it, else any that can be named. */
    private Terminal touch(Node node) {
        return node.terminals().stream().filter(t -> t.pin().at() != null && t.place() instanceof Place.OfPin)
                .min(Comparator.comparing((Terminal t) -> t.direction() != PinDirection.OUT)
                        .thenComparing(t -> circuit.ref(t.part()), NaturalOrder.INSTANCE)
                        .thenComparing(Terminal::label, NaturalOrder.INSTANCE))
                .orElse(null);
    }
}
