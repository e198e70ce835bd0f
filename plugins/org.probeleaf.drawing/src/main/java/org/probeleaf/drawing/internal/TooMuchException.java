// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

/** A page holds more than any sheet does; the message says what. */
final class TooMuchException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    TooMuchException(String what) {
        super(what);
    }
}
