// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/** Comparing a value with limits, and the words for it. */
final class Judge {

    /** Room for the rounding of decimal fractions, relative to the limit. */
    private static final double ROUNDING = 1e-9;

    private Judge() {
    }

    /** Whether a value can be compared with what is expected: the same kind, or one of them a plain number. */
    static boolean comparable(QuantityKind expected, Quantity value) {
        return expected == value.kind() || expected == QuantityKind.NUMBER || value.kind() == QuantityKind.NUMBER;
    }

    static Verdict otherKind(QuantityKind expected, Quantity value) {
        return new Verdict(Outcome.UNSURE, "a " + expected.title() + " is expected, " + value.text() + " is a "
                + value.kind().title());
    }

    /** Judges a value against two limits, both in. */
    static Verdict within(double low, double high, QuantityKind kind, Quantity value, String expectation) {
        QuantityKind shown = kind == QuantityKind.NUMBER ? value.kind() : kind;
        String is = Quantity.of(shown, value.value()).text();
        if (value.value() < low - Math.abs(low) * ROUNDING) {
            return new Verdict(Outcome.BAD, is + " is below " + Quantity.of(shown, low).text());
        }
        if (value.value() > high + Math.abs(high) * ROUNDING) {
            return new Verdict(Outcome.BAD, is + " is above " + Quantity.of(shown, high).text());
        }
        return new Verdict(Outcome.GOOD, is + " is within " + expectation);
    }
}
