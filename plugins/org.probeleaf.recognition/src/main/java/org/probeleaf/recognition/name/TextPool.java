// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.schematic.geometry.Box;

/** The texts of a page, each of which may be taken once. */
final class TextPool {

    private final List<Text> all;
    private final SpatialIndex<Text> index;
    private final Map<String, Integer> counts = new HashMap<>();
    private final Set<Text> taken = new HashSet<>();

    TextPool(List<Text> texts) {
        all = texts;
        texts.forEach(t -> counts.merge(t.text(), 1, Integer::sum));
        index = new SpatialIndex<>(texts, Text::box);
    }

    /** Texts not taken yet. */
    List<Text> free() {
        List<Text> free = new ArrayList<>(all);
        free.removeAll(taken);
        return free;
    }

    /** Texts not taken yet whose boxes touch the given one. */
    List<Text> freeIn(Box box) {
        List<Text> found = new ArrayList<>(index.touching(box));
        found.removeAll(taken);
        return found;
    }

    /** Whether the page says the same more than once. */
    boolean isRepeated(String text) {
        return counts.getOrDefault(text, 0) > 1;
    }

    List<Text> all() {
        return all;
    }

    void take(Text text) {
        taken.add(text);
    }

    boolean isTaken(Text text) {
        return taken.contains(text);
    }
}
