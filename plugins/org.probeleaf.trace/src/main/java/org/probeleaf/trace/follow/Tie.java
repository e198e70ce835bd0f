// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.probeleaf.schematic.partbook.UnitType;
import org.probeleaf.trace.TracedPin;

/**
 * How the output enables of a section are tied.
 *
 * @param off    the enable that is tied so that the outputs never drive, or null
 * @param on     enables that are tied so that the outputs drive
 * @param signal enables on signals
 * @param known  how many enables the section has
 */
record Tie(TracedPin off, List<TracedPin> on, List<TracedPin> signal, int known) {

    private static final String ACTIVE_LOW = "oe_n";
    private static final String ACTIVE_HIGH = "oe";

    static Tie of(UnitType unit, Function<List<String>, List<TracedPin>> pins, Function<TracedPin, NetKind> carries) {
        List<TracedPin> on = new ArrayList<>();
        List<TracedPin> signal = new ArrayList<>();
        TracedPin off = null;
        int known = 0;
        for (Map.Entry<String, List<String>> control : new TreeMap<>(unit.controls()).entrySet()) {
            boolean low = control.getKey().equals(ACTIVE_LOW);
            if (low || control.getKey().equals(ACTIVE_HIGH)) {
                known += control.getValue().size();
                for (TracedPin enable : pins.apply(control.getValue())) {
                    NetKind kind = carries.apply(enable);
                    if (!kind.isSupply()) {
                        signal.add(enable);
                    } else if (kind == (low ? NetKind.GROUND : NetKind.SUPPLY)) {
                        on.add(enable);
                    } else {
                        off = enable;
                    }
                }
            }
        }
        return new Tie(off, on, signal, known);
    }

    /** Whether the outputs always drive: all enables are tied on. */
    boolean always() {
        return on.size() == known;
    }

    /** What to add to the reason of a way through the section; empty where there is nothing to say. */
    String note() {
        return signal.isEmpty() ? "" : ", while " + signal.stream().map(PartWords::shortPin)
                .collect(Collectors.joining(" and ")) + (signal.size() > 1 ? " enable it" : " enables it");
    }
}
