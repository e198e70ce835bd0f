// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.PaletteData;
import org.probeleaf.drawing.Raster;

/**
 * Turns a page on white paper into its ink on a clear ground: each pixel becomes the strongest colour that, thinned
 * over white, gives the pixel again. Over white the sheet looks as before; over a coloured band the ink stays on top.
 */
final class InkImage {

    private InkImage() {
    }

    /** The ink of a raster, or null where there is none. */
    static ImageData of(Raster raster) {
        int w = raster.width();
        int h = raster.height();
        byte[] pixels = new byte[w * h * 4];
        byte[] alpha = new byte[w * h];
        boolean any = false;
        int[] argb = raster.argb();
        for (int i = 0; i < argb.length; i++) {
            int r = argb[i] >> 16 & 0xFF;
            int g = argb[i] >> 8 & 0xFF;
            int b = argb[i] & 0xFF;
            int a = 255 - Math.min(r, Math.min(g, b));
            if (a == 0) {
                continue;
            }
            any = true;
            alpha[i] = (byte) a;
            pixels[4 * i + 1] = strong(r, a);
            pixels[4 * i + 2] = strong(g, a);
            pixels[4 * i + 3] = strong(b, a);
        }
        if (!any) {
            return null;
        }
        ImageData data = new ImageData(w, h, 32, new PaletteData(0xFF0000, 0xFF00, 0xFF), 4, pixels);
        data.alphaData = alpha;
        return data;
    }

    private static byte strong(int c, int a) {
        return (byte) Math.max(0, Math.min(255, 255 - (255 - c) * 255 / a));
    }
}
