// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import com.fasterxml.jackson.jr.ob.JSON;

/** Facts of published circuits, from {@code published.json}, which says where they are from. */
final class Facts {

    private Facts() {
    }

    static Map<String, Object> of(String key) throws IOException {
        return child(read("/org/probeleaf/diagnosis/published.json"), key);
    }

    static Map<String, Object> read(String resource) throws IOException {
        try (InputStream in = Facts.class.getResourceAsStream(resource)) {
            return JSON.std.mapFrom(in);
        }
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> child(Map<String, Object> facts, String key) {
        return (Map<String, Object>) facts.get(key);
    }

    @SuppressWarnings("unchecked")
    static Set<Set<String>> sets(Map<String, Object> facts, String key) {
        return ((List<List<String>>) facts.get(key)).stream().map(TreeSet::new).collect(Collectors.toSet());
    }

    static double number(Map<String, Object> facts, String key) {
        return ((Number) facts.get(key)).doubleValue();
    }

    static Set<Set<String>> names(SystemModel model, List<BitSet> sets) {
        return sets.stream().map(s -> s.stream().mapToObj(model.components()::get)
                .collect(Collectors.toCollection(TreeSet::new))).collect(Collectors.toSet());
    }

    static BitSet bits(int... elements) {
        BitSet set = new BitSet();
        Arrays.stream(elements).forEach(set::set);
        return set;
    }
}
