// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.MinMaxPyramid;

/**
 * A channel ready to be drawn at any zoom.
 *
 * @param title   what it is called in the plot
 * @param channel its values
 * @param pyramid of its samples
 * @param shift   added to its times, in seconds: a reference is moved to where it fits
 * @param ink     how it looks
 */
public record PlotTrace(String title, Channel channel, MinMaxPyramid pyramid, double shift, Ink ink) {

    /** A trace; reads all samples once. */
    public static PlotTrace of(String title, Channel channel, Ink ink) {
        return new PlotTrace(title, channel, new MinMaxPyramid(channel.samples()), 0, ink);
    }

    /** The same, moved in time. */
    public PlotTrace shiftedBy(double seconds) {
        return new PlotTrace(title, channel, pyramid, seconds, ink);
    }

    /** The same under another name, in another ink. */
    public PlotTrace as(String otherTitle, Ink other) {
        return new PlotTrace(otherTitle, channel, pyramid, shift, other);
    }

    /** Its whole length and height with a little room; one unit about a value where it is flat or empty. */
    public PlotWindow whole() {
        double[] range = pyramid.range(0, channel.size());
        double low = Double.isNaN(range[0]) ? 0 : range[0];
        double high = Double.isNaN(range[1]) ? 1 : range[1];
        double room = high > low ? (high - low) * 0.08 : 0.5;
        double from = channel.size() == 0 ? 0 : channel.times().at(0) + shift;
        double length = channel.duration() > 0 ? channel.duration() : 1e-6;
        return new PlotWindow(from, from + length, low - room, high + room);
    }
}
