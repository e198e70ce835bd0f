// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.page;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;

import org.probeleaf.recognition.name.DesignatorGrammar;
import org.probeleaf.recognition.name.DesignatorGrammar.Designator;

/**
 * Decides which printed designators are units of one part: {@code IC3A} and {@code IC3B} are, where the class has
 * units or more than one of them is printed; {@code R17A} alone is a designator of its own.
 */
final class Refs {

    private static final Set<String> CLASSES_WITH_UNITS = Set.of("U", "IC", "N", "RN", "RM", "K", "RL");

    private final Map<String, Integer> unitsOf = new HashMap<>();

    /** Hears of a printed designator. */
    void note(String printed) {
        Designator d = DesignatorGrammar.parse(printed);
        if (d != null) {
            unitsOf.merge(d.ref(), 1, Integer::sum);
        }
    }

    /** The part that the printed designator speaks of. */
    String ref(String printed) {
        Designator d = DesignatorGrammar.parse(printed);
        return d == null ? printed : hasUnit(d) ? d.ref() : printed;
    }

    /** The unit that the printed designator speaks of, or null. */
    String unit(String printed) {
        Designator d = DesignatorGrammar.parse(printed);
        return d == null || !hasUnit(d) ? null : d.unit();
    }

    private boolean hasUnit(Designator d) {
        return d.unit() != null && (unitsOf.getOrDefault(d.ref(), 0) > 1
                || CLASSES_WITH_UNITS.contains(DesignatorGrammar.letters(d.ref())));
    }
}
