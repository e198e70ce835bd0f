// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.trace;

import java.util.Arrays;

/** The light of a screen without what is thin on it: medians of blocks, made smooth. Glare and uneven light are in it. */
final class Background {

    private Background() {
    }

    /**
     * Of a plane.
     *
     * @param scale pixels a division; blocks are half a division
     */
    static float[] of(float[] plane, int w, int h, int scale) {
        int block = Math.max(8, scale / 2);
        int bw = (w + block - 1) / block;
        int bh = (h + block - 1) / block;
        float[] medians = new float[bw * bh];
        float[] values = new float[block * block];
        for (int by = 0; by < bh; by++) {
            for (int bx = 0; bx < bw; bx++) {
                int n = 0;
                for (int y = by * block; y < Math.min(h, (by + 1) * block); y++) {
                    for (int x = bx * block; x < Math.min(w, (bx + 1) * block); x++) {
                        values[n++] = plane[y * w + x];
                    }
                }
                Arrays.sort(values, 0, n);
                medians[by * bw + bx] = values[n / 2];
            }
        }
        return smooth(neighbours(medians, bw, bh), bw, bh, w, h, block);
    }

    private static float[] neighbours(float[] in, int w, int h) {
        float[] out = new float[in.length];
        float[] values = new float[9];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int n = 0;
                for (int i = 0; i < 9; i++) {
                    int nx = x + i % 3 - 1;
                    int ny = y + i / 3 - 1;
                    if (nx >= 0 && ny >= 0 && nx < w && ny < h) {
                        values[n++] = in[ny * w + nx];
                    }
                }
                Arrays.sort(values, 0, n);
                out[y * w + x] = values[n / 2];
            }
        }
        return out;
    }

    private static float[] smooth(float[] blocks, int bw, int bh, int w, int h, int block) {
        float[] out = new float[w * h];
        for (int y = 0; y < h; y++) {
            float fy = Math.max(0, Math.min(bh - 1, (y + 0.5f) / block - 0.5f));
            int y0 = Math.min((int) fy, Math.max(0, bh - 2));
            int y1 = Math.min(bh - 1, y0 + 1);
            for (int x = 0; x < w; x++) {
                float fx = Math.max(0, Math.min(bw - 1, (x + 0.5f) / block - 0.5f));
                int x0 = Math.min((int) fx, Math.max(0, bw - 2));
                int x1 = Math.min(bw - 1, x0 + 1);
                float top = blocks[y0 * bw + x0] * (1 - fx + x0) + blocks[y0 * bw + x1] * (fx - x0);
                float low = blocks[y1 * bw + x0] * (1 - fx + x0) + blocks[y1 * bw + x1] * (fx - x0);
                out[y * w + x] = top * (1 - fy + y0) + low * (fy - y0);
            }
        }
        return out;
    }
}
