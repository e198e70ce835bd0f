// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.diagnosis.Given;
import org.probeleaf.diagnosis.Observation;
import org.probeleaf.diagnosis.Seen;
import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.circuit.Level;
import org.probeleaf.diagnosis.circuit.Node;
import org.probeleaf.diagnosis.circuit.Terminal;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.diagnosis.simulation.Effect;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.Evidence.Sight;
import org.probeleaf.diagnosis.simulation.Fault;
import org.probeleaf.diagnosis.simulation.FaultFinder;
import org.probeleaf.diagnosis.simulation.Simulator;
import org.probeleaf.diagnosis.simulation.Simulator.Change;
import org.probeleaf.diagnosis.simulation.Simulator.State;
import org.probeleaf.schematic.partbook.PartBook;

/** A board in one state with what was seen on it, and what does not fit a sound board. */
final class Situation {

    /** A reading that agrees less than this with a sound board does not fit it. */
    private static final double FITS = 0.05;
    /** What a reading that an explanation speaks against is still worth: readings are mistaken now and then. */
    static final double MISTAKE = 1e-4;

    private final Circuit circuit;
    private final Evidence evidence;
    private final Simulator simulator;
    private final FaultFinder finder;
    private final List<Node> wrong;
    private final List<Terminal> apart = new ArrayList<>();
    private final List<Integer> seen;
    private final Map<Integer, String> keys = new HashMap<>();
    private final Map<Effect, Change> changes = new HashMap<>();
    private final Map<Change, Double> fits = new IdentityHashMap<>();
    private Map<String, Fault> byKey;

    Situation(Places places, PartBook book, Priors priors, List<Given> given, List<Observation> observations) {
        this.circuit = places.circuit();
        Evidence known = Evidence.none(circuit);
        for (Given g : given) {
            known = known.given(places.find(g.at()).node().index(), g.high() ? Level.HIGH : Level.LOW);
        }
        this.evidence = seen(known, places, observations);
        this.simulator = new Simulator(circuit, evidence);
        this.finder = new FaultFinder(circuit, evidence, simulator, priors, book);
        this.seen = circuit.nodes().stream().map(Node::index).filter(evidence::isSeen).toList();
        seen.forEach(n -> keys.put(n, key(n)));
        this.wrong = circuit.nodes().stream().filter(n -> evidence.isSeen(n.index()))
                .filter(n -> simulator.agreement(n.index(), simulator.base(n.index())) < FITS).toList();
    }

    /** What was seen by node; pins that read otherwise than what drives their net are kept apart. */
    private Evidence seen(Evidence known, Places places, List<Observation> observations) {
        Map<Integer, Map<Terminal, Sight>> byNode = new LinkedHashMap<>();
        for (Observation o : observations) {
            Places.Spot spot = places.find(o.at());
            Map<Terminal, Sight> at = byNode.computeIfAbsent(spot.node().index(), n -> new LinkedHashMap<>());
            if (spot.terminal() == null) {
                at.clear();
            }
            // Taken anew, it stands last.
            at.remove(spot.terminal());
            at.put(spot.terminal(), sight(spot.node(), o));
        }
        Evidence all = known;
        for (Map.Entry<Integer, Map<Terminal, Sight>> one : byNode.entrySet()) {
            Sight net = ofNet(circuit.nodes().get(one.getKey()), one.getValue());
            all = all.seen(one.getKey(), net);
            one.getValue().forEach((t, s) -> {
                if (t != null && speaksAgainst(s, net)) {
                    apart.add(t);
                }
            });
        }
        return all;
    }

    /** What counts for a net: what its driver's pin shows, else the last word. */
    private Sight ofNet(Node node, Map<Terminal, Sight> at) {
        Sight last = null;
        for (Map.Entry<Terminal, Sight> one : at.entrySet()) {
            last = one.getValue();
        }
        for (Map.Entry<Terminal, Sight> one : at.entrySet()) {
            boolean drives = one.getKey() != null && node.drivers().stream()
                    .anyMatch(c -> circuit.cells().get(c).out() == one.getKey());
            if (drives) {
                return one.getValue();
            }
        }
        return last;
    }

    private static boolean speaksAgainst(Sight a, Sight b) {
        boolean levels = (a == Sight.LOW || a == Sight.HIGH) && (b == Sight.LOW || b == Sight.HIGH);
        boolean verdicts = (a == Sight.GOOD || a == Sight.BAD) && (b == Sight.GOOD || b == Sight.BAD);
        return a != b && (levels || verdicts);
    }

