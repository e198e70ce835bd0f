// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import org.probeleaf.schematic.quantity.Bound;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/**
 * A range, both ends in.
 *
 * @param kind the kind of value
 * @param low  lower end, SI
 * @param high upper end, SI
 * @param text as parsed
 */
public record Range(QuantityKind kind, double low, double high, String text) implements Expectation {

    @Override
    public boolean alike(double limit, Bound beyond) {
        return beyond == Bound.ABOVE ? limit > high : limit < low;
    }

    @Override
    public Verdict judge(Quantity value) {
        return Judge.comparable(kind, value) ? Judge.within(low, high, kind, value, text)
                : Judge.otherKind(kind, value);
    }
}
