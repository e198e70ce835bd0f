// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import org.probeleaf.schematic.geometry.Box;

/** Hears what happens to an open job. Always called on the display thread. */
public interface SessionListener {

    /** The pages are there (again). */
    default void sheetsReady() {
        // not of interest
    }

    /** The facts have changed: marks, details, netlist. */
    default void factsChanged() {
        // not of interest
    }

    /** Another place or net is selected, or none. */
    default void selectionChanged() {
        // not of interest
    }

    /** The selected signal goes another way as far as it is followed, or one stands elsewhere on it. */
    default void routeChanged() {
        // not of interest
    }

    /** Other parts are suspect, or another probe tells most. */
    default void suspectsChanged() {
        // not of interest
    }

    /** A capture has been read. */
    default void capturesChanged() {
        // not of interest
    }

    /** The pointer is over another net, or over none. */
    default void hoverChanged() {
        // not of interest
    }

    /** Recognition has come on, something went wrong or was put right. */
    default void statusChanged() {
        // not of interest
    }

    /** Another page is in the middle of the view. */
    default void pageChanged() {
        // not of interest
    }

    /**
     * A page should be shown whole.
     *
     * @param page 1-based
     */
    default void showPage(int page) {
        // not of interest
    }

    /**
     * A piece of a page should be brought into sight.
     *
     * @param page 1-based
     * @param box  the piece, in points
     */
    default void reveal(int page, Box box) {
        // not of interest
    }
}
