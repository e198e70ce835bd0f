// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.junit.jupiter.api.Test;

/**
 * Three multipliers and two adders, the example of J. de Kleer and B. C. Williams, "Diagnosing multiple faults",
 * Artificial Intelligence 32 (1987) 97-130. Conflicts and diagnoses are those of the article; probabilities and
 * entropies were worked out by exhaustive search by another program ({@code published.json}).
 */
class PolyboxTest {

    private static final SystemModel MODEL = model();

    private static SystemModel model() {
        SystemModel.Builder b = SystemModel.builder();
        b.component("M1", Rules.product(b.variable("A"), b.variable("C"), b.variable("X")));
        b.component("M2", Rules.product(b.variable("B"), b.variable("D"), b.variable("Y")));
        b.component("M3", Rules.product(b.variable("C"), b.variable("E"), b.variable("Z")));
        b.component("A1", Rules.sum(b.variable("X"), b.variable("Y"), b.variable("F")));
        b.component("A2", Rules.sum(b.variable("Y"), b.variable("Z"), b.variable("G")));
        return b.build();
    }

    private static Map<Integer, Integer> values(Map<String, Object> named) {
        Map<Integer, Integer> values = new HashMap<>();
        named.forEach((name, value) -> values.put(MODEL.variable(name), ((Number) value).intValue()));
        return values;
    }

    private static Map<Integer, Integer> inputs() throws IOException {
        return values(Facts.child(Facts.of("polybox"), "inputs"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"polybox", "polybox_F_only"})
    void run_seenOutputs_givesPublishedConflictsAndDiagnoses(String key) throws IOException {
        Map<String, Object> facts = Facts.of(key);
        Map<Integer, Integer> seen = inputs();
        seen.putAll(values(Facts.child(facts, "observed")));
        Diagnoser diagnoser = new Diagnoser(new Solver(MODEL, seen, 0), c -> 0.01, Diagnoser.Bounds.none()).run();
        assertFalse(diagnoser.wasCut());
        assertEquals(Facts.sets(facts, "minimal_diagnoses"), Facts.names(MODEL, diagnoser.diagnoses()));
        assertEquals(Facts.sets(facts, "minimal_conflicts"), Facts.names(MODEL, diagnoser.conflicts()));
    }

    @Test
    void values_nothingSuspected_arePredicted() throws IOException {
        Map<String, Object> facts = Facts.of("polybox");
        Map<Integer, Integer> known = new Solver(MODEL, inputs(), 0).values(Facts.bits()).orElseThrow();
        values(Facts.child(facts, "predicted")).forEach((v, value) -> assertEquals(value, known.get(v)));
    }

    @ParameterizedTest
    @CsvSource({"polybox_entropy_consistency_only, false", "polybox_entropy_unknown_1_over_16, true"})
    void candidateSpace_agreesWithExhaustiveSearch(String key, boolean unpredicted) throws IOException {
        Map<String, Object> facts = Facts.of(key);
        double[] failure = new double[MODEL.components().size()];
        Arrays.fill(failure, Facts.number(facts, "p_fail"));
        CandidateSpace space = new CandidateSpace(MODEL, values(Facts.child(Facts.of("polybox"), "observed")), inputs(),
                failure, 16, unpredicted);
        assertEquals(27, space.size());
        assertEquals(Facts.number(facts, "entropy_bits"), space.entropy(), 1e-9);
        Facts.child(facts, "component_probability").forEach((name, p) -> assertEquals(((Number) p).doubleValue(),
                space.probability(MODEL.component(name)), 1e-9, name));
        for (String place : Facts.child(facts, "measure").keySet()) {
            Map<String, Object> measure = Facts.child(Facts.child(facts, "measure"), place);
            Map<Integer, Double> outlook = space.outlook(MODEL.variable(place));
            Facts.child(measure, "p_values").forEach((value, p) -> assertEquals(((Number) p).doubleValue(),
                    outlook.get(Integer.valueOf(value)), 1e-9, place));
            assertEquals(Facts.number(measure, "expected_entropy_bits"), space.expectedEntropy(MODEL.variable(place)),
                    1e-9, place);
        }
        assertEquals(MODEL.variable("X"), space.best(MODEL.variable("Z"), MODEL.variable("Y"), MODEL.variable("X")));
    }
}
