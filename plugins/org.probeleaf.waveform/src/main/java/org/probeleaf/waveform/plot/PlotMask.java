// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.List;

/**
 * The tolerance about a reference, drawn as a light band, and where a capture leaves it, marked at the upper edge by wedges
 * over bars: a shape, and no colour alone.
 *
 * @param reference where it was laid
 * @param level     how far a capture may be off, up and down, in the unit of the traces
 * @param time      how far to either side, in seconds
 * @param outside   stretches of time that leave the tolerance, in order
 */
public record PlotMask(PlotTrace reference, double level, double time, List<Span> outside) {

    public PlotMask {
        outside = List.copyOf(outside);
    }

    /**
     * A stretch of time, in seconds.
     *
     * @param from its beginning
     * @param to   its end, not before {@code from}
     */
    public record Span(double from, double to) {
    }
}
