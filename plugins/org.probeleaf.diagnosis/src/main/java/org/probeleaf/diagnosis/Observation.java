// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import java.util.Objects;

import org.probeleaf.schematic.place.Place;

/**
 * What was seen at a place of the board.
 *
 * @param at   a pin, a net or a spot of a drawn net; never null
 * @param seen what was there; never null
 */
public record Observation(Place at, Seen seen) {

    public Observation {
        Objects.requireNonNull(at);
        Objects.requireNonNull(seen);
    }

    /**
     * Reads {@code AT=good|bad|0|1}.
     *
     * @throws IllegalArgumentException with one sentence for a person where it is not that
     */
    public static Observation parse(String text) {
        int is = text.lastIndexOf('=');
        if (is < 1) {
            throw new IllegalArgumentException("\"" + text
                    + "\" says not what was seen: write a place and good, bad, 0 or 1, as in IC4.21=bad");
        }
        return new Observation(Place.parse(text.substring(0, is)), Seen.parse(text.substring(is + 1)));
    }
}
