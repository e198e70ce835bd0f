// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

/**
 * Which pin of a transistor is which, by their names or by letters that stand for numbers.
 *
 * @param base      base or gate
 * @param collector collector or drain, or null
 * @param emitter   emitter or source, or null
 * @param field     whether it is a field effect transistor
 */
public record TransistorPins(Pin base, Pin collector, Pin emitter, boolean field) {

    private static final Set<String> BASE = Set.of("B", "BASE");
    private static final Set<String> GATE = Set.of("G", "GATE");
    private static final Set<String> COLLECTOR = Set.of("C", "COLLECTOR", "D", "DRAIN");
    private static final Set<String> EMITTER = Set.of("E", "EMITTER", "S", "SOURCE");

    /** The pins of a part with two or three pins, of which one is a base or a gate; empty for any other. */
    public static Optional<TransistorPins> of(Part part) {
        if (part.pins().size() > 3) {
            return Optional.empty();
        }
        Pin gate = named(part, GATE);
        Pin base = gate != null ? gate : named(part, BASE);
        Pin collector = named(part, COLLECTOR);
        Pin emitter = named(part, EMITTER);
        return base == null || collector == null && emitter == null ? Optional.empty()
                : Optional.of(new TransistorPins(base, collector, emitter, gate != null));
    }

    private static Pin named(Part part, Set<String> names) {
        return part.pins().stream().filter(p -> is(p.name(), names) || is(p.number(), names)).findFirst().orElse(null);
    }

    private static boolean is(String text, Set<String> names) {
        return text != null && names.contains(text.toUpperCase(Locale.ROOT));
    }
}
