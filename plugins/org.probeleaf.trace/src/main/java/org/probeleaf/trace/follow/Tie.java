// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.List;
import java.util.Map;
import java.util.function.Function;

import org.probeleaf.schematic.partbook.UnitType;
import org.probeleaf.trace.TracedPin;

/**
 * What the output enables of a section say: tied so that it always drives, tied so that it never does, or on a signal.
 *
 * @param off  the enable that is tied so that the outputs never drive, or null
 * @param note what to add to a reason where the outputs have enables, else empty
 */
record Tie(TracedPin off, String note) {

    private static final String ACTIVE_LOW = "oe_n";
    private static final String ACTIVE_HIGH = "oe";

    static Tie of(UnitType unit, Function<List<String>, List<TracedPin>> pins, Function<TracedPin, NetKind> carries) {
        StringBuilder on = new StringBuilder();
        for (Map.Entry<String, List<String>> control : unit.controls().entrySet()) {
            boolean low = control.getKey().equals(ACTIVE_LOW);
            if (!low && !control.getKey().equals(ACTIVE_HIGH)) {
                continue;
            }
            for (TracedPin enable : pins.apply(control.getValue())) {
                NetKind kind = carries.apply(enable);
                if (kind == (low ? NetKind.SUPPLY : NetKind.GROUND)) {
                    return new Tie(enable, "");
                }
                if (!kind.isSupply()) {
                    on.append(on.isEmpty() ? ", while " : " and ").append(PartWords.shortPin(enable));
                }
            }
        }
        boolean several = on.indexOf(" and ") >= 0;
        return new Tie(null, on.isEmpty() ? "" : on.append(several ? " enable it" : " enables it").toString());
    }
}
