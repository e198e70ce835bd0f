// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

/**
 * A time drawn down all panes.
 *
 * @param name one letter or two, on its flag
 * @param at   in seconds
 */
public record PlotCursor(String name, double at) {
}
