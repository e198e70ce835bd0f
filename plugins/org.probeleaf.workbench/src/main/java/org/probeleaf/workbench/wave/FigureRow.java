// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.measure.Figure;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.Si;

/**
 * One figure of a capture for a list.
 *
 * @param name        what it is
 * @param value       with its unit, or why there is none
 * @param uncertainty by how much it may differ; empty without a value
 */
record FigureRow(String name, String value, String uncertainty) {

    /** The figures that people ask for first, in that order. */
    static List<FigureRow> of(Measures m, String unit) {
        List<FigureRow> rows = new ArrayList<>();
        add(rows, "Frequency", m.frequency(), "Hz");
        add(rows, "Period", m.period(), "s");
        add(rows, "Low", m.low(), unit);
        add(rows, "High", m.high(), unit);
        add(rows, "Amplitude", m.amplitude(), unit);
        add(rows, "Least", m.min(), unit);
        add(rows, "Greatest", m.max(), unit);
        add(rows, "Mean", m.mean(), unit);
        add(rows, "RMS", m.rms(), unit);
        percent(rows, "Duty", m.duty(), 100);
        add(rows, "Pulse at 50 %", m.pulse(), "s");
        add(rows, "Rise 10 to 90 %", m.rise(), "s");
        add(rows, "Fall 90 to 10 %", m.fall(), "s");
        percent(rows, "Overshoot", m.overshoot(), 1);
        percent(rows, "Undershoot", m.undershoot(), 1);
        add(rows, "Crest factor", m.crest(), "");
        return rows;
    }

    private static void add(List<FigureRow> rows, String name, Figure figure, String unit) {
        rows.add(new FigureRow(name, figure.known() ? Si.text(figure.value(), unit) : figure.reason(),
                figure.known() ? "\u00b1 " + Si.text(figure.uncertainty(), 2, unit) : ""));
    }

    private static void percent(List<FigureRow> rows, String name, Figure figure, double by) {
        rows.add(new FigureRow(name, figure.known() ? Si.text(figure.value() * by, 3, "") + " %" : figure.reason(),
                figure.known() ? "\u00b1 " + Si.text(figure.uncertainty() * by, 2, "") + " %" : ""));
    }
}
