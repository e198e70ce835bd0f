// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.Map;

import org.junit.jupiter.api.Test;

/**
 * The full adder of R. Reiter, "A theory of diagnosis from first principles", Artificial Intelligence 32 (1987) 57-95:
 * inputs 1, 0, 1; sum seen as 1 and carry as 0.
 */
class FullAdderTest {

    @Test
    void run_wrongSumAndCarry_givesReitersDiagnoses() throws IOException {
        SystemModel.Builder b = SystemModel.builder();
        b.component("X1", Rules.xor(b.variable("x1"), b.variable("in1"), b.variable("in2")));
        b.component("X2", Rules.xor(b.variable("sum"), b.variable("x1"), b.variable("in3")));
        b.component("A1", Rules.and(b.variable("a1"), b.variable("in1"), b.variable("in2")));
        b.component("A2", Rules.and(b.variable("a2"), b.variable("in3"), b.variable("x1")));
        b.component("O1", Rules.or(b.variable("carry"), b.variable("a1"), b.variable("a2")));
        SystemModel adder = b.build();
        Map<Integer, Integer> seen = Map.of(adder.variable("in1"), 1, adder.variable("in2"), 0, adder.variable("in3"), 1,
                adder.variable("sum"), 1, adder.variable("carry"), 0);
        Diagnoser diagnoser = new Diagnoser(new Solver(adder, seen, 1000), c -> 0.01, Diagnoser.Bounds.none()).run();
        Map<String, Object> facts = Facts.of("full_adder");
        assertEquals(Facts.sets(facts, "minimal_diagnoses"), Facts.names(adder, diagnoser.diagnoses()));
        assertEquals(Facts.sets(facts, "minimal_conflicts"), Facts.names(adder, diagnoser.conflicts()));
    }
}
