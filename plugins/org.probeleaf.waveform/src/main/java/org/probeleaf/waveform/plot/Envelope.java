// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * A trace of which many samples share a column: each column is filled from the least of them to the greatest, so that no peak
 * is lost at any zoom, and to the column before where they do not touch. Filling takes a fraction of the time that stroking
 * takes, which draws most places many times. Columns are half a unit wide, and each is filled over its neighbours, so that
 * edges are about as strong as lines.
 */
final class Envelope {

    private static final double COLUMN = 0.5;

    private final PlotFrame frame;
    private final Ink ink;
    private final int columns;
    private final double[] tops;
    private final double[] bottoms;

    Envelope(PlotFrame frame, Ink ink) {
        this.frame = frame;
        this.ink = ink == Ink.REFERENCE ? Ink.CROWDED : ink;
        columns = (int) Math.max(1, Math.floor(frame.width() / COLUMN));
        tops = new double[columns];
        bottoms = new double[columns];
        java.util.Arrays.fill(tops, Double.NaN);
    }

    int columns() {
        return columns;
    }

    /** The left edge of a column; the right one of the column before. */
    double x(int column) {
        return frame.left() + column * frame.width() / columns;
    }

    /** The values of a column, in order of the columns; NaN where there is none. */
    void add(int column, double low, double high) {
        if (Double.isNaN(low)) {
            return;
        }
        double top = frame.y(high);
        double bottom = frame.y(low);
        if (column > 0 && !Double.isNaN(tops[column - 1])) {
            // The one before may have been stretched; that only overlaps more.
            top = Math.min(top, bottoms[column - 1]);
            bottom = Math.max(bottom, tops[column - 1]);
        }
        tops[column] = top;
        bottoms[column] = bottom;
    }

    private double inside(double y) {
        return Math.max(frame.top(), Math.min(frame.bottom(), y));
    }

    /** Columns above and below the frame are left out. */
    List<PlotShape> shapes() {
        List<PlotShape> shapes = new ArrayList<>();
        int from = -1;
        for (int i = 0; i <= columns; i++) {
            boolean there = i < columns && tops[i] <= frame.bottom() && bottoms[i] >= frame.top();
            if (there && from < 0) {
                from = i;
            } else if (!there && from >= 0) {
                shapes.add(area(from, i));
                from = -1;
            }
        }
        return shapes;
    }

    /** Round the columns {@code from} to {@code to}, the latter left out; steps where columns differ only. */
    private PlotShape area(int from, int to) {
        double half = ink.width() / 2;
        double[] upper = new double[4 * (to - from)];
        double[] lower = new double[4 * (to - from)];
        int u = 0;
        int l = 0;
        for (int i = from; i < to; i++) {
            double top = tops[i];
            double bottom = bottoms[i];
            for (int k = Math.max(from, i - 1); k <= Math.min(to - 1, i + 1); k++) {
                top = Math.min(top, tops[k]);
                bottom = Math.max(bottom, bottoms[k]);
            }
            u = step(upper, u, x(i), x(i + 1), inside(top) - half);
            l = step(lower, l, x(i), x(i + 1), inside(bottom) + half);
        }
        double[] xy = new double[u + l];
        System.arraycopy(upper, 0, xy, 0, u);
        for (int i = 0; i < l; i += 2) {
            xy[u + i] = lower[l - 2 - i];
            xy[u + i + 1] = lower[l - 1 - i];
        }
        return new PlotShape.Area(xy, ink);
    }

    private static int step(double[] xy, int n, double x0, double x1, double y) {
        if (n >= 4 && xy[n - 1] == y) {
            xy[n - 2] = x1;
            return n;
        }
        xy[n] = x0;
        xy[n + 1] = y;
        xy[n + 2] = x1;
        xy[n + 3] = y;
        return n + 4;
    }
}
