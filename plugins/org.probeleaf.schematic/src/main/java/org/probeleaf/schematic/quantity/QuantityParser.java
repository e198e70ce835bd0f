// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.quantity;

/** Reads values as people write them on the bench. */
public final class QuantityParser {

    private QuantityParser() {
    }

    /** As {@link BenchValue#parse(String)}. */
    public static BenchValue parse(String text) {
        throw new UnsupportedOperationException(text);
    }

    /** As {@link BenchValue#parse(String, QuantityKind)}. */
    public static BenchValue parse(String text, QuantityKind kind) {
        throw new UnsupportedOperationException(text + kind);
    }
}
