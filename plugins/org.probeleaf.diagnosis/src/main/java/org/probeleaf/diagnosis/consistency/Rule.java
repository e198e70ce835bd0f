// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

/** What a sound component says of some variables: it draws conclusions from the values that are known. */
public interface Rule {

    /** The variables it speaks of. */
    int[] variables();

    /** Draws every conclusion that the known values allow. */
    void apply(Values values);

    /**
     * A variable of two values that must be decided before the rule is surely kept, or -1 where none must. A rule that
     * needs none is kept by some choice of what is not known yet, whatever other rules that need none make of it.
     */
    default int undecided(Values values) {
        return -1;
    }
}
