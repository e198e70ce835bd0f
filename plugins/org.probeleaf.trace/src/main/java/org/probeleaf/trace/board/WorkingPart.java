// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

/** A part while changes are put to the board. Nets are named by the ids of {@link WorkingNets}. */
final class WorkingPart {

    /** Its pins as they came, with their drawn nets. */
    final Part part;
    /** Whether a change brought it, rather than the drawing. */
    final boolean fitted;
    final List<WorkingPin> pins = new ArrayList<>();
    String value;
    boolean out;

    WorkingPart(Part part, boolean fitted) {
        this.part = part;
        this.fitted = fitted;
        this.value = part.value();
        part.pins().forEach(p -> pins.add(new WorkingPin(p)));
    }

    /** A pin with its pad. */
    static final class WorkingPin {

        final Pin drawn;
        /** The net of its pad, which stays where the pin goes. */
        String pad;
        /** The net that was joined to the pin itself while it is off its pad. */
        String own;
        boolean lifted;
        boolean cut;

        WorkingPin(Pin drawn) {
            this.drawn = drawn;
            this.pad = drawn.net();
        }

        boolean loose() {
            return lifted || cut;
        }

        String net() {
            return loose() ? own : pad;
        }

        Spot spot() {
            return drawn.at() == null ? null : new Spot(drawn.page(), drawn.at());
        }
    }

    /** The part as it is; itself where nothing is changed. */
    Part now(WorkingNets nets) {
        List<Pin> now = new ArrayList<>();
        boolean same = Objects.equals(value, part.value());
        for (WorkingPin p : pins) {
            String net = nets.current(p.net());
            boolean kept = Objects.equals(net, p.drawn.net());
            same &= kept;
            now.add(kept ? p.drawn : new Pin(p.drawn.number(), p.drawn.name(), p.drawn.unit(), p.drawn.page(),
                    p.drawn.at(), net, p.drawn.implied()));
        }
        return same ? part : new Part(part.ref(), value, part.units(), now);
    }
}
