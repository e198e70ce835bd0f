// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/**
 * A nominal value with a tolerance to both sides.
 *
 * @param nominal  the value it should be
 * @param margin   how far it may be off, in the nominal's unit, at least 0
 * @param text     as parsed
 */
public record Tolerance(Quantity nominal, double margin, String text) implements Expectation {

    @Override
    public QuantityKind kind() {
        return nominal.kind();
    }

    @Override
    public Verdict judge(Quantity value) {
        throw new UnsupportedOperationException();
    }
}
