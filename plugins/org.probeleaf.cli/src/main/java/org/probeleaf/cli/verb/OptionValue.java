// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import org.probeleaf.cli.io.Problem;
import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.Quantity;
import org.probeleaf.schematic.quantity.QuantityKind;

/** Values of options, written as on the bench. */
final class OptionValue {

    private OptionValue() {
    }

    /**
     * Reads a value.
     *
     * @param option its name, for what goes wrong
     * @param kind   what it must be
     * @return in the unit of its kind
     * @throws Problem of usage where it is no such value
     */
    static double of(String option, String text, QuantityKind kind) {
        try {
            Quantity quantity = BenchValue.parse(text, kind).quantity();
            if (quantity.kind() != kind) {
                throw new IllegalArgumentException("\"" + text + "\" is no " + kind.title());
            }
            return quantity.value();
        } catch (IllegalArgumentException e) {
            throw Problem.usage(option + ": " + e.getMessage());
        }
    }
}
