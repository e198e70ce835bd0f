// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.paint;

/**
 * The colours of marks: the eight of M. Okabe and K. Ito's set for all kinds of colour vision. Only blue, vermillion,
 * bluish green, reddish purple and black have a contrast of 3:1 on white and may be thin lines; the others are for fills.
 */
public enum Tint {
    BLACK(0x000000, "black"),
    ORANGE(0xE69F00, "orange"),
    SKY_BLUE(0x56B4E9, "sky blue"),
    BLUISH_GREEN(0x009E73, "bluish green"),
    YELLOW(0xF0E442, "yellow"),
    BLUE(0x0072B2, "blue"),
    VERMILLION(0xD55E00, "vermillion"),
    REDDISH_PURPLE(0xCC79A7, "reddish purple"),
    /** The paper, under letters and signs. */
    WHITE(0xFFFFFF, "white");

    private final int rgb;
    private final String title;

    Tint(int rgb, String title) {
        this.rgb = rgb;
        this.title = title;
    }

    public String title() {
        return title;
    }

    public float red() {
        return (rgb >> 16 & 255) / 255f;
    }

    public float green() {
        return (rgb >> 8 & 255) / 255f;
    }

    public float blue() {
        return (rgb & 255) / 255f;
    }

    public float[] components() {
        return new float[] {red(), green(), blue()};
    }
}
