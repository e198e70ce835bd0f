// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.trace;

import java.util.List;

import org.probeleaf.schematic.place.Place;

/**
 * A way for a signal from one place to another.
 *
 * @param places nets and the pins at which it enters and leaves the parts between them, in order
 */
public record SignalPath(List<Place> places) {

    public SignalPath {
        places = List.copyOf(places);
    }
}
