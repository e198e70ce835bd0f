// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

/** How the process ends. */
public enum ExitCode {
    DONE(0),
    OTHER(1),
    /** The command line is wrong. */
    USAGE(2),
    /** An input cannot be read. */
    INPUT(3),
    /** The job file is held by another writer or damaged. */
    JOB(4);

    private final int value;

    ExitCode(int value) {
        this.value = value;
    }

    public int value() {
        return value;
    }
}
