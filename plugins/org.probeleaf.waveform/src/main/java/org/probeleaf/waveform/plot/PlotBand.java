// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

/**
 * Values that are shaded across a pane: what is neither low nor high, or what a difference may be.
 *
 * @param low  in the unit of the traces
 * @param high greater than {@code low}
 * @param ink  one that fills
 */
public record PlotBand(double low, double high, Ink ink) {
}
