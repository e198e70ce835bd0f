// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.graphics.color.PDColor;

/** Works out colours; the last one is kept, since a colour is set once for many lines. */
final class Colours {

    private static final int GREY = 0x808080;

    private PDColor last;
    private int lastRgb;

    /** The colour as 0xRRGGBB; a pattern is taken as grey. */
    int rgb(PDColor colour) {
        if (colour != last) {
            lastRgb = work(colour);
            last = colour;
        }
        return lastRgb;
    }

    private static int work(PDColor colour) {
        try {
            return colour.getColorSpace() == null || colour.isPattern() ? GREY : colour.toRGB() & 0xFFFFFF;
        } catch (IOException | RuntimeException e) {
            // A colour that cannot be worked out is still ink.
            return 0;
        }
    }
}
