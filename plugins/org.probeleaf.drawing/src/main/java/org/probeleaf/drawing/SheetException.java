// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing;

import java.io.IOException;

/** A sheet file that cannot be used. Its message is one line for a person: what is wrong and what to do. */
public final class SheetException extends IOException {

    private static final long serialVersionUID = 1L;

    /** What stands in the way. */
    public enum Problem {
        NOT_FOUND, EMPTY, NOT_A_SHEET, DAMAGED, PASSWORD_NEEDED, PASSWORD_WRONG, NO_SUCH_PAGE, TOO_LARGE
    }

    private final Problem problem;

    /**
     * @param problem what stands in the way
     * @param message one line for a person
     * @param cause   what was thrown below, or null
     */
    public SheetException(Problem problem, String message, Throwable cause) {
        super(message, cause);
        this.problem = problem;
    }

    public Problem problem() {
        return problem;
    }
}
