// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace;

/** A place that the drawing does not have. Its message is one sentence for a person. */
public final class UnknownPlaceException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public UnknownPlaceException(String message) {
        super(message);
    }
}
