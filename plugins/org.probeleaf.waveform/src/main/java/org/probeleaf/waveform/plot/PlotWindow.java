// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

/**
 * What of the captures a plot shows.
 *
 * @param from the time at the left edge, in seconds
 * @param to   the time at the right edge, later than {@code from}
 * @param low  the value at the bottom, in the unit of the traces
 * @param high the value at the top, greater than {@code low}
 */
public record PlotWindow(double from, double to, double low, double high) {

    public PlotWindow {
        if (!(to > from) || !(high > low)) {
            throw new IllegalArgumentException("a plot needs room: " + from + " to " + to + ", " + low + " to " + high);
        }
    }

    /** The same values over other times. */
    public PlotWindow over(double otherFrom, double otherTo) {
        return new PlotWindow(otherFrom, otherTo, low, high);
    }

    /** Moved along by a share of its width; positive shows later times. */
    public PlotWindow moved(double share) {
        double by = (to - from) * share;
        return over(from + by, to + by);
    }

    /**
     * Drawn apart or together about a time that stays where it is.
     *
     * @param factor over 1 shows less, more closely
     */
    public PlotWindow zoomed(double factor, double about) {
        return over(about - (about - from) / factor, about + (to - about) / factor);
    }
}
