// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.picture;

import boofcv.struct.image.GrayF32;

/**
 * An upright picture. Immutable by agreement: the pixels are not copied and must not be changed.
 *
 * @param width  in pixels
 * @param height in pixels
 * @param rgb    row by row from the top left, {@code 0xRRGGBB}
 */
public record Picture(int width, int height, int[] rgb) {

    private static final float[] SCALE = new float[256];

    static {
        for (int i = 0; i < SCALE.length; i++) {
            SCALE[i] = i / 255f;
        }
    }

    public Picture {
        if (width < 1 || height < 1 || rgb.length != width * height) {
            throw new IllegalArgumentException("a picture of " + width + " by " + height + " has not " + rgb.length + " pixels");
        }
    }

    /** The colour of the pixel nearest to a place; what lies outside is taken from the rim. */
    public int at(double x, double y) {
        int col = (int) Math.max(0, Math.min(width - 1, Math.rint(x)));
        int row = (int) Math.max(0, Math.min(height - 1, Math.rint(y)));
        return rgb[row * width + col] & 0xffffff;
    }

    /**
     * One colour as a plane, 0 to 1.
     *
     * @param shift 16 for red, 8 for green, 0 for blue
     */
    public GrayF32 plane(int shift) {
        GrayF32 plane = new GrayF32(width, height);
        for (int i = 0; i < rgb.length; i++) {
            plane.data[i] = SCALE[rgb[i] >> shift & 0xff];
        }
        return plane;
    }

    /** The mean of the three colours as a plane, 0 to 1: a blue line counts as much as a green one. */
    public GrayF32 grey() {
        GrayF32 plane = new GrayF32(width, height);
        for (int i = 0; i < rgb.length; i++) {
            plane.data[i] = (SCALE[rgb[i] >> 16 & 0xff] + SCALE[rgb[i] >> 8 & 0xff] + SCALE[rgb[i] & 0xff]) / 3;
        }
        return plane;
    }
}
