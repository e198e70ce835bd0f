// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.util.Optional;

import org.probeleaf.job.JobState;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.place.Place;

/** Finds readings of a job. */
final class Readings {

    private Readings() {
    }

    /** The last reading pinned to just this place. */
    static Optional<ReadingMark> last(JobState state, Place place) {
        return state.readings().stream().filter(r -> r.place().equals(place)).reduce((a, b) -> b);
    }
}
