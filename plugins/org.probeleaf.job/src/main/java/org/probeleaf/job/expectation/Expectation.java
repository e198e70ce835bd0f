// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import org.probeleaf.schematic.quantity.Bound;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/** What a reading should be. */
public sealed interface Expectation permits Tolerance, Range, FamilyLevels {

    /** The kind of value it speaks of. */
    QuantityKind kind();

    /** As {@link #parse} reads it ({@code "5 V\u00b15%"}, {@code "4.75 V..5.25 V"}, {@code "74LS"}). */
    String text();

    /** Judges a value. A value of another kind is {@link Outcome#UNSURE}, except that a plain number fits any kind. */
    Verdict judge(Quantity value);

    /** Whether all values beyond a limit deserve the verdict that the limit itself does. */
    boolean alike(double limit, Bound beyond);

    /** Judges a value of which only a limit may be known: the verdict is unsure where the true value may lie either way. */
    default Verdict judge(Quantity value, Bound bound) {
        Verdict plain = judge(value);
        boolean open = bound == Bound.ABOVE || bound == Bound.BELOW;
        if (!open || plain.outcome() == Outcome.UNSURE || value.kind().isState() || alike(value.value(), bound)) {
            return plain;
        }
        return new Verdict(Outcome.UNSURE, "it is only known to be " + (bound == Bound.ABOVE ? "above " : "below ")
                + value.text());
    }

    /**
     * Reads an expectation: {@code VALUE\u00b1TOL} (also {@code +-} or {@code +/-}; TOL a value or a percentage),
     * {@code LO..HI}, the value of a board that works ({@code good 4.1V}), the name of a logic family ({@code 74LS}, {@code 74HC@4.5V}), or a bare state ({@code H},
     * {@code open}).
     *
     * @throws IllegalArgumentException with one sentence for a person where the text is none of these
     */
    static Expectation parse(String text) {
        return ExpectationParser.parse(text);
    }
}