    /** What was seen; of a supply, a level is good or bad. */
    private static Sight sight(Node node, Observation o) {
        if (node.rail() && Level.known(node.level()) && (o.seen() == Seen.LOW || o.seen() == Seen.HIGH)) {
            return (o.seen() == Seen.HIGH) == (node.level() == Level.HIGH) ? Sight.GOOD : Sight.BAD;
        }
        return switch (o.seen()) {
            case GOOD -> Sight.GOOD;
            case BAD -> Sight.BAD;
            case LOW -> Sight.LOW;
            case HIGH -> Sight.HIGH;
        };
    }

    Circuit circuit() {
        return circuit;
    }

    Evidence evidence() {
        return evidence;
    }

    Simulator simulator() {
        return simulator;
    }

    FaultFinder finder() {
        return finder;
    }

    /** The nodes whose reading does not fit a sound board. */
    List<Node> wrong() {
        return wrong;
    }

    /** Pins that read otherwise than the net they should be on. */
    List<Terminal> apart() {
        return apart;
    }

    /** Single faults that may explain what is wrong. */
    List<Fault> causes() {
        List<Fault> causes = new ArrayList<>();
        apart.forEach(t -> causes.add(finder.noContact(t)));
        if (!wrong.isEmpty()) {
            causes.addAll(finder.workingOn(wrong.get(0).index()));
        }
        return causes;
    }

    /** The same fault on this board, or null where it does not have it. */
    Fault same(Fault fault) {
        if (byKey == null) {
            byKey = new HashMap<>();
            finder.all().forEach(f -> byKey.put(f.key(), f));
        }
        return byKey.get(fault.key());
    }

    /** The part with a designator, or -1. */
    int part(String ref) {
        for (int p = 0; p < circuit.parts().size(); p++) {
            if (circuit.ref(p).equals(ref)) {
                return p;
            }
        }
        return -1;
    }

    /** What a fault of this board changes; nothing for null. */
    Change change(Fault fault) {
        return fault == null ? new Change(List.of(), List.of())
                : changes.computeIfAbsent(fault.effect(), simulator::run);
    }

    /** How well a fault of this board, or none, agrees with all that was seen on it: 0 to 1. */
    double fit(Fault fault) {
        return fits.computeIfAbsent(change(fault), this::fit) * touching(fault);
    }

    /** How well a fault agrees with pins that are apart from their nets. */
    double touching(Fault fault) {
        double fit = 1;
        for (Terminal t : apart) {
            boolean explained = fault != null && fault.terminal() == t && fault.effect() instanceof Effect.Sees;
            fit *= explained ? 1 : MISTAKE;
        }
        return fit;
    }

    private double fit(Change change) {
        double fit = 1;
        for (Sign sign : signs(change)) {
            fit *= Math.max(MISTAKE, sign.occurred() ? sign.likely() : 1 - sign.likely());
        }
        return fit;
    }

    /**
     * What was seen at a node, against what a fault foretells.
     *
     * @param key      the same for the same output on all board states, by what kind of thing was seen
     * @param occurred whether it was bad, or high
     * @param likely   how likely that is with the fault, 0 to 1
     */
    record Sign(String key, boolean occurred, double likely) {
    }

    /** All that was seen against what a fault of this board, or none, foretells. */
    List<Sign> signs(Fault fault) {
        return signs(change(fault));
    }

    private List<Sign> signs(Change change) {
        Map<Integer, State> changed = new HashMap<>();
        for (int i = 0; i < change.nodes().size(); i++) {
            if (evidence.isSeen(change.nodes().get(i))) {
                changed.put(change.nodes().get(i), change.states().get(i));
            }
        }
        List<Sign> signs = new ArrayList<>();
        for (int node : seen) {
            State state = changed.getOrDefault(node, simulator.base(node));
            Sight sight = evidence.at(node);
            signs.add(new Sign(keys.get(node), sight == Sight.BAD || sight == Sight.HIGH, simulator.likely(node, state)));
        }
        return signs;
    }

    /** A name for a node that stays when a pin on it is lifted: its driver's pin, where it has one driver. */
    private String key(int index) {
        Node node = circuit.nodes().get(index);
        boolean verdict = evidence.at(index) == Sight.GOOD || evidence.at(index) == Sight.BAD;
        String name = node.drivers().size() == 1 ? circuit.cells().get(node.drivers().get(0)).out().title() : node.title();
        return name + (verdict ? " verdict" : " level");
    }

    /** Parts of pins that are apart from their nets, each a conflict by itself. */
    List<BitSet> loose() {
        return apart.stream().map(t -> {
            BitSet one = new BitSet();
            one.set(t.part());
            return one;
        }).toList();
    }
}
