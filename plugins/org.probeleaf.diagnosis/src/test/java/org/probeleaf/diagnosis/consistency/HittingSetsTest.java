// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

import org.junit.jupiter.api.Test;

class HittingSetsTest {

    private static final int ELEMENTS = 7;

    /** The collection of Reiter's article (from memory); its hitting sets worked out by exhaustive search. */
    @Test
    @SuppressWarnings("unchecked")
    void least_reitersCollection_isComplete() throws IOException {
        var facts = Facts.of("hitting_set_reiter_example");
        List<BitSet> collection = ((List<List<Integer>>) facts.get("collection")).stream().map(HittingSetsTest::set).toList();
        Set<BitSet> expected = ((List<List<Integer>>) facts.get("minimal_hitting_sets")).stream()
                .map(HittingSetsTest::set).collect(Collectors.toSet());
        assertEquals(expected, new HashSet<>(HittingSets.least(collection, 9)));
    }

    /** Conflicts come in any order and some hold others: where the tree of the article went wrong. */
    @Property
    void diagnoser_conflictsOfAnyOrder_findsAllHittingSets(@ForAll("collections") List<BitSet> collection) {
        List<BitSet> expected = exhaustive(collection);
        assertEquals(new HashSet<>(expected), new HashSet<>(HittingSets.least(collection, ELEMENTS)));
        Diagnoser diagnoser = new Diagnoser(first(collection), c -> 0.1, Diagnoser.Bounds.none()).run();
        assertEquals(new HashSet<>(expected), new HashSet<>(diagnoser.diagnoses()));
        assertEquals(diagnoser.diagnoses().size(), new HashSet<>(diagnoser.diagnoses()).size());
    }

    @Property
    void diagnoser_boundInSize_findsAllThatAreSmaller(@ForAll("collections") List<BitSet> collection) {
        Diagnoser diagnoser = new Diagnoser(first(collection), c -> 0.1,
                new Diagnoser.Bounds(2, 100, 1000, 1000, Long.MAX_VALUE)).run();
        Set<BitSet> small = exhaustive(collection).stream().filter(s -> s.cardinality() <= 2).collect(Collectors.toSet());
        assertEquals(small, new HashSet<>(diagnoser.diagnoses()));
        assertTrue(diagnoser.wasCut() || small.size() == exhaustive(collection).size());
    }

    private static ConflictSource first(List<BitSet> collection) {
        return suspected -> {
            Optional<BitSet> unmet = collection.stream().filter(c -> !c.intersects(suspected)).findFirst();
            return unmet;
        };
    }

    @Provide
    Arbitrary<List<BitSet>> collections() {
        Arbitrary<BitSet> set = Arbitraries.integers().between(0, ELEMENTS - 1).set().ofMinSize(1).ofMaxSize(5)
                .map(s -> set(new ArrayList<>(s)));
        return set.list().ofMinSize(1).ofMaxSize(8);
    }

    private static List<BitSet> exhaustive(List<BitSet> collection) {
        List<BitSet> hitting = new ArrayList<>();
        for (int bits = 0; bits < 1 << ELEMENTS; bits++) {
            BitSet set = BitSet.valueOf(new long[] {bits});
            if (collection.stream().allMatch(set::intersects)) {
                hitting.add(set);
            }
        }
        return hitting.stream().filter(s -> hitting.stream().noneMatch(o -> !o.equals(s) && HittingSets.holds(s, o))).toList();
    }

    private static BitSet set(List<Integer> elements) {
        return Facts.bits(elements.stream().mapToInt(Integer::intValue).toArray());
    }
}
