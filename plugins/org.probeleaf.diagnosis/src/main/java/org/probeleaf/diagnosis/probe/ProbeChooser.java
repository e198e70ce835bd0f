// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.probe;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * The next probe by least expected entropy, one step ahead (J. de Kleer, B. C. Williams, "Diagnosing multiple faults",
 * Artificial Intelligence 32, 1987): H = sum over outcomes of p(outcome) times the entropy of what is left, in bits.
 */
public final class ProbeChooser {

    private static final double LEAST_GAIN = 1e-3;

    private final List<Candidate> candidates;
    private final IntToDoubleFunction base;
    private final Map<Integer, Double> groups = new HashMap<>();
    private final double total;

    /**
     * Takes in the candidates.
     *
     * @param base how likely something is wrong at a place of which a candidate says nothing
     */
    public ProbeChooser(List<Candidate> candidates, IntToDoubleFunction base) {
        this.candidates = candidates;
        this.base = base;
        candidates.forEach(c -> groups.merge(c.group(), c.weight(), Double::sum));
        this.total = candidates.stream().mapToDouble(Candidate::weight).sum();
    }

    /**
     * A place with what looking at it is worth.
     *
     * @param place    as the candidates name it
     * @param bad      how likely it is that something is wrong there, 0 to 1
     * @param entropy  expected after looking, in bits
     */
    public record Choice(int place, double bad, double entropy) {
    }

    /** The entropy of what there is to be told apart, in bits. */
    public double entropy() {
        return entropy(groups, total);
    }

    /** All places that tell something, the one that tells most first; of equals the one that came first. */
    public List<Choice> choices(IntPredicate reachable) {
        Map<Integer, Map<Integer, Double>> badByPlace = new HashMap<>();
        for (Candidate c : candidates) {
            c.bad().forEach((place, p) -> {
                if (reachable.test(place)) {
                    double more = c.weight() * (p - base.applyAsDouble(place));
                    badByPlace.computeIfAbsent(place, n -> new HashMap<>()).merge(c.group(), more, Double::sum);
                }
            });
        }
        double now = entropy();
        List<Choice> choices = new ArrayList<>();
        badByPlace.forEach((place, more) -> {
            Choice choice = choice(place, more);
            if (choice.entropy() < now - LEAST_GAIN) {
                choices.add(choice);
            }
        });
        choices.sort(Comparator.comparingDouble((Choice c) -> Math.round(c.entropy() * 1e9)).thenComparingInt(Choice::place));
        return choices;
    }

    private Choice choice(int place, Map<Integer, Double> more) {
        double rest = base.applyAsDouble(place);
        Map<Integer, Double> bad = new HashMap<>();
        Map<Integer, Double> good = new HashMap<>();
        double allBad = 0;
        for (Map.Entry<Integer, Double> group : groups.entrySet()) {
            double wrong = group.getValue() * rest + more.getOrDefault(group.getKey(), 0.0);
            bad.put(group.getKey(), wrong);
            good.put(group.getKey(), group.getValue() - wrong);
            allBad += wrong;
        }
        double share = allBad / total;
        return new Choice(place, share, share * entropy(bad, allBad) + (1 - share) * entropy(good, total - allBad));
    }

    private static double entropy(Map<Integer, Double> weights, double total) {
        double sum = 0;
        for (double w : weights.values()) {
            if (w > 0 && total > 0) {
                double p = w / total;
                sum -= p * Math.log(p);
            }
        }
        return sum / Math.log(2);
    }
}
