// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

/**
 * What a person typed for a reading, understood.
 *
 * @param quantity the value
 * @param remark   the rest of the text ({@code flat} in {@code 2.2V flat}), empty where there is none, never null
 */
public record BenchValue(Quantity quantity, String remark) {

    /**
     * Reads a value as people write it on the bench. A number whose unit the text does not tell stays a
     * {@link QuantityKind#NUMBER}: {@code 1.2M} may be ohms or hertz. A sign before it ({@code >20M}, {@code ~2.5V}) is passed
     * over; {@link Bound} says what it means.
     *
     * @throws IllegalArgumentException with one sentence for a person where the text does not begin with a value
     */
    public static BenchValue parse(String text) {
        return QuantityParser.parse(text, QuantityKind.NUMBER);
    }

    /**
     * Reads a value of which the kind is known from elsewhere, so that a bare number is one of that kind. Where the
     * text itself says another kind ({@code 3.3kHz} for a voltage), the text counts.
     *
     * @throws IllegalArgumentException with one sentence for a person where the text does not begin with a value, or
     *                                  a bare number cannot be of that kind
     */
    public static BenchValue parse(String text, QuantityKind kind) {
        return QuantityParser.parse(text, kind);
    }
}
