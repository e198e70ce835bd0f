// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.fuzz;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

/** A few damaged copies of the example; the benchmark reads thousands. */
class FuzzTest {

    private static final int MUTANTS = 80;

    @Test
    void outcome_damagedFiles_areReadOrClearlyRefused() throws IOException {
        Mutator mutator = mutator();
        List<String> bad = new ArrayList<>();
        Map<Outcome.Kind, Integer> counts = new EnumMap<>(Outcome.Kind.class);
        for (int i = 0; i < MUTANTS; i++) {
            Mutator.Mutant mutant = mutator.mutant(i);
            Outcome outcome = Outcome.of(mutant.bytes());
            counts.merge(outcome.kind(), 1, Integer::sum);
            if (!outcome.good()) {
                bad.add(i + " (" + mutant.how() + "): " + outcome.detail());
            }
        }
        assertEquals(List.of(), bad);
        assertTrue(counts.getOrDefault(Outcome.Kind.READ, 0) > MUTANTS / 4, "most are damaged but little: " + counts);
        assertTrue(counts.getOrDefault(Outcome.Kind.REFUSED, 0) > 0, "some are too damaged to be read: " + counts);
    }

    @Test
    void mutant_sameSeedAndNumber_isTheSameFile() throws IOException {
        for (int i = 0; i < 20; i++) {
            Mutator.Mutant once = mutator().mutant(i);
            Mutator.Mutant again = mutator().mutant(i);
            assertEquals(once.how(), again.how());
            assertArrayEquals(once.bytes(), again.bytes(), once.how());
        }
    }

    private static Mutator mutator() throws IOException {
        Path example = Path.of(System.getProperty("probeleaf.root"), "examples", "tern-tl8", "tern-tl8.pdf");
        return new Mutator(List.of(Files.readAllBytes(example)), 1);
    }
}
