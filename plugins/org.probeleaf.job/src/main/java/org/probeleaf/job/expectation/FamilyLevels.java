// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/**
 * A steady logic level of a family.
 *
 * @param family the family whose inputs read the level
 */
public record FamilyLevels(LogicFamily family) implements Expectation {

    @Override
    public QuantityKind kind() {
        return QuantityKind.VOLTAGE_DC;
    }

    @Override
    public String text() {
        return family.name();
    }

    @Override
    public Verdict judge(Quantity value) {
        throw new UnsupportedOperationException();
    }
}
