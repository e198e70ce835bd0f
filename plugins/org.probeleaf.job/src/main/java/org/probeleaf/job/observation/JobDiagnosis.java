// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.observation;

import java.util.List;
import java.util.Optional;

import org.probeleaf.diagnosis.Diagnosis;
import org.probeleaf.diagnosis.Finding;
import org.probeleaf.diagnosis.Given;
import org.probeleaf.diagnosis.Observation;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.job.JobState;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.UnknownPlaceException;

/** The diagnosis of a job: what its readings say, each on the board as it was when it was taken. */
public final class JobDiagnosis {

    private JobDiagnosis() {
    }

    /**
     * What follows from the readings of a job.
     *
     * @param priors how readily parts fail
     * @return empty before recognition
     */
    public static Optional<Finding> finding(JobState state, PartBook book, Priors priors) {
        return of(state, book, priors).map(Diagnosis::finding);
    }

    /** The diagnosis itself, to which more can be said; as {@link #finding}. */
    public static Optional<Diagnosis> of(JobState state, PartBook book, Priors priors) {
        return of(state, book, priors, List.of());
    }

    /**
     * The diagnosis of a job some of whose nets are held at a level.
     *
     * @throws UnknownPlaceException where the board has no such net
     */
    public static Optional<Diagnosis> of(JobState state, PartBook book, Priors priors, List<Given> given) {
        Diagnosis all = null;
        for (Episode episode : Episode.of(state, book)) {
            Diagnosis one = Diagnosis.of(episode.board().netlist(), book, priors).given(given);
            for (Observation seen : episode.seen()) {
                one = with(one, seen);
            }
            all = all == null ? one : one.after(all);
        }
        return Optional.ofNullable(all);
    }

    /** A reading at a place that is on no net of that board, such as a spot of bare paper, says nothing. */
    private static Diagnosis with(Diagnosis diagnosis, Observation seen) {
        try {
            return diagnosis.with(List.of(seen));
        } catch (UnknownPlaceException e) {
            return diagnosis;
        }
    }
}
