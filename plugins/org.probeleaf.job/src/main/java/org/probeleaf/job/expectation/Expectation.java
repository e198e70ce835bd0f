// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import org.probeleaf.schematic.quantity.Bound;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;
import org.probeleaf.schematic.quantity.Span;

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
     * Judges a value that moves between two ends: both must be as they should. Both ends may be good in their own way, as the
     * low and the high of a signal are.
     */
    default Verdict judge(Span span) {
        Verdict low = judge(span.low());
        Verdict high = judge(span.high());
        if (low.outcome() == Outcome.GOOD && high.outcome() == Outcome.GOOD) {
            return new Verdict(Outcome.GOOD, low.reason().equals(high.reason()) ? low.reason()
                    : low.reason() + ", " + high.reason());
        }
        boolean lowWorse = low.outcome() == Outcome.BAD || high.outcome() == Outcome.GOOD;
        Verdict worse = lowWorse ? low : high;
        boolean both = low.outcome() == high.outcome() && !low.reason().equals(high.reason());
        return new Verdict(worse.outcome(), both ? low.reason() + ", " + high.reason() : worse.reason());
    }

    /**
     * Reads an expectation: {@code VALUE\u00b1TOL} (also {@code +-} or {@code +/-}; TOL a value or a percentage),
     * {@code LO..HI}, the value of a board that works ({@code good 4.1V}), the name of a logic family ({@code 74LS},
     * {@code 74HC@4.5V}), or a bare state ({@code H}, {@code open}, {@code pulsing}).
     *
     * @throws IllegalArgumentException with one sentence for a person where the text is none of these
     */
    static Expectation parse(String text) {
        return ExpectationParser.parse(text);
    }
}
