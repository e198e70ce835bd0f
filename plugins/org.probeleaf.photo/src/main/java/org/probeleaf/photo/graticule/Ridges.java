// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.image.GrayF32;

/**
 * How much each pixel looks like part of a thin line that runs upright (or level): its light less the light a few pixels
 * to that side which is more alike, blurred along the line, by what such differences are in its neighbourhood. Glare and texture
 * count little for that.
 */
final class Ridges {

    private static final int BLOCK = 24;
    private static final float FROM = 0.5f;
    private static final float FULL = 2.5f;

    private final int width;
    private final int height;
    private final float[] raw;
    private final float[] share;

    private Ridges(int width, int height, float[] raw, float[] share) {
        this.width = width;
        this.height = height;
        this.raw = raw;
        this.share = share;
    }

    /**
     * Of a plane.
     *
     * @param upright whether of upright lines, else of level ones; the map is always that of upright ones, of a turned plane
     * @param sign    1 for lines lighter than what is about them, -1 for darker ones
     */
    static Ridges of(GrayF32 grey, int sign) {
        GrayF32 smooth = new GrayF32(grey.width, grey.height);
        BlurImageOps.gaussian(grey, smooth, 0.9, 2, null);
        int w = grey.width;
        int h = grey.height;
        int d = Math.max(3, Math.round(Math.max(w, h) / 350f));
        float[] even = along(smooth.data, w, h);
        float[] raw = new float[w * h];
        for (int y = 0; y < h; y++) {
            for (int x = d; x < w - d; x++) {
                int i = y * w + x;
                // The side that is more alike counts, so that an edge makes no ridge.
                float side = sign > 0 ? Math.max(even[i - d], even[i + d]) : Math.min(even[i - d], even[i + d]);
                raw[i] = sign * (even[i] - side);
            }
        }
        return new Ridges(w, h, raw, shares(raw, w, h));
    }

    /** The mean of seven pixels along the line. */
    private static float[] along(float[] in, int w, int h) {
        float[] out = in.clone();
        for (int y = 3; y < h - 3; y++) {
            for (int x = 0; x < w; x++) {
                int i = y * w + x;
                out[i] = (in[i - 3 * w] + in[i - 2 * w] + in[i - w] + in[i] + in[i + w] + in[i + 2 * w] + in[i + 3 * w]) / 7;
            }
        }
        return out;
    }

    private static float[] shares(float[] raw, int w, int h) {
        int bw = (w + BLOCK - 1) / BLOCK;
        int bh = (h + BLOCK - 1) / BLOCK;
        float[] usual = new float[bw * bh];
        float[] values = new float[BLOCK * BLOCK];
        for (int by = 0; by < bh; by++) {
            for (int bx = 0; bx < bw; bx++) {
                int n = 0;
                for (int y = by * BLOCK; y < Math.min(h, (by + 1) * BLOCK); y++) {
                    for (int x = bx * BLOCK; x < Math.min(w, (bx + 1) * BLOCK); x++) {
                        values[n++] = Math.abs(raw[y * w + x]);
                    }
                }
                java.util.Arrays.sort(values, 0, n);
                usual[by * bw + bx] = values[n / 2];
            }
        }
        float[] share = new float[raw.length];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                float scale = Math.max(0.0015f, usual[y / BLOCK * bw + x / BLOCK] * 1.5f);
                share[y * w + x] = Math.max(0, Math.min(1, (raw[y * w + x] / scale - FROM) / (FULL - FROM)));
            }
        }
        return share;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** 0 to 1; 0 outside. */
    float share(int x, int y) {
        return x < 0 || y < 0 || x >= width || y >= height ? 0 : share[y * width + x];
    }

    /** The greatest share within a pixel across the line. */
    float near(double x, double y) {
        int col = (int) Math.rint(x);
        int row = (int) Math.rint(y);
        return Math.max(share(col, row), Math.max(share(col - 1, row), share(col + 1, row)));
    }

    /** The difference of light, 0 outside. */
    float raw(int x, int y) {
        return x < 0 || y < 0 || x >= width || y >= height ? 0 : raw[y * width + x];
    }

    /** A plane with rows and columns changed over: level lines become upright ones. */
    static GrayF32 turned(GrayF32 in) {
        GrayF32 out = new GrayF32(in.height, in.width);
        for (int y = 0; y < in.height; y++) {
            for (int x = 0; x < in.width; x++) {
                out.data[x * in.height + y] = in.data[y * in.width + x];
            }
        }
        return out;
    }
}
