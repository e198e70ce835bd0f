// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

import java.util.ArrayList;
import java.util.List;

/** The straight, nearly upright lines of a picture, by the Hough transform over slope and place. */
final class LineFinder {

    /** Tangent of the greatest slope against the upright. */
    private static final double STEEPEST = 0.46;
    private static final int SLOPES = 185;
    private static final int MOST = 48;
    private static final int APART = 5;
    private static final double FAINT = 0.07;

    private LineFinder() {
    }

    /**
     * A line.
     *
     * @param x        where it passes the middle row, in pixels
     * @param slope    pixels to the right for each pixel down
     * @param strength how many pixels of ridge lie on it
     */
    record Line(double x, double slope, double strength) {

        double at(double y, double middle) {
            return x + slope * (y - middle);
        }
    }

    /** The lines, the strongest first. */
    static List<Line> find(Ridges ridges) {
        int w = ridges.width();
        int h = ridges.height();
        int reach = (int) Math.ceil(STEEPEST * h / 2) + 2;
        int cells = w + 2 * reach;
        float[][] votes = new float[SLOPES][cells];
        float[] slopes = new float[SLOPES];
        for (int s = 0; s < SLOPES; s++) {
            slopes[s] = (float) (STEEPEST * (2.0 * s / (SLOPES - 1) - 1));
        }
        float middle = (h - 1) / 2f;
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                float c = ridges.share(x, y);
                if (c > 0) {
                    for (int s = 0; s < SLOPES; s++) {
                        votes[s][(int) (x - slopes[s] * (y - middle) + reach + 0.5f)] += c;
                    }
                }
            }
        }
        return peaks(votes, slopes, reach, h);
    }

    private static List<Line> peaks(float[][] votes, float[] slopes, int reach, int h) {
        int cells = votes[0].length;
        float[] best = new float[cells];
        int[] slope = new int[cells];
        for (int s = 0; s < SLOPES; s++) {
            for (int i = 1; i + 1 < cells; i++) {
                float v = votes[s][i] + 0.6f * (votes[s][i - 1] + votes[s][i + 1]);
                if (v > best[i]) {
                    best[i] = v;
                    slope[i] = s;
                }
            }
        }
        List<Line> lines = new ArrayList<>();
        for (int n = 0; n < MOST; n++) {
            int top = 0;
            for (int i = 1; i < cells; i++) {
                top = best[i] > best[top] ? i : top;
            }
            if (best[top] < FAINT * h) {
                break;
            }
            lines.add(new Line(top - reach, slopes[slope[top]], best[top]));
            for (int i = Math.max(0, top - APART); i <= Math.min(cells - 1, top + APART); i++) {
                best[i] = 0;
            }
        }
        return lines;
    }
}
