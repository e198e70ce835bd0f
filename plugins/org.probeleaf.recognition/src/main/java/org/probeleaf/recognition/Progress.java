// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

/** Hears how far a recognition has come and says whether it should go on. Called from the thread that asked for it. */
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

    /**
     * A page is read; told once for each, in their order.
     *
     * @param page 1-based number of the page
     * @param draw how long it took to take it apart, in seconds
     * @param read how long it took to read it, in seconds
     */
    default void pageRead(int page, double draw, double read) {
        // nothing to tell
    }

    /** Whether the person has asked to stop; asked some twenty times a second. */
    default boolean cancelled() {
        return false;
    }
}
