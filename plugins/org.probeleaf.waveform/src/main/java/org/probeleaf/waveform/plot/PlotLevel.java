// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

/**
 * A value drawn across a pane: a threshold, or a state level.
 *
 * @param value in the unit of the traces
 * @param words stand beside it in the right margin
 * @param ink   {@link Ink#LEVEL} or {@link Ink#THRESHOLD}
 */
public record PlotLevel(double value, String words, Ink ink) {

    /** A state level. */
    public PlotLevel(double value, String words) {
        this(value, words, Ink.LEVEL);
    }
}
