// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cuts a line off at the edges of a frame, so that it never seems to run along one. */
final class Clip {

    private final PlotFrame frame;
    private final List<double[]> pieces = new ArrayList<>();
    private double[] piece = new double[64];
    private int n;

    private Clip(PlotFrame frame) {
        this.frame = frame;
    }

    /** The pieces of a line that are in a frame, in order; x and y of each point by turns. */
    static List<double[]> toFrame(double[] xy, PlotFrame frame) {
        Clip clip = new Clip(frame);
        for (int i = 2; i < xy.length; i += 2) {
            clip.stretch(xy[i - 2], xy[i - 1], xy[i], xy[i + 1]);
        }
        clip.end();
        return clip.pieces;
    }

    /** Of a straight stretch the part between the entries and the exits of the four edges. */
    private void stretch(double x0, double y0, double x1, double y1) {
        double[] part = {0, 1};
        boolean in = cut(part, x0, x1 - x0, frame.left(), frame.right()) && cut(part, y0, y1 - y0, frame.top(), frame.bottom());
        if (!in) {
            end();
            return;
        }
        if (part[0] > 0) {
            end();
        }
        if (n == 0) {
            put(x0 + part[0] * (x1 - x0), y0 + part[0] * (y1 - y0));
        }
        put(part[1] < 1 ? x0 + part[1] * (x1 - x0) : x1, part[1] < 1 ? y0 + part[1] * (y1 - y0) : y1);
        if (part[1] < 1) {
            end();
        }
    }

    /** Narrows a part, as shares of a stretch, to what lies between two edges; false where nothing does. */
    private static boolean cut(double[] part, double start, double along, double low, double high) {
        if (along == 0) {
            return start >= low && start <= high;
        }
        double a = (low - start) / along;
        double b = (high - start) / along;
        part[0] = Math.max(part[0], Math.min(a, b));
        part[1] = Math.min(part[1], Math.max(a, b));
        return part[0] <= part[1];
    }

    private void put(double x, double y) {
        if (n + 2 > piece.length) {
            piece = Arrays.copyOf(piece, 2 * piece.length);
        }
        piece[n++] = x;
        piece[n++] = y;
    }

    private void end() {
        if (n >= 4) {
            pieces.add(Arrays.copyOf(piece, n));
        }
        n = 0;
    }
}
