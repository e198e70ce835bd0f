// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.paint;

import java.io.IOException;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

import org.probeleaf.handover.wave.Wave;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.waveform.judge.Verdict;

/** The sign of a reading, told apart by its shape: the colour only goes with it. */
public enum Sign {
    /** As expected: a tick in a circle. */
    GOOD(Tint.BLUISH_GREEN, "tick in a circle", "as expected"),
    /** Not as expected: a cross in a square. */
    BAD(Tint.VERMILLION, "cross in a square", "not as expected"),
    /** Cannot be told: a question mark in a diamond. */
    UNSURE(Tint.REDDISH_PURPLE, "question mark in a diamond", "cannot be told"),
    /** Nothing was expected: a ring. */
    NONE(Tint.BLUE, "ring", "reading, nothing expected");

    private static final Set<Verdict> MOVES = EnumSet.of(Verdict.CLOCKING, Verdict.TOGGLING);

    private final Tint tint;
    private final String shape;
    private final String words;

    Sign(Tint tint, String shape, String words) {
        this.tint = tint;
        this.shape = shape;
        this.words = words;
    }

    /** The sign of a verdict, which may be null. */
    public static Sign of(org.probeleaf.job.expectation.Verdict verdict) {
        return verdict == null ? NONE : valueOf(verdict.outcome().name());
    }

    /** The sign of a waveform; {@link #NONE} where it is neither at fault nor was held against anything. */
    public static Sign of(Wave wave) {
        Verdict found = wave.first().map(t -> t.judgement().verdict()).orElse(Verdict.NO_SIGNAL);
        return found.fault() ? BAD : wave.thresholds() != null && MOVES.contains(found) ? GOOD : NONE;
    }

    public Tint tint() {
        return tint;
    }

    /** Its shape in words. */
    public String shape() {
        return shape;
    }

    /** What it says, for the legend. */
    public String words() {
        return words;
    }

    /**
     * Paints it.
     *
     * @param c the middle
     * @param r half its height
     */
    public void paint(Canvas canvas, Point c, double r) throws IOException {
        double stroke = r * 0.26;
        switch (this) {
            case GOOD -> {
                canvas.disc(c, r, tint);
                canvas.line(List.of(c.plus(-r * 0.46, r * 0.04), c.plus(-r * 0.12, r * 0.4),
                        c.plus(r * 0.48, -r * 0.38)), Tint.WHITE, stroke);
            }
            case BAD -> {
                double a = r * 0.42;
                canvas.fill(Box.of(c).grow(r * 0.92), r * 0.16, tint, 1);
                canvas.line(List.of(c.plus(-a, -a), c.plus(a, a)), Tint.WHITE, stroke);
                canvas.line(List.of(c.plus(-a, a), c.plus(a, -a)), Tint.WHITE, stroke);
            }
            case UNSURE -> {
                double a = r * 1.16;
                canvas.shape(List.of(c.plus(0, -a), c.plus(a, 0), c.plus(0, a), c.plus(-a, 0)), tint);
                double size = r * 1.5;
                canvas.text(c.plus(-canvas.face().width("?", size) / 2, size * TypeFace.capHeight() / 2), "?",
                        Letters.strong(size).in(Tint.WHITE));
            }
            default -> {
                canvas.ring(c, r * 0.8, tint, r * 0.34);
                canvas.disc(c, r * 0.24, tint);
            }
        }
    }
}
