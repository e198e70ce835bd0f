// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.time.Instant;

/**
 * A change as the log keeps it.
 *
 * @param number rising, 1-based, unique in its job
 * @param when   when the person made it
 * @param words  what it does ({@code "label /RD at IC4.21"})
 * @param status whether it stands
 */
public record LogEntry(long number, Instant when, String words, Status status) {

    /** Whether a change stands. */
    public enum Status {
        /** It stands. */
        DONE,
        /** It was undone and can be redone. */
        UNDONE,
        /** It was undone and another change was made then; it stays in the log only. */
        ABANDONED
    }
}
