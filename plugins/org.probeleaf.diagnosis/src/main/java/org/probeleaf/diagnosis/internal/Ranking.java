// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.probeleaf.diagnosis.fault.FaultKind;
import org.probeleaf.diagnosis.simulation.Fault;
import org.probeleaf.diagnosis.simulation.Simulator.Change;
import org.probeleaf.diagnosis.simulation.Simulator.State;

/**
 * Weighs explanations: prior times how well they agree with all that was seen, on every board state. Single faults come
 * first; where none will do, the diagnoses of several parts.
 */
final class Ranking {

    /** What is so much less likely than the likeliest is left out. */
    private static final double NEGLIGIBLE = 1e-3;
    /** How much less likely each further part at fault is, at a weight of 1. */
    private static final double ONE_MORE = 1e-2;
    /** How likely a fault shows at one time and not at another. */
    private static final double FLICKERS = 0.01;
    /** Faults within a part that show at its outputs: logic tells whether the part can be the only one. */
    private static final Set<FaultKind> WITHIN = EnumSet.of(FaultKind.STUCK_LOW, FaultKind.STUCK_HIGH, FaultKind.OPEN,
            FaultKind.DEAD);

    private final List<Situation> situations;
    private final Situation now;
    private final Logic logic;
    private final List<Weighed> weighed;

    Ranking(List<Situation> situations, Logic logic) {
        this.situations = situations;
        this.now = situations.get(situations.size() - 1);
        this.logic = logic;
        List<Weighed> all = single();
        if (all.stream().noneMatch(w -> w.fit() > Situation.MISTAKE)) {
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
        return weighed.stream().anyMatch(w -> w.faults().size() == 1 && w.fit() > Situation.MISTAKE);
    }

    private List<Weighed> single() {
        Map<String, Fault> causes = new LinkedHashMap<>();
        // What was found last counts, so that a fault is that of the board as it is, where that has it.
        situations.forEach(s -> s.causes().forEach(f -> causes.put(f.key(), f)));
        List<Weighed> all = new ArrayList<>();
        for (Fault cause : causes.values()) {
            if (!WITHIN.contains(cause.kind()) || logic.mayBeAlone(cause.ref())) {
                all.add(weigh(cause));
            }
        }
        return all;
    }

    private Weighed weigh(Fault cause) {
        if (situations.size() == 1) {
            double fit = now.fit(cause);
            return new Weighed(List.of(cause), now.change(cause), cause.prior() * fit, fit);
        }
        double fit = together(cause);
        Fault here = now.same(cause);
        return new Weighed(List.of(here == null ? cause : here), now.change(here), cause.prior() * fit, fit);
    }

    /**
     * How well a fault agrees with all board states. Whether a fault shows at an output under the same signals is chance
     * once, not each time: it should show on all states, or on none.
     */
    private double together(Fault cause) {
        Map<String, double[]> ranges = new LinkedHashMap<>();
        double fit = 1;
        for (Situation s : situations) {
            Fault same = s.same(cause);
            fit *= s.touching(same);
            for (Situation.Sign sign : s.signs(same)) {
                double[] range = ranges.computeIfAbsent(sign.key(), k -> new double[] {0, 1});
                if (sign.occurred()) {
                    range[1] = Math.min(range[1], sign.likely());
                } else {
                    range[0] = Math.max(range[0], sign.likely());
                }
            }
        }
        for (double[] range : ranges.values()) {
            boolean certain = range[0] == 1 || range[1] == 0;
            fit *= certain ? Situation.MISTAKE : Math.max(FLICKERS, range[1] - range[0]);
        }
        return fit;
    }

    /** Minimal diagnoses, each part of them wrong in some way. */
    private List<Weighed> several() {
        List<Weighed> all = new ArrayList<>();
        for (List<String> refs : logic.diagnoses()) {
            List<Fault> faults = new ArrayList<>();
            double prior = 1;
            Map<Integer, State> together = new TreeMap<>();
            for (String ref : refs) {
                Situation has = situations.stream().filter(s -> s.part(ref) >= 0).reduce((a, b) -> b).orElseThrow();
                Fault fault = has.finder().anyOf(has.part(ref));
                faults.add(fault);
                prior *= fault.prior() * ONE_MORE;
                Change change = now.change(has == now ? fault : null);
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
