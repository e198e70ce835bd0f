// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

/** Writes values for people. */
public final class QuantityFormat {

    private QuantityFormat() {
    }

    /** As {@link Quantity#text()}. */
    public static String text(Quantity quantity) {
        throw new UnsupportedOperationException(quantity.toString());
    }
}
