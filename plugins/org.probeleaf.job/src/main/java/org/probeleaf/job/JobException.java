// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.io.IOException;

/** A job file that cannot be used as asked. Its message is one line for a person: what is wrong and what to do. */
public final class JobException extends IOException {

    private static final long serialVersionUID = 1L;

    /** What stands in the way. */
    public enum Problem {
        /** There is no such file. */
        NOT_FOUND,
        /** The file is no job. */
        NOT_A_JOB,
        /** Another writer has it. */
        HELD,
        /** Its content is damaged. */
        DAMAGED,
        /** It was written by a newer version of the program. */
        NEWER_VERSION,
        /** A file of that name is there already. */
        EXISTS,
        /** A sheet cannot be used; the cause is a {@code SheetException}. */
        SHEET,
        /** The disk did not take it: full, gone, or no right to write. Nothing was changed. */
        NOT_WRITTEN
    }

    private final Problem problem;

    /**
     * @param problem what stands in the way
     * @param message one line for a person
     * @param cause   what was thrown below, or null
     */
    public JobException(Problem problem, String message, Throwable cause) {
        super(message, cause);
        this.problem = problem;
    }

    public Problem problem() {
        return problem;
    }
}
