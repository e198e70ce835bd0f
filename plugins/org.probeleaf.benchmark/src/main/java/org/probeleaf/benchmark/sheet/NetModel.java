// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which pins are joined, while a sheet is drawn. */
final class NetModel {

    private final Map<String, String> parent = new LinkedHashMap<>();
    private final Map<String, Integer> counts = new HashMap<>();

    /** The next designator with a prefix. */
    String ref(String prefix) {
        return prefix + counts.merge(prefix, 1, Integer::sum);
    }

    /** Joins pins; a pin that is joined to none is a net of its own. */
    void join(List<String> pins) {
        pins.forEach(p -> parent.putIfAbsent(p, p));
        for (String pin : pins) {
            parent.put(root(pin), root(pins.get(0)));
        }
    }

    List<List<String>> nets() {
        Map<String, List<String>> nets = new LinkedHashMap<>();
        for (String pin : List.copyOf(parent.keySet())) {
            nets.computeIfAbsent(root(pin), k -> new ArrayList<>()).add(pin);
        }
        return List.copyOf(nets.values());
    }

    private String root(String pin) {
        String at = pin;
        while (!parent.get(at).equals(at)) {
            parent.put(at, parent.get(parent.get(at)));
            at = parent.get(at);
        }
        return at;
    }
}
