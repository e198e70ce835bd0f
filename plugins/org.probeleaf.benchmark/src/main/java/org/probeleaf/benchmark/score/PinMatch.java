// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.probeleaf.benchmark.score.ReadPins.ReadPin;
import org.probeleaf.benchmark.score.Truth.PinKey;
import org.probeleaf.benchmark.score.Truth.TrueNet;
import org.probeleaf.benchmark.score.Truth.TruePin;

/**
 * Which read pin stands for which true pin: by number, then by name; the pins of a two-pin part are interchangeable,
 * and a pin read without number or name takes the free pin of its part whose net agrees best.
 */
final class PinMatch {

    private final Map<PinKey, ReadPin> claimed = new HashMap<>();
    private final Map<String, Map<String, String>> namesOf = new LinkedHashMap<>();
    private final Map<PinKey, Integer> netOf = new HashMap<>();
    private final List<ReadPin> loose = new ArrayList<>();
    private int named;

    private record Option(double alike, int loose, PinKey key) {
    }

    private PinMatch() {
    }

    static PinMatch of(Truth truth, ReadPins read) {
        PinMatch match = new PinMatch();
        for (int i = 0; i < truth.nets().size(); i++) {
            for (TruePin pin : truth.nets().get(i).pins()) {
                match.netOf.put(pin.key(), i);
                match.namesOf.computeIfAbsent(pin.key().ref(), k -> new LinkedHashMap<>())
                        .put(pin.key().key(), pin.name());
            }
        }
        Map<String, List<ReadPin>> readOf = new LinkedHashMap<>();
        read.pins().forEach(p -> readOf.computeIfAbsent(p.ref(), k -> new ArrayList<>()).add(p));
        readOf.forEach(match::claimByNumberAndName);
        match.claimByLikeness(truth, read);
        return match;
    }

    /** The read pin that stands for a true one, or null. */
    ReadPin of(PinKey pin) {
        return claimed.get(pin);
    }

    /** How many pins of parts with three pins or more were matched by number or name. */
    int named() {
        return named;
    }

    private void claimByNumberAndName(String ref, List<ReadPin> pins) {
        Map<String, String> keys = namesOf.get(ref);
        if (keys == null) {
            return;
        }
        if (keys.size() <= 2) {
            loose.addAll(pins);
            return;
        }
        List<ReadPin> rest = new ArrayList<>();
        for (ReadPin pin : pins) {
            boolean hit = keys.containsKey(pin.number())
                    && claimed.putIfAbsent(new PinKey(ref, pin.number()), pin) == null;
            if (hit) {
                named++;
            } else {
                rest.add(pin);
            }
        }
        for (ReadPin pin : rest) {
            String hit = pin.name() == null ? null : keys.entrySet().stream()
                    .filter(e -> !claimed.containsKey(new PinKey(ref, e.getKey())))
                    .filter(e -> pin.name().equals(e.getKey()) || pin.name().equals(e.getValue()))
                    .map(Map.Entry::getKey).findFirst().orElse(null);
            if (hit != null) {
                claimed.put(new PinKey(ref, hit), pin);
                named++;
            } else {
                loose.add(pin);
            }
        }
    }

    private void claimByLikeness(Truth truth, ReadPins read) {
        List<Map<String, Integer>> trueRefs = new ArrayList<>();
        for (TrueNet net : truth.nets()) {
            Map<String, Integer> count = new HashMap<>();
            net.pins().forEach(p -> count.merge(p.key().ref(), 1, Integer::sum));
            trueRefs.add(count);
        }
        Map<String, Map<String, Integer>> readRefs = new HashMap<>();
        read.pins().forEach(p -> readRefs.computeIfAbsent(p.net(), k -> new HashMap<>())
                .merge(p.ref(), 1, Integer::sum));
        List<Option> options = new ArrayList<>();
        for (int n = 0; n < loose.size(); n++) {
            ReadPin pin = loose.get(n);
            for (String key : namesOf.get(pin.ref()).keySet()) {
                PinKey k = new PinKey(pin.ref(), key);
                if (!claimed.containsKey(k)) {
                    options.add(new Option(alike(readRefs.get(pin.net()), trueRefs.get(netOf.get(k))), n, k));
                }
            }
        }
        // A stable order: of equals, the first in the reading takes the first in the truth.
        options.sort(Comparator.comparingDouble((Option o) -> -o.alike()).thenComparingInt(Option::loose));
        Set<Integer> used = new HashSet<>();
        for (Option o : options) {
            if (!used.contains(o.loose()) && !claimed.containsKey(o.key())) {
                used.add(o.loose());
                claimed.put(o.key(), loose.get(o.loose()));
            }
        }
    }

    /** Share of the parts that two nets have in common. */
    private static double alike(Map<String, Integer> a, Map<String, Integer> b) {
        int both = 0;
        int any = 0;
        for (Map.Entry<String, Integer> e : a.entrySet()) {
            int other = b.getOrDefault(e.getKey(), 0);
            both += Math.min(e.getValue(), other);
            any += Math.max(e.getValue(), other);
        }
        for (Map.Entry<String, Integer> e : b.entrySet()) {
            any += a.containsKey(e.getKey()) ? 0 : e.getValue();
        }
        return (double) both / Math.max(1, any);
    }
}
