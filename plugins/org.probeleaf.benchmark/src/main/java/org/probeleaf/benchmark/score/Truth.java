// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import com.fasterxml.jackson.jr.ob.JSON;

/**
 * What is truly connected on a sheet.
 *
 * @param nets    the nets
 * @param refs    designators of all parts on them
 * @param hidden  pins that are connected but not drawn, never counted
 * @param alias   for further numbers of one drawn pin the number that stands for it
 * @param ignored designators that are not counted
 * @param spelt   for a designator that the sheet prints otherwise the true one
 */
record Truth(List<TrueNet> nets, Set<String> refs, Set<PinKey> hidden, Map<PinKey, String> alias,
        Set<String> ignored, Map<String, String> spelt) {

    /** A pin by its part and its number (or its name, where that is all there is). */
    record PinKey(String ref, String key) {
    }

    /** A pin of a true net; {@code name} may be null. */
    record TruePin(PinKey key, String name) {
    }

    /** A true net. */
    record TrueNet(String name, List<TruePin> pins) {
    }

    /**
     * Reads {@code truth.json}.
     *
     * @throws IOException where it is not as it should be
     */
    static Truth read(Path file) throws IOException {
        Map<String, Object> doc = JSON.std.mapFrom(Files.readString(file));
        List<TrueNet> nets = new ArrayList<>();
        Set<PinKey> known = new HashSet<>();
        Set<String> refs = new LinkedHashSet<>();
        for (Object net : list(doc.get("nets"))) {
            List<TruePin> pins = new ArrayList<>();
            for (Object pin : list(((Map<?, ?>) net).get("pins"))) {
                List<?> p = list(pin);
                String number = p.size() > 1 ? Spelling.pin(p.get(1)) : null;
                String name = p.size() > 2 ? Spelling.pin(p.get(2)) : null;
                String ref = Spelling.ref(p.get(0));
                known.add(new PinKey(ref, number));
                refs.add(ref);
                pins.add(new TruePin(new PinKey(ref, number != null ? number : name), name));
            }
            nets.add(new TrueNet(String.valueOf(((Map<?, ?>) net).get("name")), pins));
        }
        Set<PinKey> hidden = new HashSet<>();
        Set<String> ignored = new HashSet<>();
        for (Object pin : list(doc.get("hidden_pins"))) {
            hidden.add(new PinKey(Spelling.ref(list(pin).get(0)), Spelling.pin(list(pin).get(1))));
            ignored.add(Spelling.ref(list(pin).get(0)));
        }
        hidden.removeAll(known);
        list(doc.get("sheet_only_refs")).forEach(r -> ignored.add(Spelling.ref(r)));
        names(doc.get("excluded_refs")).forEach(r -> ignored.add(Spelling.ref(r)));
        list(doc.get("single_pin_nets")).forEach(p -> ignored.add(Spelling.ref(list(p).get(0))));
        ignored.removeAll(refs);
        Map<String, String> spelt = new LinkedHashMap<>();
        map(doc.get("ref_aliases")).forEach((a, b) -> spelt.put(Spelling.ref(a), Spelling.ref(b)));
        return new Truth(nets, refs, hidden, aliases(map(doc.get("same_symbol_pin"))), ignored, spelt);
    }

    private static Map<PinKey, String> aliases(Map<?, ?> sameSymbolPin) {
        Map<PinKey, String> alias = new LinkedHashMap<>();
        sameSymbolPin.forEach((ref, pins) -> ((Map<?, ?>) pins).forEach((number, others) -> {
            for (Object other : list(others)) {
                alias.put(new PinKey(Spelling.ref(ref), Spelling.pin(other)), Spelling.pin(number));
            }
        }));
        return alias;
    }

    private static List<?> list(Object value) {
        return value instanceof List<?> l ? l : List.of();
    }

    private static Map<?, ?> map(Object value) {
        return value instanceof Map<?, ?> m ? m : Map.of();
    }

    /** The keys of an object or the elements of an array. */
    private static Set<Object> names(Object value) {
        Set<Object> names = new LinkedHashSet<>(map(value).keySet());
        names.addAll(list(value));
        return names;
    }
}
