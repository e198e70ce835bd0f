// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * All sets of components of a small system that what was seen allows, each with its probability, and what each place
 * would tell (de Kleer and Williams 1987): the probability of a set is the product over all components of p or 1 - p,
 * over the sum for all sets that are allowed.
 */
public final class CandidateSpace {

    /** The most components: their sets are all looked at. */
    public static final int MOST = 20;

    private final List<Allowed> allowed = new ArrayList<>();
    private final SystemModel model;
    private final int values;

    private record Allowed(BitSet set, Map<Integer, Integer> known, double probability) {
    }

    /**
     * Looks at all sets.
     *
     * @param seen        values of variables
     * @param given       of those, the ones that are held from outside rather than observed
     * @param failure     probability that a component fails, by its number
     * @param values      how many values a place may have, for sets that say nothing of it: each is then as likely
     * @param unpredicted whether a set that does not foretell what was seen pays for that by as much
     */
    public CandidateSpace(SystemModel model, Map<Integer, Integer> seen, Map<Integer, Integer> given, double[] failure,
            int values, boolean unpredicted) {
        int n = model.components().size();
        if (n > MOST) {
            throw new IllegalArgumentException("more than " + MOST + " components");
        }
        this.model = model;
        this.values = values;
        Map<Integer, Integer> all = new HashMap<>(seen);
        all.putAll(given);
        Solver full = new Solver(model, all, Integer.MAX_VALUE);
        Solver blind = new Solver(model, given, Integer.MAX_VALUE);
        double total = 0;
        for (int bits = 0; bits < 1 << n; bits++) {
            BitSet set = BitSet.valueOf(new long[] {bits});
            Optional<Map<Integer, Integer>> known = full.values(set);
            if (known.isPresent() && full.conflict(set).isEmpty()) {
                double p = 1;
                for (int c = 0; c < n; c++) {
                    p *= set.get(c) ? failure[c] : 1 - failure[c];
                }
                if (unpredicted) {
                    Map<Integer, Integer> foretold = blind.values(set).orElse(Map.of());
                    long silent = seen.keySet().stream().filter(v -> !foretold.containsKey(v)).count();
                    p /= Math.pow(values, silent);
                }
                allowed.add(new Allowed(set, known.get(), p));
                total += p;
            }
        }
        double sum = total;
        allowed.replaceAll(a -> new Allowed(a.set(), a.known(), a.probability() / sum));
    }

    /** How many sets are allowed. */
    public int size() {
        return allowed.size();
    }

    /** The probability of a set, 0 where it is not allowed. */
    public double probability(BitSet set) {
        return allowed.stream().filter(a -> a.set().equals(set)).mapToDouble(Allowed::probability).sum();
    }

    /** The probability that a component is at fault. */
    public double probability(int component) {
        return allowed.stream().filter(a -> a.set().get(component)).mapToDouble(Allowed::probability).sum();
    }

    /** The entropy of the sets, in bits. */
    public double entropy() {
        return entropy(allowed.stream().map(Allowed::probability).toList(), 1);
    }

    /** How likely each value of a variable is, as far as sets foretell it. */
    public Map<Integer, Double> outlook(int variable) {
        Map<Integer, Double> outlook = new TreeMap<>();
        allowed.stream().filter(a -> a.known().containsKey(variable))
                .forEach(a -> outlook.merge(a.known().get(variable), a.probability(), Double::sum));
        return outlook;
    }

    /** The entropy that is to be expected once a variable was looked at, in bits. */
    public double expectedEntropy(int variable) {
        double expected = 0;
        Map<Integer, Double> outlook = outlook(variable);
        List<Double> silent = allowed.stream().filter(a -> !a.known().containsKey(variable)).map(Allowed::probability)
                .toList();
        double unknown = silent.stream().mapToDouble(Double::doubleValue).sum();
        for (int value : outlook.keySet()) {
            List<Double> left = new ArrayList<>();
            allowed.stream().filter(a -> Integer.valueOf(value).equals(a.known().get(variable)))
                    .forEach(a -> left.add(a.probability()));
            silent.forEach(p -> left.add(p / values));
            double p = outlook.get(value) + unknown / values;
            expected += p * entropy(left, p);
        }
        double other = Math.max(0, values - outlook.size()) * unknown / values;
        return expected + other * entropy(silent, unknown);
    }

    /** The variable among some whose look-up leaves least to be expected; the first of equals. */
    public int best(int... variables) {
        int best = variables[0];
        for (int v : variables) {
            best = expectedEntropy(v) < expectedEntropy(best) - 1e-12 ? v : best;
        }
        return best;
    }

    public SystemModel model() {
        return model;
    }

    private static double entropy(List<Double> weights, double total) {
        double sum = 0;
        for (double w : weights) {
            if (w > 0 && total > 0) {
                sum -= w / total * Math.log(w / total);
            }
        }
        return sum / Math.log(2);
    }
}
