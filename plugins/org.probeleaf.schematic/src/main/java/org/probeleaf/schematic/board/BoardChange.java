// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.board;

import java.util.List;
import java.util.Objects;

import org.probeleaf.schematic.place.Place;

/**
 * One thing done to the board, or found to be otherwise on it than on the drawing. Whether it is to stay is for those
 * who keep it.
 */
public sealed interface BoardChange {

    /** A pin is out of its socket or off its pad: it touches its net no longer. */
    record Lift(Place.OfPin pin) implements BoardChange {
        public Lift {
            Objects.requireNonNull(pin);
        }
    }

    /**
     * A part is out.
     *
     * @param ref its designator
     */
    record Remove(String ref) implements BoardChange {
        public Remove {
            Objects.requireNonNull(ref);
        }
    }

    /**
     * A part is in that the drawing does not have, or that was out.
     *
     * @param ref   its designator
     * @param value what it is ({@code "4k7"}), or null for what the drawing says
     * @param at    what its pins 1, 2, … touch; empty for a part of the drawing that goes where it is drawn
     */
    record Fit(String ref, String value, List<Place> at) implements BoardChange {
        public Fit {
            Objects.requireNonNull(ref);
            at = List.copyOf(at);
        }
    }

    /**
     * Another specimen is in the place of a part.
     *
     * @param ref   its designator
     * @param value what the new one is, or null for the same type
     */
    record Replace(String ref, String value) implements BoardChange {
        public Replace {
            Objects.requireNonNull(ref);
        }
    }

    /** A wire joins two places. */
    record Link(Place from, Place to) implements BoardChange {
        public Link {
            Objects.requireNonNull(from);
            Objects.requireNonNull(to);
        }
    }

    /** A track is cut: at a spot of a drawn wire, or close to a pin, which then touches its net no longer. */
    record Cut(Place at) implements BoardChange {
        public Cut {
            Objects.requireNonNull(at);
        }
    }

    /**
     * The part on the board has another value than the drawing says.
     *
     * @param ref   its designator
     * @param value what it is
     */
    record Value(String ref, String value) implements BoardChange {
        public Value {
            Objects.requireNonNull(ref);
            Objects.requireNonNull(value);
        }
    }
}
