// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.IntToDoubleFunction;

/**
 * Finds minimal diagnoses, the smallest first and the likeliest of one size first. A set of suspected components that a
 * conflict speaks against grows by each component of the conflict. Sets are taken by size, none twice and none that
 * holds a diagnosis, so every minimal diagnosis up to the bounds is found and nothing else, whether conflicts are least
 * or not: on the way to a diagnosis there is always a set within it that meets one more conflict.
 */
public final class Diagnoser {

    /** So many conflicts are made as small as can be. */
    private static final int LESSENED = 8;

    private final ConflictSource source;
    private final IntToDoubleFunction weight;
    private final Bounds bounds;
    private final List<BitSet> conflicts = new ArrayList<>();
    private final List<BitSet> diagnoses = new ArrayList<>();
    private boolean cut;
    private int cutAt = Integer.MAX_VALUE;

    /**
     * How far to look for diagnoses of more than one component.
     *
     * @param size      most components in a diagnosis
     * @param diagnoses most of them
     * @param questions most sets that are looked at
     * @param open      most sets that wait to be looked at, before no further are made
     * @param nanos     most time, in nanoseconds
     */
    public record Bounds(int size, int diagnoses, int questions, int open, long nanos) {

        /** Without bounds, for small systems. */
        public static Bounds none() {
            return new Bounds(Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE, Long.MAX_VALUE);
        }
    }

    /** Sets out; {@link #run} does the work. */
    public Diagnoser(ConflictSource source, IntToDoubleFunction weight, Bounds bounds) {
        this.source = source;
        this.weight = weight;
        this.bounds = bounds;
    }

    private record Open(BitSet set, int size, double weight, int number) {
    }

    /** Looks for diagnoses; none where nothing is wrong. */
    public Diagnoser run() {
        PriorityQueue<Open> queue = new PriorityQueue<>(Comparator.comparingInt(Open::size)
                .thenComparing(Comparator.comparingDouble(Open::weight).reversed())
                .thenComparingInt(Open::number));
        Set<BitSet> known = new HashSet<>();
        queue.add(new Open(new BitSet(), 0, 1, 0));
        long start = System.nanoTime();
        int asked = 0;
        while (!queue.isEmpty()) {
            Open open = queue.poll();
            if (diagnoses.stream().anyMatch(d -> HittingSets.holds(open.set(), d))) {
                continue;
            }
            // Single components are always looked at: there are no more than the first conflict has.
            if (open.size() > 1 && (diagnoses.size() >= bounds.diagnoses() || asked >= bounds.questions()
                    || System.nanoTime() - start > bounds.nanos())) {
                cut(open.size());
                break;
            }
            Optional<BitSet> conflict = metBy(open.set());
            if (conflict.isEmpty()) {
                asked++;
                conflict = source.conflict(open.set());
                // Small conflicts keep the search narrow, but not at any price.
                conflict = asked <= LESSENED ? conflict.map(c -> source.lessened(c, open.set())) : conflict;
                conflict.ifPresent(conflicts::add);
            }
            if (conflict.isEmpty()) {
                diagnoses.add(open.set());
            } else if (open.size() < bounds.size() && (open.size() < 1 || queue.size() < bounds.open())) {
                grow(open, conflict.get(), known, queue);
            } else {
                cut(open.size() + 1);
            }
        }
        return this;
    }

    private void cut(int size) {
        cut = true;
        cutAt = Math.min(cutAt, size);
    }

    /** A conflict found before that the set does not meet. */
    private Optional<BitSet> metBy(BitSet set) {
        return conflicts.stream().filter(c -> !c.intersects(set)).min(Comparator.comparingInt(BitSet::cardinality));
    }

    private void grow(Open open, BitSet conflict, Set<BitSet> known, PriorityQueue<Open> queue) {
        for (int c = conflict.nextSetBit(0); c >= 0; c = conflict.nextSetBit(c + 1)) {
            BitSet more = (BitSet) open.set().clone();
            more.set(c);
            if (known.add(more)) {
                queue.add(new Open(more, open.size() + 1, open.weight() * weight.applyAsDouble(c), known.size()));
            }
        }
    }

    /** The minimal diagnoses; one empty set where nothing is wrong. */
    public List<BitSet> diagnoses() {
        return List.copyOf(diagnoses);
    }

    /** Whether the bounds ended the search. */
    public boolean wasCut() {
        return cut;
    }

    /** Diagnoses with fewer components than this are all found; {@link Integer#MAX_VALUE} where all are. */
    public int completeBelow() {
        return cutAt;
    }

    /**
     * The least conflicts. Where the search was not cut they are all there are, which follow from the diagnoses: each
     * collection's least hitting sets have the collection's least sets as theirs. Else those that were met.
     */
    public List<BitSet> conflicts() {
        if (!cut) {
            return diagnoses.size() == 1 && diagnoses.get(0).isEmpty() ? List.of()
                    : HittingSets.least(diagnoses, Integer.MAX_VALUE);
        }
        return conflicts.stream().filter(c -> conflicts.stream().noneMatch(o -> o != c && !o.equals(c)
                && HittingSets.holds(c, o))).distinct().toList();
    }
}
