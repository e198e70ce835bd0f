// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

import java.util.Objects;

import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.partbook.UnitType;
import org.probeleaf.trace.TracedPin;

/**
 * A way through one part from a net to another.
 *
 * @param in     the pin at which the signal goes in
 * @param out    the pin at which it comes out, of the same part or, of a connector, of its mate
 * @param kind   how the part hands it on
 * @param unit   the section of the chip as the part book has it, or null for other parts
 * @param reason in plain words why the signal goes this way: {@code "through R12 (33 Ω, series)"},
 *               {@code "through gate A of IC3 (74LS32, OR): pin 1 drives pin 3"}
 */
public record Step(TracedPin in, TracedPin out, StepKind kind, UnitType unit, String reason) {

    public Step {
        Objects.requireNonNull(in);
        Objects.requireNonNull(out);
    }

    /** The part it leads through. */
    public Part part() {
        return in.part();
    }

    /** Id of the net it comes from. */
    public String fromNet() {
        return in.pin().net();
    }

    /** Id of the net it leads to. */
    public String toNet() {
        return out.pin().net();
    }

    /** Whether it is the other, walked the other way. */
    boolean undoes(Step other) {
        return other != null && in.pin() == other.out.pin() && out.pin() == other.in.pin();
    }
}
