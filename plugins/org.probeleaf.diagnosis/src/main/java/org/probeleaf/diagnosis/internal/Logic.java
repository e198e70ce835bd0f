// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.internal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

import org.probeleaf.diagnosis.circuit.Circuit;
import org.probeleaf.diagnosis.consistency.ConflictSource;
import org.probeleaf.diagnosis.consistency.Diagnoser;
import org.probeleaf.diagnosis.consistency.Solver;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.Simulator;

/** What follows by logic alone: minimal diagnoses and least conflicts of parts. */
final class Logic {

    /** Three parts at once are as many as anybody looks for; the rest keeps the answer quick. */
    private static final Diagnoser.Bounds BOUNDS = new Diagnoser.Bounds(3, 200, 4000, 120_000_000L);
    private static final int TRIALS = 400;

    private final Circuit circuit;
    private final Diagnoser diagnoser;
    private final Solver solver;

    Logic(Circuit circuit, Evidence evidence, Simulator simulator, IntToDoubleFunction weight) {
        this.circuit = circuit;
        LevelModel levels = new LevelModel(circuit, evidence, simulator);
        this.solver = new Solver(levels.model(), levels.known(), TRIALS);
        List<BitSet> doubts = new DoubtConflicts(circuit, evidence, simulator).all();
        ConflictSource source = suspected -> {
            Optional<BitSet> unmet = doubts.stream().filter(c -> !c.intersects(suspected)).findFirst();
            return unmet.isPresent() ? unmet : solver.conflict(suspected);
        };
        this.diagnoser = new Diagnoser(source, weight, BOUNDS).run();
    }

    /** Minimal diagnoses as sets of part indices, the smallest first. */
    List<BitSet> diagnoses() {
        return diagnoser.diagnoses();
    }

    List<BitSet> conflicts() {
        return diagnoser.conflicts();
    }

    /** Whether a part alone explains all; true where that was not looked through to the end. */
    boolean mayBeAlone(int part) {
        return diagnoser.completeBelow() < 2
                || diagnoser.diagnoses().stream().anyMatch(d -> d.cardinality() == 1 && d.get(part));
    }

    boolean wasCut() {
        return diagnoser.wasCut();
    }

    /** Whether levels were left untried, so that some diagnoses may not hold. */
    boolean wasLoose() {
        return solver.wasCut();
    }

    /** Sets of parts as lists of designators. */
    List<List<String>> refs(List<BitSet> sets) {
        List<List<String>> all = new ArrayList<>();
        sets.forEach(s -> all.add(s.stream().mapToObj(circuit::ref).toList()));
        return all;
    }
}
