// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.expectation;

/** Reads expectations. */
final class ExpectationParser {

    private ExpectationParser() {
    }

    static Expectation parse(String text) {
        throw new UnsupportedOperationException(text);
    }
}
