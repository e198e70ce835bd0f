// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.picture;

/** Pictures made smaller. */
public final class Scaling {

    private Scaling() {
    }

    /** By how much a picture is made smaller so that its longer side is no longer than that; a whole number, 1 for not at all. */
    public static int factor(Picture picture, int longest) {
        return Math.max(1, (int) Math.ceil((double) Math.max(picture.width(), picture.height()) / longest));
    }

    /** A picture of which each pixel is the mean of a block; what does not fill a block at the right and below is cut off. */
    public static Picture smaller(Picture p, int factor) {
        if (factor == 1) {
            return p;
        }
        int w = p.width() / factor;
        int h = p.height() / factor;
        int[] out = new int[w * h];
        int n = factor * factor;
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int r = 0;
                int g = 0;
                int b = 0;
                for (int i = 0; i < n; i++) {
                    int pixel = p.rgb()[(y * factor + i / factor) * p.width() + x * factor + i % factor];
                    r += pixel >> 16 & 0xff;
                    g += pixel >> 8 & 0xff;
                    b += pixel & 0xff;
                }
                out[y * w + x] = (r + n / 2) / n << 16 | (g + n / 2) / n << 8 | (b + n / 2) / n;
            }
        }
        return new Picture(w, h, out);
    }

    /** Where a coordinate of the smaller picture lies in the first one: middles of pixels are whole numbers in both. */
    public static double back(double smaller, int factor) {
        return (smaller + 0.5) * factor - 0.5;
    }

    /** The other way. */
    public static double forth(double larger, int factor) {
        return (larger + 0.5) / factor - 0.5;
    }
}
