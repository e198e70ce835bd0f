// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import org.probeleaf.drawing.Raster;
import org.probeleaf.schematic.geometry.Box;

/**
 * How much ink lies where on a page: a summed-area table over a small rendering of it, so that the ink under any
 * rectangle is four look-ups.
 */
public final class InkMap {

    /** How far round ink is counted with it, in points. */
    private static final double REACH = 1.6;

    private final int width;
    private final int height;
    private final double scale;
    private final int[] sums;

    /**
     * @param raster the whole page on white
     * @param scale  pixels per point in the raster
     */
    public InkMap(Raster raster, double scale) {
        this.width = raster.width();
        this.height = raster.height();
        this.scale = scale;
        boolean[] ink = new boolean[width * height];
        for (int i = 0; i < ink.length; i++) {
            ink[i] = (raster.argb()[i] >> 8 & 0xFF) < 225;
        }
        this.sums = summed(grown(ink, (int) Math.ceil(REACH * scale)));
    }

    /** Ink with its surroundings, so that a thin line counts as an obstacle and not as a grey. */
    private boolean[] grown(boolean[] ink, int reach) {
        int[] sum = summed(ink);
        boolean[] result = new boolean[ink.length];
        for (int y = 0; y < height; y++) {
            int y0 = Math.max(0, y - reach);
            int y1 = Math.min(height, y + reach + 1);
            for (int x = 0; x < width; x++) {
                int x0 = Math.max(0, x - reach);
                int x1 = Math.min(width, x + reach + 1);
                int w = width + 1;
                result[y * width + x] = sum[y1 * w + x1] - sum[y0 * w + x1] - sum[y1 * w + x0] + sum[y0 * w + x0] > 0;
            }
        }
        return result;
    }

    private int[] summed(boolean[] ink) {
        int[] sum = new int[(width + 1) * (height + 1)];
        for (int y = 0; y < height; y++) {
            int row = 0;
            for (int x = 0; x < width; x++) {
                row += ink[y * width + x] ? 1 : 0;
                sum[(y + 1) * (width + 1) + x + 1] = sum[y * (width + 1) + x + 1] + row;
            }
        }
        return sum;
    }

    /** The share of a piece of the page that is inked or close to ink, 0 to 1; what reaches over the page's edge counts as paper. */
    public double inked(Box onPage) {
        int x0 = clamp(onPage.x0() * scale, width);
        int y0 = clamp(onPage.y0() * scale, height);
        int x1 = clamp(Math.ceil(onPage.x1() * scale), width);
        int y1 = clamp(Math.ceil(onPage.y1() * scale), height);
        double area = Math.max(1, onPage.width() * scale * onPage.height() * scale);
        return (at(x1, y1) - at(x0, y1) - at(x1, y0) + at(x0, y0)) / area;
    }

    private int at(int x, int y) {
        return sums[y * (width + 1) + x];
    }

    private static int clamp(double v, int most) {
        return (int) Math.max(0, Math.min(most, v));
    }
}
