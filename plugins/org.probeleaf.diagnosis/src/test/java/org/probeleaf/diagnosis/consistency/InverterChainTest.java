// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Four inverters in a row of which the last gives the wrong level. Numbers worked out by exhaustive search by another
 * program ({@code published.json}).
 */
class InverterChainTest {

    private static SystemModel chain() {
        SystemModel.Builder b = SystemModel.builder();
        int in = b.variable("in");
        for (String name : List.of("A", "B", "C", "D")) {
            int out = b.variable("after_" + name);
            b.component(name, Rules.follow(in, out, true));
            in = out;
        }
        return b.build();
    }

    @ParameterizedTest
    @ValueSource(strings = {"four_inverters_equal", "four_inverters_last_weak", "four_inverters_first_weak"})
    void expectedEntropy_agreesWithExhaustiveSearch(String key) throws IOException {
        Map<String, Object> facts = Facts.of(key);
        SystemModel model = chain();
        double[] failure = ((List<?>) facts.get("prior")).stream().mapToDouble(p -> ((Number) p).doubleValue()).toArray();
        CandidateSpace space = new CandidateSpace(model, Map.of(model.variable("after_D"), 1),
                Map.of(model.variable("in"), 0), failure, 2, false);
        assertEquals(Facts.number(facts, "candidate_entropy_bits"), space.entropy(), 1e-9);
        Facts.child(facts, "component_probability").forEach((name, p) -> assertEquals(((Number) p).doubleValue(),
                space.probability(model.component(name)), 1e-9, name));
        Facts.child(facts, "expected_entropy_after_measuring").forEach((place, bits) -> assertEquals(
                ((Number) bits).doubleValue(), space.expectedEntropy(model.variable(place)), 1e-9, place));
        int best = space.best(model.variable("after_A"), model.variable("after_B"), model.variable("after_C"));
        assertEquals(facts.get("best"), model.variables().get(best));
    }
}
