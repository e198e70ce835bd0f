// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.history;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Instant;

import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.quantity.Quantity;

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

        private static final int DIGITS = 6;

        @Override
        public Instant when() {
            return reading.when();
        }

        /** The change in words ({@code 1.1 V less}, {@code as before}); empty where there is none to tell. */
        public String changeText() {
            if (Double.isNaN(change)) {
                return "";
            }
            double size = Math.abs(change);
            boolean nothing = size <= 1e-9 * Math.abs(reading.value().value());
            return nothing ? "as before" : Quantity.of(reading.value().kind(), rounded(size)).text() + (change > 0 ? " more" : " less");
        }

        /** To the digits that a difference of two decimal fractions has. */
        private static double rounded(double value) {
            return new BigDecimal(value).round(new MathContext(DIGITS)).doubleValue();
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
