// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.look;

import org.eclipse.swt.graphics.RGB;

/**
 * The colours in use. Those with a meaning are of the palette by M. Okabe and K. Ito ("Color Universal Design", 2008),
 * which people with any colour vision tell apart; thin lines and text are only in those that have a contrast of at
 * least 3:1 on white. Meaning never rests on colour alone.
 */
public final class Palette {

    /** Selection, drivers and loads: 5.2:1 on white. */
    public static final RGB BLUE = new RGB(0x00, 0x72, 0xB2);
    /** Good: 3.4:1 on white. */
    public static final RGB GREEN = new RGB(0x00, 0x9E, 0x73);
    /** Bad: 3.9:1 on white. */
    public static final RGB VERMILLION = new RGB(0xD5, 0x5E, 0x00);
    /** Names that the technician gave: 3.1:1 on white. */
    public static final RGB PURPLE = new RGB(0xCC, 0x79, 0xA7);
    /** Areas only. */
    public static final RGB SKY = new RGB(0x56, 0xB4, 0xE9);
    /** Areas only. */
    public static final RGB ORANGE = new RGB(0xE6, 0x9F, 0x00);
    /** Areas only. */
    public static final RGB YELLOW = new RGB(0xF0, 0xE4, 0x42);

    public static final RGB WHITE = new RGB(255, 255, 255);
    /** Text. */
    public static final RGB TEXT = new RGB(0x1F, 0x29, 0x33);
    /** Text that stands back: 5.9:1 on white. */
    public static final RGB QUIET = new RGB(0x5B, 0x66, 0x72);
    /** Thin lines between areas. */
    public static final RGB LINE = new RGB(0xC9, 0xCE, 0xD3);
    /** What lies round the paper. */
    public static final RGB DESK = new RGB(0xDF, 0xE3, 0xE6);
    /** Bars and strips. */
    public static final RGB BAR = new RGB(0xF4, 0xF6, 0xF7);
    /** The shadow of the paper. */
    public static final RGB SHADOW = new RGB(0xB4, 0xBB, 0xC1);
    /** A strip that says something is in the way. */
    public static final RGB NOTICE = new RGB(0xFD, 0xF3, 0xDC);

    private Palette() {
    }

    /** A colour thinned on white: 1 is the colour itself, 0 white. */
    public static RGB tint(RGB colour, double share) {
        return new RGB(mix(colour.red, share), mix(colour.green, share), mix(colour.blue, share));
    }

    private static int mix(int c, double share) {
        return (int) Math.round(255 + (c - 255) * share);
    }
}
