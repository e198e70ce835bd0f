// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.command;

import java.util.List;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.workbench.session.Facts;
import org.probeleaf.workbench.session.Selection;
import org.probeleaf.workbench.session.SheetSession;

/** Walks from pin to pin along the selected net, over all sheets. */
final class PinWalk {

    private PinWalk() {
    }

    /** Selects the next pin, or the one before where {@code step} is negative, and brings it into sight. */
    static void step(SheetSession session, int step) {
        Facts facts = session.facts().orElse(null);
        Selection now = session.selection().orElse(null);
        if (facts == null || now == null || now.net() == null) {
            return;
        }
        List<TracedPin> pins = facts.pinsOn(now.net()).stream().filter(p -> p.pin().at() != null).toList();
        if (pins.isEmpty()) {
            return;
        }
        int at = -1;
        for (int i = 0; i < pins.size(); i++) {
            if (pins.get(i).pin().equals(now.pin()) && pins.get(i).part().equals(now.part())) {
                at = i;
            }
        }
        int next = at < 0 ? step > 0 ? 0 : pins.size() - 1 : Math.floorMod(at + step, pins.size());
        TracedPin pin = pins.get(next);
        session.select(Selection.pin(pin.part(), pin.pin(), now.net()));
        session.reveal(pin.pin().page(), Box.of(pin.pin().at()).grow(30));
    }
}
