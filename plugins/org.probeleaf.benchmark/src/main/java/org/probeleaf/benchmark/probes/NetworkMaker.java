// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.probes;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.probeleaf.benchmark.probes.GateNetwork.Gate;

/**
 * Puts a network together gate by gate. A gate mostly takes in what nothing takes in yet, else something not far back.
 * Its output must move under chance inputs, so that few faults are without effect, as in logic that people lay out.
 */
final class NetworkMaker {

    private static final int PATTERNS = 64;
    private static final int LEAST_MOVES = 8;
    private static final int MOST_TRIES = 30;

    private final int inputs;
    private final Random random;
    private final List<Gate> gates = new ArrayList<>();
    private final List<Integer> unused = new ArrayList<>();
    /** What each signal is under chance inputs. */
    private final List<boolean[]> patterns = new ArrayList<>();

    NetworkMaker(int inputs, Random random) {
        this.inputs = inputs;
        this.random = random;
        for (int i = 0; i < inputs; i++) {
            unused.add(i);
            boolean[] pattern = new boolean[PATTERNS];
            for (int p = 0; p < PATTERNS; p++) {
                pattern[p] = random.nextBoolean();
            }
            patterns.add(pattern);
        }
    }

    List<Gate> gates() {
        return gates;
    }

    /** Adds a gate of a kind. */
    void add(GateKind kind) {
        int[] in = inputsOf(kind);
        boolean[] pattern = pattern(kind, in);
        for (int i = 0; i < MOST_TRIES && !moves(pattern); i++) {
            in = inputsOf(kind);
            pattern = pattern(kind, in);
        }
        for (int s : in) {
            unused.remove((Integer) s);
        }
        unused.add(inputs + gates.size());
        gates.add(new Gate(kind, in));
        patterns.add(pattern);
    }

    /** Signals for the inputs of a gate, no two the same. */
    private int[] inputsOf(GateKind kind) {
        int signals = inputs + gates.size();
        List<Integer> chosen = new ArrayList<>();
        while (chosen.size() < kind.in().size()) {
            boolean fresh = !unused.isEmpty() && random.nextInt(10) < 6;
            int window = Math.min(signals, Math.max(10, signals / 3));
            int next = fresh ? unused.get(random.nextInt(Math.min(unused.size(), 12)))
                    : signals - 1 - random.nextInt(window);
            if (!chosen.contains(next)) {
                chosen.add(next);
            }
        }
        return chosen.stream().mapToInt(Integer::intValue).toArray();
    }

    private boolean[] pattern(GateKind kind, int[] in) {
        boolean[] pattern = new boolean[PATTERNS];
        for (int p = 0; p < PATTERNS; p++) {
            boolean[] levels = new boolean[in.length];
            for (int i = 0; i < in.length; i++) {
                levels[i] = patterns.get(in[i])[p];
            }
            pattern[p] = kind.output(levels);
        }
        return pattern;
    }

    private static boolean moves(boolean[] pattern) {
        int high = 0;
        for (boolean p : pattern) {
            high += p ? 1 : 0;
        }
        return high >= LEAST_MOVES && high <= PATTERNS - LEAST_MOVES;
    }
}
