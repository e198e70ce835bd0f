// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

/** What a net carries, as far as it decides whether a signal is followed over it. */
public enum NetKind {
    SIGNAL,
    /** A supply other than ground. */
    SUPPLY,
    /** Ground, or whatever else the board calls its zero. */
    GROUND;

    /** Whether everything meets there, so that nothing is followed across it. */
    public boolean isSupply() {
        return this != SIGNAL;
    }
}
