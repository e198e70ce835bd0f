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
import org.probeleaf.diagnosis.probe.ProbeChooser.Pointing;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.Fault;
import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.partbook.PinDirection;
import org.probeleaf.schematic.place.Place;

/** Chooses the next probe among the nodes that can be touched and were not looked at. */
final class Prober {

    /** A probe that tells less of the suspects is not worth the trouble, in bits. */
    private static final double SETTLED = 0.05;

    /** What comes out otherwise than expected less often than this is not looked at. */
    private static final double SURE = 0.03;

    private final Circuit circuit;
    private final Evidence evidence;
    private final List<Set<String>> suspects = new ArrayList<>();
    private final ProbeChooser chooser;

    Prober(Situation now, List<Weighed> weighed) {
        this.circuit = now.circuit();
        this.evidence = now.evidence();
        Map<Set<String>, Integer> numbers = new HashMap<>();
        List<Candidate> candidates = new ArrayList<>();
        for (Weighed w : weighed) {
            Set<String> parts = w.faults().stream().map(Fault::ref).collect(Collectors.toSet());
            int suspect = numbers.computeIfAbsent(parts, p -> {
                suspects.add(p);
                return suspects.size() - 1;
            });
            Map<Integer, Double> bad = new HashMap<>();
            for (int i = 0; i < w.change().nodes().size(); i++) {
                bad.put(w.change().nodes().get(i), w.change().states().get(i).bad());
            }
            candidates.add(new Candidate(suspect, w.weight(), bad));
        }
        this.chooser = new ProbeChooser(candidates, circuit.nodes().size(), n -> now.simulator().base(n).bad(),
                n -> reachable(circuit.nodes().get(n)));
    }

    /** The next probe, or null where none tells anything of the suspects. */
    NextProbe next() {
        Choice best = chooser.choices().stream().filter(c -> Math.min(c.bad(), 1 - c.bad()) > SURE)
                .filter(c -> chooser.pointing(c.place()).gain() > SETTLED).findFirst().orElse(null);
        if (best == null) {
            return null;
        }
        Pointing pointing = chooser.pointing(best.place());
        Node node = circuit.nodes().get(best.place());
        String why = String.format(Locale.ROOT, "bad there (%.0f %%) points to %s, good to %s", best.bad() * 100,
                named(pointing.ifBad()), named(pointing.ifGood()));
        double left = Math.max(0, Math.min(chooser.entropy(), chooser.tellable()) - best.gain());
        return new NextProbe(touch(node).place(), node.net(), 1 + left, why);
    }

    private boolean reachable(Node node) {
        return !evidence.isSeen(node.index()) && !evidence.isGiven(node.index()) && !node.rail() && touch(node) != null;
    }

    private String named(int suspect) {
        return suspect < 0 ? "none of the suspects" : suspects.get(suspect).stream()
                .sorted(NaturalOrder.INSTANCE).collect(Collectors.joining(" and "));
    }

    /** The pin of a node that is best to touch: one that drives it, else any that can be named. */
    private Terminal touch(Node node) {
        return node.terminals().stream().filter(t -> t.pin().at() != null && t.place() instanceof Place.OfPin)
                .min(Comparator.comparing((Terminal t) -> t.direction() != PinDirection.OUT)
                        .thenComparing(t -> circuit.ref(t.part()), NaturalOrder.INSTANCE)
                        .thenComparing(Terminal::label, NaturalOrder.INSTANCE))
                .orElse(null);
    }
}
