// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

/** Logic levels as small numbers, for speed. */
public final class Level {

    public static final int LOW = 0;
    public static final int HIGH = 1;
    /** Low or high, nobody can say. */
    public static final int UNKNOWN = 2;
    /** Of an output: it has let go of its net. */
    public static final int OFF = 3;

    private Level() {
    }

    /** Whether it is low or high for certain. */
    public static boolean known(int level) {
        return level < UNKNOWN;
    }

    /** The opposite of low and high; of the others, themselves. */
    public static int not(int level) {
        return known(level) ? 1 - level : level;
    }
}
