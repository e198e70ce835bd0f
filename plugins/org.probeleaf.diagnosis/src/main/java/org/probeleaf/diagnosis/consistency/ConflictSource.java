// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import java.util.BitSet;
import java.util.Optional;

/** Finds what speaks against a suspicion. */
@FunctionalInterface
public interface ConflictSource {

    /**
     * A set of components of which not all can be sound, none of them suspected.
     *
     * @param suspected the components that may do anything
     * @return such a set, not necessarily the least; empty where all that was seen can come from the suspected
     *         components alone
     */
    Optional<BitSet> conflict(BitSet suspected);

    /**
     * A conflict without what it does not need, where that can be had; costs more than finding it.
     *
     * @param conflict as {@link #conflict} gave it for the same suspected components
     */
    default BitSet lessened(BitSet conflict, BitSet suspected) {
        return conflict;
    }
}
