// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

/** Which board something was done to or seen on. */
public enum Board {
    /** The one on the bench. */
    THIS("this board"),
    /** One of the same kind that is known to work. */
    KNOWN_GOOD("the known-good board");

    private final String words;

    Board(String words) {
        this.words = words;
    }

    /** What it is called in a sentence. */
    public String words() {
        return words;
    }
}
