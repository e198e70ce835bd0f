// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.List;

/**
 * What a shape of a plot is for, and how it looks on white: colours of the palette by M. Okabe and K. Ito ("Color Universal
 * Design", 2008) that have a contrast of at least 3:1 on white, and a pattern of dashes for print without colours.
 */
public enum Ink {
    /** Round the plot. */
    FRAME(0x5B6672, 1.0),
    /** Lines at round values. */
    GRID(0xD9DDE1, 0.6),
    /** Words at the axes. */
    SCALE(0x5B6672, 0.6),
    /** The first trace, and the words for it. */
    TRACE_A(0x0072B2, 1.3),
    TRACE_B(0xD55E00, 1.3, 7, 2),
    TRACE_C(0x009E73, 1.3, 2, 2),
    TRACE_D(0x8F4A70, 1.3, 8, 2, 2, 2),
    /** A capture to compare with. */
    REFERENCE(0x7A838C, 1.1, 3, 3),
    /** A threshold or a state level. */
    LEVEL(0x1F2933, 0.8, 10, 3, 2, 3),
    /** A cursor. */
    CURSOR(0xC2408C, 1.0);

    private static final List<Ink> TRACES = List.of(TRACE_A, TRACE_B, TRACE_C, TRACE_D);

    private final int rgb;
    private final double width;
    private final double[] dashes;

    Ink(int rgb, double width, double... dashes) {
        this.rgb = rgb;
        this.width = width;
        this.dashes = dashes;
    }

    /** The ink of a trace by its place, from 0; after the last the first again. */
    public static Ink trace(int index) {
        return TRACES.get(Math.floorMod(index, TRACES.size()));
    }

    /** Red, green and blue, eight bits each. */
    public int rgb() {
        return rgb;
    }

    /** Width of a line, in the plot's units. */
    public double width() {
        return width;
    }

    /** Lengths of strokes and gaps by turns, in the plot's units; none for a solid line. */
    public double[] dashes() {
        return dashes.clone();
    }
}
