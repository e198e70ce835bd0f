// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

import org.probeleaf.diagnosis.consistency.ConflictSource;
import org.probeleaf.diagnosis.consistency.Diagnoser;
import org.probeleaf.diagnosis.consistency.Solver;
import org.probeleaf.schematic.netlist.Part;

/**
 * What follows by logic alone: minimal diagnoses and least conflicts of parts. A part that is at fault is so on every
 * board state that was measured.
 */
final class Logic {

    /**
     * Three parts at once are as many as anybody looks for. The number of questions keeps the answer quick and the same
     * each time; the time, a second, is for a machine that has much else to do.
     */
    private static final Diagnoser.Bounds BOUNDS = new Diagnoser.Bounds(3, 200, 500, 5000, 1_000_000_000L);
    private static final int TRIALS = 400;

    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final List<String> refs = new ArrayList<>();
    private final List<Board> boards = new ArrayList<>();
    private final Diagnoser diagnoser;

    Logic(List<Situation> situations, ToDoubleFunction<Part> weight) {
        Map<String, Double> weights = new LinkedHashMap<>();
        for (Situation s : situations) {
            for (Part part : s.circuit().parts()) {
                numbers.computeIfAbsent(part.ref(), r -> {
                    refs.add(r);
                    weights.put(r, weight.applyAsDouble(part));
                    return refs.size() - 1;
                });
            }
        }
        situations.forEach(s -> boards.add(new Board(s)));
        this.diagnoser = new Diagnoser(source(), c -> weights.get(refs.get(c)), BOUNDS).run();
    }

    private ConflictSource source() {
        return new ConflictSource() {

            private Board last;

            @Override
            public Optional<BitSet> conflict(BitSet suspected) {
                for (Board board : boards) {
                    last = board;
                    Optional<BitSet> found = board.conflict(suspected);
                    if (found.isPresent()) {
                        return found;
                    }
                }
                return Optional.empty();
            }

            @Override
            public BitSet lessened(BitSet conflict, BitSet suspected) {
                return last.lessened(conflict, suspected);
            }
        };
    }

    /** One board state: its parts have numbers of their own. */
    private final class Board {

        private final Situation situation;
        private final List<BitSet> doubts = new ArrayList<>();
        private final Solver solver;
        private final int[] here;

        Board(Situation situation) {
            this.situation = situation;
            doubts.addAll(new DoubtConflicts(situation.circuit(), situation.evidence(), situation.simulator()).all());
            doubts.addAll(situation.loose());
            LevelModel levels = new LevelModel(situation.circuit(), situation.evidence(), situation.simulator());
            this.solver = new Solver(levels.model(), levels.known(), TRIALS);
            this.here = refs.stream().mapToInt(situation::part).toArray();
        }

        Optional<BitSet> conflict(BitSet suspected) {
            BitSet own = own(suspected);
            Optional<BitSet> unmet = doubts.stream().filter(c -> !c.intersects(own)).findFirst();
            return (unmet.isPresent() ? unmet : solver.conflict(own)).map(this::common);
        }

        BitSet lessened(BitSet conflict, BitSet suspected) {
            BitSet own = own(suspected);
            BitSet found = own(conflict);
            return doubts.contains(found) ? conflict : common(solver.lessened(found, own));
        }

        /** With the numbers of this board. */
        private BitSet own(BitSet parts) {
            BitSet own = new BitSet();
            parts.stream().map(c -> here[c]).filter(p -> p >= 0).forEach(own::set);
            return own;
        }

        private BitSet common(BitSet parts) {
            BitSet common = new BitSet();
            parts.stream().forEach(p -> common.set(numbers.get(situation.circuit().ref(p))));
            return common;
        }
    }

    /** Minimal diagnoses as designators, the smallest first; one empty where nothing is wrong. */
    List<List<String>> diagnoses() {
        return refs(diagnoser.diagnoses());
    }

    List<List<String>> conflicts() {
        return refs(diagnoser.conflicts());
    }

    /** Whether nothing is wrong. */
    boolean allSound() {
        return diagnoser.diagnoses().size() == 1 && diagnoser.diagnoses().get(0).isEmpty();
    }

    /** Whether a part alone explains all; true where that was not looked through to the end. */
    boolean mayBeAlone(String ref) {
        int part = numbers.get(ref);
        return diagnoser.completeBelow() < 2
                || diagnoser.diagnoses().stream().anyMatch(d -> d.cardinality() == 1 && d.get(part));
    }

    boolean wasCut() {
        return diagnoser.wasCut();
    }

    /** Whether levels were left untried, so that some diagnoses may not hold. */
    boolean wasLoose() {
        return boards.stream().anyMatch(b -> b.solver.wasCut());
    }

    private List<List<String>> refs(List<BitSet> sets) {
        return sets.stream().map(s -> s.stream().mapToObj(refs::get).toList()).toList();
    }
}
