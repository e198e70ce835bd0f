// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

/**
 * Something that stands in the way, for the strip above the sheet.
 *
 * @param kind what the person can do about it
 * @param text a sentence: what is wrong and what to do
 */
public record Trouble(Kind kind, String text) {

    /** What the person can do. */
    public enum Kind {
        /** Know it and go on. */
        NOTICE,
        /** Try the same again. */
        RETRY,
        /** Have the sheets read. */
        READ,
        /** Put back what was done for now, or hand over all the same. */
        OPEN_CHANGES,
        /** Type the sheet's password. */
        PASSWORD
    }
}
