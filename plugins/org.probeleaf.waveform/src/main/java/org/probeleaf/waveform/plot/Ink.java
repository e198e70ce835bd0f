// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.List;

/**
 * What a shape of a plot is for, and how it looks on white. Lines and letters have colours of the palettes by M. Okabe and
 * K. Ito ("Color Universal Design", 2008) and by P. Tol ("Colour Schemes", 2021), and greys, all with a contrast of at
 * least 3:1 on white; a pattern of dashes tells them apart in print without colours. Those that only fill are light.
 */
public enum Ink {
    /** Round the plot. */
    FRAME(0x767676, 0.8),
    /** Lines at round values. */
    GRID(0x949494, 0.5, 1, 4),
    /** Words at the axes. */
    SCALE(0x5B6672, 0.6),
    /** The first trace, and the words for it. */
    TRACE_A(0x0072B2, 1.3),
    TRACE_B(0xD55E00, 1.3, 7, 2),
    TRACE_C(0x117733, 1.3, 2, 2),
    TRACE_D(0xAA4499, 1.3, 8, 2, 2, 2),
    /** A capture to compare with. */
    REFERENCE(0x000000, 0.8, 4, 2),
    /** The same where its samples crowd, filled. */
    CROWDED(0x949494, 0.8),
    /** A state level. */
    LEVEL(0x000000, 0.6, 10, 3, 2, 3),
    /** What the next stage needs. */
    THRESHOLD(0x882255, 0.9, 6, 3),
    /** A cursor, and the flag at its head. */
    CURSOR(0x332288, 0.9),
    /** Where a capture leaves the tolerance about its reference. */
    OUTSIDE(0xD55E00, 1.0),
    /** Fills the tolerance about a reference. */
    TOLERANCE(0xDCECF7, 0),
    /** Fills what is neither low nor high. */
    NEITHER(0xFBF0D9, 0),
    /** Fills what nobody knows: the states of a line that is not driven to either. */
    UNKNOWN(0xE4E7EA, 0),
    /** Letters on a filled flag. */
    PAPER(0xFFFFFF, 0);

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

    /** Width of a line, in the plot's units; 0 for what only fills or writes. */
    public double width() {
        return width;
    }

    /** Lengths of strokes and gaps by turns, in the plot's units; none for a solid line. */
    public double[] dashes() {
        return dashes.clone();
    }
}
