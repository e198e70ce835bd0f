// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

/** Hears how far a recognition has come and says whether it should go on. Called from the recognising thread. */
public interface Progress {

    /** Hears nothing and never cancels. */
    Progress NONE = new Progress() {
    };

    /**
     * A page is done.
     *
     * @param done  pages done so far
     * @param total pages in all
     */
    default void pagesDone(int done, int total) {
        // nothing to tell
    }

    /** Whether the person has asked to stop. */
    default boolean cancelled() {
        return false;
    }
}
