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
        this.sums = new int[(width + 1) * (height + 1)];
        for (int y = 0; y < height; y++) {
            int row = 0;
            for (int x = 0; x < width; x++) {
                int green = raster.argb()[y * width + x] >> 8 & 0xFF;
                row += green < 225 ? 1 : 0;
                sums[(y + 1) * (width + 1) + x + 1] = sums[y * (width + 1) + x + 1] + row;
            }
        }
    }

    /** The share of a piece of the page that is inked, 0 to 1; what reaches over the page's edge counts as paper. */
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
