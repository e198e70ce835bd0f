// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

/**
 * The rectangle in which the traces of a plot are drawn, and what is shown in it.
 *
 * @param window what is shown
 * @param left   left edge, in the plot's units
 * @param top    upper edge
 * @param right  right edge
 * @param bottom lower edge
 */
public record PlotFrame(PlotWindow window, double left, double top, double right, double bottom) {

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    /** Where a time is, in the plot's units. */
    public double x(double seconds) {
        return left + (seconds - window.from()) / (window.to() - window.from()) * width();
    }

    /** Where a value is. */
    public double y(double value) {
        return bottom - (value - window.low()) / (window.high() - window.low()) * height();
    }

    /** The time at a place, in seconds. */
    public double time(double x) {
        return window.from() + (x - left) / width() * (window.to() - window.from());
    }

    /** The value at a place. */
    public double value(double y) {
        return window.low() + (bottom - y) / height() * (window.high() - window.low());
    }
}
