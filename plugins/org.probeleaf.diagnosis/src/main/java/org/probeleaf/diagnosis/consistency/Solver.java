// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds conflicts of a model with what was seen. It draws conclusions from known values, each with the components it
 * rests on; where a gate's output is known but not yet what makes it so, it tries both levels of an input. For models
 * of gates that is complete, as long as the number of trials suffices; for whole numbers nothing is tried, as in
 * de Kleer and Williams' engine. Not for several threads.
 */
public final class Solver implements ConflictSource {

    private final SystemModel model;
    private final Map<Integer, Integer> seen;
    private final int mostTrials;
    private final int[] value;
    private final BitSet[] support;
    private final List<Integer> trail = new ArrayList<>();
    private final Deque<Integer> queue = new ArrayDeque<>();
    private final boolean[] waiting;
    /** Rules that a suspected component need not keep. */
    private final boolean[] idle;
    private final SystemModel.Guarded[] rules;
    private final int[][] rulesOf;
    private BitSet clash;
    private SystemModel.Guarded applying;
    private int trials;
    private boolean cut;

    /**
     * A solver.
     *
     * @param seen       values of variables by their numbers
     * @param mostTrials how many levels may be tried for one question
     */
    public Solver(SystemModel model, Map<Integer, Integer> seen, int mostTrials) {
        this.model = model;
        this.seen = Map.copyOf(seen);
        this.mostTrials = mostTrials;
        this.value = new int[model.variables().size()];
        this.support = new BitSet[value.length];
        this.waiting = new boolean[model.rules().size()];
        this.idle = new boolean[waiting.length];
        this.rules = model.rules().toArray(SystemModel.Guarded[]::new);
        this.rulesOf = new int[value.length][];
        for (int v = 0; v < value.length; v++) {
            rulesOf[v] = model.rulesOf(v).stream().mapToInt(Integer::intValue).toArray();
        }
    }

    private final Values view = new Values() {
        @Override
        public boolean known(int variable) {
            return support[variable] != null;
        }

        @Override
        public int value(int variable) {
            return value[variable];
        }

        @Override
        public void conclude(int variable, int level, int... because) {
            if (clash != null || support[variable] != null && value[variable] == level) {
                return;
            }
            BitSet rests = (BitSet) applying.components().clone();
            for (int v : because) {
                rests.or(support[v]);
            }
            if (support[variable] != null) {
                rests.or(support[variable]);
                clash = rests;
            } else {
                set(variable, level, rests);
            }
        }
    };

    /** Whether some question was left open for want of trials: what was not refuted then may still be wrong. */
    public boolean wasCut() {
        return cut;
    }

    @Override
    public Optional<BitSet> conflict(BitSet suspects) {
        return refutation(suspects);
    }

    /** The values that follow with the suspected components doing anything; empty where they cannot all be. */
    public Optional<Map<Integer, Integer>> values(BitSet suspects) {
        begin(suspects);
        if (propagate()) {
            Map<Integer, Integer> known = new java.util.HashMap<>();
            trail.forEach(v -> known.put(v, value[v]));
            return Optional.of(known);
        }
        return Optional.empty();
    }

    @Override
    public BitSet lessened(BitSet conflict, BitSet suspects) {
        BitSet least = conflict;
        BitSet rest = new BitSet();
        rest.set(0, model.components().size());
        for (int c = conflict.nextSetBit(0); c >= 0; c = conflict.nextSetBit(c + 1)) {
            if (least.get(c)) {
                BitSet without = (BitSet) rest.clone();
                without.andNot(least);
                without.set(c);
                without.or(suspects);
                Optional<BitSet> smaller = refutation(without);
                if (smaller.isPresent()) {
                    least = smaller.get();
                }
            }
        }
        return least;
    }

    private Optional<BitSet> refutation(BitSet suspects) {
        begin(suspects);
        trials = 0;
        return Optional.ofNullable(search(0));
    }

    private void begin(BitSet suspects) {
        for (int r = 0; r < rules.length; r++) {
            idle[r] = suspects.intersects(rules[r].components());
        }
        clash = null;
        trail.forEach(v -> support[v] = null);
        trail.clear();
        seen.forEach((variable, level) -> {
            if (support[variable] == null) {
                set(variable, level, new BitSet());
            }
        });
    }

    /** The components that the values cannot be had with, or null where nothing speaks against them. */
    private BitSet search(int depth) {
        if (!propagate()) {
            return clash;
        }
        int open = undecided();
        if (open < 0) {
            return null;
        }
        if (trials >= mostTrials) {
            cut = true;
            return null;
        }
        int mark = trail.size();
        int flag = model.components().size() + depth;
        BitSet together = new BitSet();
        for (int level = 0; level < 2; level++) {
            trials++;
            BitSet tried = new BitSet();
            tried.set(flag);
            set(open, level, tried);
            BitSet against = search(depth + 1);
            if (against == null) {
                return null;
            }
            undo(mark);
            if (!against.get(flag)) {
                return against;
            }
            together.or(against);
        }
        together.clear(flag);
        return together;
    }

    private int undecided() {
        for (int r = 0; r < rules.length; r++) {
            int open = idle[r] ? -1 : rules[r].rule().undecided(view);
            if (open >= 0) {
                return open;
            }
        }
        return -1;
    }

    private void undo(int mark) {
        clash = null;
        while (trail.size() > mark) {
            support[trail.remove(trail.size() - 1)] = null;
        }
    }

    private void set(int variable, int level, BitSet rests) {
        value[variable] = level;
        support[variable] = rests;
        trail.add(variable);
        for (int rule : rulesOf[variable]) {
            if (!waiting[rule] && !idle[rule]) {
                waiting[rule] = true;
                queue.add(rule);
            }
        }
    }

    /** Draws all conclusions; false where two do not agree. */
    private boolean propagate() {
        while (!queue.isEmpty()) {
            int rule = queue.poll();
            waiting[rule] = false;
            if (clash == null) {
                applying = rules[rule];
                applying.rule().apply(view);
            }
        }
        return clash == null;
    }
}
