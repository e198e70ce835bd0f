// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.layout;

import org.probeleaf.drawing.Raster;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Where a page has ink, from a small rendering of it: works alike for drawn and for scanned pages. Paper is the most
 * frequent lightness; what is clearly darker is ink. A table of running sums answers for any box at once.
 */
public final class InkMap {

    /** How much darker than the paper ink is, of 255. */
    private static final int DARKER = 20;

    private final int width;
    private final int height;
    private final double scale;
    private final int[] sums;

    private InkMap(int width, int height, double scale, int[] sums) {
        this.width = width;
        this.height = height;
        this.scale = scale;
        this.sums = sums;
    }

    /**
     * Reads a rendering of a whole page.
     *
     * @param raster the page
     * @param scale  pixels per point
     */
    public static InkMap of(Raster raster, double scale) {
        int w = raster.width();
        int h = raster.height();
        int[] light = new int[w * h];
        int[] histogram = new int[256];
        for (int i = 0; i < light.length; i++) {
            int p = raster.argb()[i];
            light[i] = ((p >> 16 & 255) * 54 + (p >> 8 & 255) * 183 + (p & 255) * 19) >> 8;
            histogram[light[i]]++;
        }
        int paper = 255;
        for (int i = 0; i < 256; i++) {
            paper = histogram[i] > histogram[paper] ? i : paper;
        }
        int[] sums = new int[(w + 1) * (h + 1)];
        for (int y = 0; y < h; y++) {
            int row = 0;
            for (int x = 0; x < w; x++) {
                row += light[y * w + x] < paper - DARKER ? 1 : 0;
                sums[(y + 1) * (w + 1) + x + 1] = sums[y * (w + 1) + x + 1] + row;
            }
        }
        return new InkMap(w, h, scale, sums);
    }

    /** The share of a box that is ink, 0 to 1; what lies off the page counts as paper. */
    public double share(Box box) {
        int x0 = clamp((int) Math.floor(box.x0() * scale), width);
        int y0 = clamp((int) Math.floor(box.y0() * scale), height);
        int x1 = clamp((int) Math.ceil(box.x1() * scale), width);
        int y1 = clamp((int) Math.ceil(box.y1() * scale), height);
        if (x1 <= x0 || y1 <= y0) {
            return 0;
        }
        return count(x0, y0, x1, y1) / (double) ((x1 - x0) * (y1 - y0));
    }

    private int count(int x0, int y0, int x1, int y1) {
        int row = width + 1;
        return sums[y1 * row + x1] - sums[y0 * row + x1] - sums[y1 * row + x0] + sums[y0 * row + x0];
    }

    private static int clamp(int v, int max) {
        return Math.max(0, Math.min(max, v));
    }

    /**
     * How much a straight line gets in the way of ink: for each time that it runs into some, and for each point of it
     * that lies on some.
     */
    public double trouble(Point a, Point b) {
        int steps = (int) Math.ceil(a.distance(b) * scale);
        int crossings = 0;
        int covered = 0;
        boolean inside = true;
        for (int i = 0; i <= steps; i++) {
            double t = steps == 0 ? 0 : i / (double) steps;
            int x = (int) ((a.x() + (b.x() - a.x()) * t) * scale);
            int y = (int) ((a.y() + (b.y() - a.y()) * t) * scale);
            boolean ink = x >= 0 && y >= 0 && x < width && y < height && count(x, y, x + 1, y + 1) > 0;
            crossings += ink && !inside ? 1 : 0;
            covered += ink ? 1 : 0;
            inside = ink;
        }
        return crossings + covered / scale * 0.12;
    }
}
