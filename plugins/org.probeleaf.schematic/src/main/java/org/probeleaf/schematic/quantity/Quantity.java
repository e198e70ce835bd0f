// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

/**
 * A value with its kind.
 *
 * @param kind  what it says
 * @param value in the kind's unit without prefix; for states 1 (high, pulsing, joined, good) or 0 (low, no signal, open, bad); always finite, and
 *              never minus zero
 */
public record Quantity(QuantityKind kind, double value) {

    public Quantity {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a value must be a finite number");
        }
        if (kind.isState() && value != 0 && value != 1) {
            throw new IllegalArgumentException("a " + kind.title() + " is one of two states");
        }
        value = value + 0.0;
    }

    public static Quantity of(QuantityKind kind, double value) {
        return new Quantity(kind, value);
    }

    /** As shown: {@code 11.8 V}, {@code 3.3 k\u03a9}, {@code high}, {@code open}; {@link BenchValue} reads it back. */
    public String text() {
        return QuantityFormat.text(this);
    }
}
