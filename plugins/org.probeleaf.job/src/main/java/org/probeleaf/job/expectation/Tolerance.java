// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import org.probeleaf.schematic.quantity.Bound;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/**
 * A nominal value with a tolerance to both sides; for a state, the state itself.
 *
 * @param nominal the value it should be
 * @param margin  how far it may be off, in the nominal's unit, at least 0
 * @param text    as parsed
 */
public record Tolerance(Quantity nominal, double margin, String text) implements Expectation {

    @Override
    public QuantityKind kind() {
        return nominal.kind();
    }

    @Override
    public boolean alike(double limit, Bound beyond) {
        return beyond == Bound.ABOVE ? limit > nominal.value() + margin : limit < nominal.value() - margin;
    }

    @Override
    public Verdict judge(Quantity value) {
        if (kind() == QuantityKind.ACTIVITY && value.kind() == QuantityKind.LOGIC) {
            boolean still = nominal.value() == 0;
            return new Verdict(still ? Outcome.GOOD : Outcome.BAD, "steady " + value.text()
                    + (still ? ", no signal as expected" : ", where " + nominal.text() + " is expected"));
        }
        if (!Judge.comparable(kind(), value)) {
            return Judge.otherKind(kind(), value);
        }
        if (kind().isState()) {
            return value.value() == nominal.value()
                    ? new Verdict(Outcome.GOOD, value.text() + " as expected")
                    : new Verdict(Outcome.BAD, value.text() + ", where " + nominal.text() + " is expected");
        }
        return Judge.within(nominal.value() - margin, nominal.value() + margin, kind(), value, text);
    }
}
