// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace.follow;

/** Whether and when a pin drives its net. */
public enum OutputState {
    /** It is no output, or it is not known to be one. */
    NONE,
    /** It drives always. */
    ALWAYS,
    /** It drives when it is enabled, or works both ways. */
    BY_TURNS,
    /** It pulls down or lets go: an open collector or drain. */
    PULLS_DOWN,
    /** Its enable is tied so that it never drives. */
    NEVER
}
