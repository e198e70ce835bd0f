// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Holds the reading of a page's content to what a sheet can need, so that a damaged or hostile file (forms that draw
 * each other over and over) ends in a clear refusal, and lets it be given up.
 */
final class ExtractionLimits {

    /** The fullest sheets at hand, lettered in strokes, have some two hundred thousand. */
    private static final int MOST_OPERATORS = 2_000_000;
    /** Corners of lines and outlines, and letters. */
    private static final int MOST_POINTS = 600_000;
    private static final int MOST_FORMS = 20_000;
    private static final int ASK_EVERY = 512;

    private final BooleanSupplier stop;
    private int operators;
    private int points;
    private int forms;

    ExtractionLimits(BooleanSupplier stop) {
        this.stop = stop;
    }

    /** Counts one operator. */
    void operator() {
        if (++operators > MOST_OPERATORS) {
            throw new TooMuchException("more than " + MOST_OPERATORS + " drawing instructions");
        }
        if (operators % ASK_EVERY == 0 && stop.getAsBoolean()) {
            throw new CancellationException("the page was given up");
        }
    }

    /** Counts one form that is drawn. */
    void form() {
        if (++forms > MOST_FORMS) {
            throw new TooMuchException("more than " + MOST_FORMS + " drawings within the drawing");
        }
    }

    /** Counts points. */
    void points(int more) {
        points += more;
        if (points > MOST_POINTS) {
            throw new TooMuchException("more than " + MOST_POINTS + " corners of lines");
        }
    }
}
