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
     * A filled area without an edge.
     *
     * @param xy x and y of its corners by turns, at least three; the last is joined to the first
     */
    record Area(double[] xy, Ink ink) implements PlotShape {

        static Area box(double x0, double y0, double x1, double y1, Ink ink) {
            return new Area(new double[] {x0, y0, x1, y0, x1, y1, x0, y1}, ink);
        }
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
