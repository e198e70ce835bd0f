// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

/**
 * A value drawn across a plot: a threshold, or a state level.
 *
 * @param value in the unit of the traces
 * @param words stand at its right end
 */
public record PlotLevel(double value, String words) {
}
