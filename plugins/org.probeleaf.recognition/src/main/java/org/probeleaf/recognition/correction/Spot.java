// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/**
 * What a correction is pinned to. The spot on the sheet counts first; the name counts where several things lie at the
 * spot, or nothing does.
 *
 * @param place how the person named it
 * @param page  1-based page
 * @param at    the spot, in points from the top left of the page as displayed
 */
public record Spot(Place place, int page, Point at) {

    /** A spot that is named by its page and point. */
    public static Spot of(int page, Point at) {
        return new Spot(new Place.OnPage(page, at.x(), at.y()), page, at);
    }

    /** How it is written. */
    public String text() {
        return place.text();
    }
}
