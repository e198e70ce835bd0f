// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import org.probeleaf.drawing.Raster;

/** Makes rasters. */
final class Rasters {

    private Rasters() {
    }

    /** A raster of pixels whose alpha is not set yet; the array is used, not copied. */
    static Raster opaque(int width, int height, int[] pixels) {
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] |= 0xFF000000;
        }
        return new Raster(width, height, pixels);
    }
}
