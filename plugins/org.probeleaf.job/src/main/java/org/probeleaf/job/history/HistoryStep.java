// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.history;

import java.time.Instant;

import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.ReadingMark;

/** Something that happened at a place, or to the board meanwhile. */
public sealed interface HistoryStep {

    /** When. */
    Instant when();

    /**
     * A reading.
     *
     * @param reading the mark
     * @param change  how much more it is than the reading before of the same kind, in the unit of that kind; NaN for the
     *                first one and for states
     * @param board   what differed from the board as it was at the reading before ({@code "since IC7.3 lifted"}); empty
     *                where nothing did
     */
    record Read(ReadingMark reading, double change, String board) implements HistoryStep {

        @Override
        public Instant when() {
            return reading.when();
        }
    }

    /**
     * A waveform.
     *
     * @param capture the mark
     */
    record Captured(CaptureMark capture) implements HistoryStep {

        @Override
        public Instant when() {
            return capture.when();
        }
    }

    /**
     * Something done to the board on the bench.
     *
     * @param when  when
     * @param words what ({@code "IC7.3 lifted"}, {@code "IC7.3 lifted: put back"})
     */
    record Done(Instant when, String words) implements HistoryStep {
    }
}
