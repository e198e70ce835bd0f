// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.board;

/** A change that the board does not allow; its message says why. */
final class RefusedException extends Exception {

    private static final long serialVersionUID = 1L;

    RefusedException(String message) {
        super(message, null, false, false);
    }
}
