// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.probe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import com.fasterxml.jackson.jr.ob.JSON;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.diagnosis.probe.ProbeChooser.Choice;

/**
 * Chains of stages of which one is at fault. Information by test point and expected numbers of tests are worked out by
 * another program ({@code published.json}); 8 equal stages are the example of handbooks (US Army subcourse IT0338, 1996).
 */
class ProbeChooserTest {

    private static Map<?, ?> facts(String key) throws IOException {
        try (InputStream in = ProbeChooserTest.class.getResourceAsStream("/org/probeleaf/diagnosis/published.json")) {
            return (Map<?, ?>) JSON.std.mapFrom(in).get(key);
        }
    }

    /** Stage k at fault: everything after it is bad. Place k is after stage k + 1, numbered from 0. */
    private static List<Candidate> stages(double... weights) {
        List<Candidate> candidates = new ArrayList<>();
        for (int k = 0; k < weights.length; k++) {
            Map<Integer, Double> bad = new HashMap<>();
            for (int place = k; place < weights.length; place++) {
                bad.put(place, 1.0);
            }
            candidates.add(new Candidate(k, weights[k], bad));
        }
        return candidates;
    }

    private static ProbeChooser chooser(List<Candidate> candidates, int places) {
        return new ProbeChooser(candidates, places, p -> 0, p -> p < places - 1);
    }

    @ParameterizedTest
    @CsvSource({"chain_8_equal, 1;1;1;1;1;1;1;1", "chain_10_equal, 1;1;1;1;1;1;1;1;1;1", "chain_4_equal, 1;1;1;1",
        "chain_4_unequal, 1;1;1;2.5"})
    void choices_onChains_giveTheInformationOfEachPointAndTheBestFirst(String key, String stages) throws IOException {
        double[] weights = List.of(stages.split(";")).stream().mapToDouble(Double::parseDouble).toArray();
        ProbeChooser chooser = chooser(stages(weights), weights.length);
        Map<?, ?> facts = facts(key);
        List<?> bits = (List<?>) facts.get("information_bits_by_test_point");
        List<Choice> choices = chooser.choices();
        assertEquals(bits.size(), choices.size());
        for (Choice c : choices) {
            assertEquals(((Number) bits.get(c.place())).doubleValue(), c.gain(), 1e-9, "after stage " + (c.place() + 1));
        }
        assertEquals(((Number) facts.get("prior_entropy_bits")).doubleValue(), chooser.entropy(), 1e-9);
        double best = bits.stream().mapToDouble(b -> ((Number) b).doubleValue()).max().orElseThrow();
        assertEquals(best, choices.get(0).gain(), 1e-9);
    }

    /** Always probing the best place, the mean number of tests is the least there can be. */
    @ParameterizedTest
    @CsvSource({"chain_8_equal, 1;1;1;1;1;1;1;1", "chain_10_equal, 1;1;1;1;1;1;1;1;1;1", "chain_4_equal, 1;1;1;1",
        "chain_4_unequal, 1;1;1;2.5"})
    void choices_followedToTheEnd_takeTheExpectedNumberOfTests(String key, String stages) throws IOException {
        double[] weights = List.of(stages.split(";")).stream().mapToDouble(Double::parseDouble).toArray();
        double total = 0;
        double mean = 0;
        for (double w : weights) {
            total += w;
        }
        for (int fault = 0; fault < weights.length; fault++) {
            mean += weights[fault] / total * tests(stages(weights), weights.length, fault);
        }
        assertEquals(((Number) facts(key).get("expected_tests")).doubleValue(), mean, 1e-9);
    }

    private static int tests(List<Candidate> candidates, int places, int fault) {
        List<Candidate> left = candidates;
        int tests = 0;
        while (left.size() > 1) {
            Choice choice = chooser(left, places).choices().get(0);
            boolean bad = choice.place() >= fault;
            left = left.stream().filter(c -> c.bad().containsKey(choice.place()) == bad).toList();
            tests++;
            assertTrue(tests < places);
        }
        return tests;
    }
}
