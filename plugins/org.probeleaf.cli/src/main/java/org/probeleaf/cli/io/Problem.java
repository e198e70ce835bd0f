// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

/** Ends a verb with one line for the person and an exit code. */
public final class Problem extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final ExitCode code;

    public Problem(ExitCode code, String line, Throwable cause) {
        super(line, cause);
        this.code = code;
    }

    /** The command line is wrong. */
    public static Problem usage(String line) {
        return new Problem(ExitCode.USAGE, line, null);
    }

    /** An input cannot be read. */
    public static Problem input(String line, Throwable cause) {
        return new Problem(ExitCode.INPUT, line, cause);
    }

    /** Anything else. */
    public static Problem other(String line, Throwable cause) {
        return new Problem(ExitCode.OTHER, line, cause);
    }

    public ExitCode code() {
        return code;
    }
}
