// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.probe;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/**
 * The next probe by least expected entropy, one step ahead (J. de Kleer, B. C. Williams, "Diagnosing multiple faults",
 * Artificial Intelligence 32, 1987): H = sum over outcomes of p(outcome) times the entropy of what is left. What can be
 * told apart are classes: explanations that foretell the same everywhere are one. All entropies are in bits.
 */
public final class ProbeChooser {

    /** What tells less is not worth the trouble. */
    private static final double LEAST_GAIN = 0.01;
    /** Likelihoods that differ by less are the same. */
    private static final double STEP = 1e-3;

    private final int places;
    private final double[] base;
    private final boolean[] reachable;
    private final List<Kind> kinds;
    private final double[] suspects;

    /**
     * Takes in the candidates.
     *
     * @param places    how many places there are; they are numbered from 0
     * @param base      how likely something is wrong at a place of which a candidate says nothing
     * @param reachable whether a place can be looked at
     */
    public ProbeChooser(List<Candidate> candidates, int places, IntToDoubleFunction base, IntPredicate reachable) {
        this.places = places;
        this.base = new double[places];
        this.reachable = new boolean[places];
        for (int p = 0; p < places; p++) {
            this.base[p] = base.applyAsDouble(p);
            this.reachable[p] = reachable.test(p);
        }
        double total = candidates.stream().mapToDouble(Candidate::weight).sum();
        Map<Map<Integer, Long>, Kind> bySigns = new HashMap<>();
        this.suspects = new double[candidates.stream().mapToInt(Candidate::suspect).max().orElse(-1) + 1];
        for (Candidate c : candidates) {
            Kind kind = bySigns.computeIfAbsent(signs(c), s -> new Kind(c.bad(), new TreeMap<>()));
            kind.suspects().merge(c.suspect(), c.weight() / total, Double::sum);
            suspects[c.suspect()] += c.weight() / total;
        }
        this.kinds = List.copyOf(bySigns.values());
    }

    /**
     * Explanations that cannot be told apart.
     *
     * @param bad      what they foretell
     * @param suspects the share of each suspect among them
     */
    private record Kind(Map<Integer, Double> bad, Map<Integer, Double> suspects) {

        double weight() {
            double sum = 0;
            for (double w : suspects.values()) {
                sum += w;
            }
            return sum;
        }
    }

    /** Where a candidate foretells something else than the rest, in steps. */
    private Map<Integer, Long> signs(Candidate c) {
        Map<Integer, Long> signs = new HashMap<>();
        c.bad().forEach((place, p) -> {
            if (reachable[place] && Math.abs(p - base[place]) >= STEP) {
                signs.put(place, Math.round(p / STEP));
            }
        });
        return signs;
    }

    /**
     * A place with what looking at it is worth.
     *
     * @param place its number
     * @param bad   how likely it is that something is wrong there, 0 to 1
     * @param gain  by how much the entropy of the classes is to be expected to fall
     */
    public record Choice(int place, double bad, double gain) {
    }

    /** How many classes there are. */
    public int classes() {
        return kinds.size();
    }

    /** The entropy of the classes. */
    public double entropy() {
        double sum = 0;
        for (Kind kind : kinds) {
            sum += term(kind.weight());
        }
        return sum;
    }

    /** What probing can tell of the suspects at the most: nothing where each class has the same ones. */
    public double tellable() {
        double joint = 0;
        for (Kind kind : kinds) {
            for (double w : kind.suspects().values()) {
                joint += term(w);
            }
        }
        return entropy() + Arrays.stream(suspects).map(ProbeChooser::term).sum() - joint;
    }

    /** All places that tell something, the one that tells most first; of equals the one with the lower number. */
    public List<Choice> choices() {
        double[] bad = new double[places];
        double[] certain = new double[places];
        double all = 0;
        double[] untouched = new double[places];
        for (Kind kind : kinds) {
            double w = kind.weight();
            all += w;
            kind.bad().forEach((place, p) -> {
                bad[place] += w * p;
                certain[place] += w * binary(p);
                untouched[place] += w;
            });
        }
        List<Choice> choices = new ArrayList<>();
        for (int place = 0; place < places; place++) {
            if (reachable[place] && untouched[place] > 0) {
                double rest = all - untouched[place];
                double p = bad[place] + rest * base[place];
                double gain = binary(p) - certain[place] - rest * binary(base[place]);
                if (gain > LEAST_GAIN) {
                    choices.add(new Choice(place, p, gain));
                }
            }
        }
        choices.sort(Comparator.comparingLong((Choice c) -> -Math.round(c.gain() * 1e9)).thenComparingInt(Choice::place));
        return choices;
    }

    /**
     * What a look at a place says of the suspects.
     *
     * @param gain   by how much the entropy of the suspects is to be expected to fall
     * @param ifBad  the suspect that is likeliest where it is bad, or -1
     * @param ifGood the suspect that is likeliest where it is good, or -1
     */
    public record Pointing(double gain, int ifBad, int ifGood) {
    }

    /** What a look at a place says of the suspects. */
    public Pointing pointing(int place) {
        double[] bad = new double[suspects.length];
        double allBad = 0;
        for (Kind kind : kinds) {
            double p = kind.bad().getOrDefault(place, base[place]);
            for (Map.Entry<Integer, Double> share : kind.suspects().entrySet()) {
                bad[share.getKey()] += share.getValue() * p;
                allBad += share.getValue() * p;
            }
        }
        double joint = 0;
        int ifBad = -1;
        int ifGood = -1;
        for (int s = 0; s < suspects.length; s++) {
            double good = suspects[s] - bad[s];
            joint += term(bad[s]) + term(good);
            ifBad = bad[s] > 0 && (ifBad < 0 || bad[s] > bad[ifBad]) ? s : ifBad;
            ifGood = good > 0 && (ifGood < 0 || good > suspects[ifGood] - bad[ifGood]) ? s : ifGood;
        }
        double apart = Arrays.stream(suspects).map(ProbeChooser::term).sum();
        return new Pointing(apart + binary(allBad) - joint, ifBad, ifGood);
    }

    private static double binary(double p) {
        return term(p) + term(1 - p);
    }

    private static double term(double p) {
        return p <= 0 ? 0 : -p * Math.log(p) / Math.log(2);
    }
}
