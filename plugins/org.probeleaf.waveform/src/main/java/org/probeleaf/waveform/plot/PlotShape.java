// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

/** A piece of a plot. Coordinates are in the plot's units from its top left corner, y downwards. */
public sealed interface PlotShape {

    /** What it is for. */
    Ink ink();

    /**
     * A line through points.
     *
     * @param xy x and y of each by turns, at least two points
     */
    record Line(double[] xy, Ink ink) implements PlotShape {
    }

    /**
     * Words on one line.
     *
     * @param x    where {@code lean} says
     * @param y    the middle of the letters
     * @param lean which end of the words is at {@code x}
     * @param bold whether they stand out
     */
    record Words(double x, double y, String text, Lean lean, boolean bold, Ink ink) implements PlotShape {
    }

    /** Which end of words is held fast. */
    enum Lean { START, MIDDLE, END }
}
