// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.measure.DigitalMeasures;
import org.probeleaf.waveform.measure.Figure;
import org.probeleaf.waveform.measure.FigureText;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.Si;
import org.probeleaf.waveform.video.VideoSignal;
import org.probeleaf.workbench.session.LoadedTrace;

/**
 * One figure of a capture for a list.
 *
 * @param name        what it is
 * @param value       with its unit, or why there is none
 * @param uncertainty by how much it may differ; empty without a value
 */
record FigureRow(String name, String value, String uncertainty) {

    private static final int DIGITS = 4;
    /** Rates of video are told apart by their fifth digit. */
    private static final int RATE = 6;

    /** The figures of a trace, those that people ask for first at the top. */
    static List<FigureRow> of(LoadedTrace trace) {
        List<FigureRow> rows = new ArrayList<>();
        if (trace.video() != null) {
            video(rows, trace.video());
        }
        if (trace.logic()) {
            states(rows, trace.states());
        } else {
            values(rows, trace.measures(), trace.unit());
        }
        return rows;
    }

    private static void video(List<FigureRow> rows, VideoSignal v) {
        rows.add(new FigureRow("System", v.system() == null ? "none is near" : v.system().title(), ""));
        add(rows, "Line rate", v.lineRate(), RATE, "Hz");
        add(rows, "Field rate", v.fieldRate(), RATE - 1, "Hz");
        add(rows, "Lines a field", v.lines(), DIGITS, "");
        add(rows, "Sync depth", v.sync(), DIGITS - 1, "V");
        add(rows, "Sync width", v.syncWidth(), DIGITS - 1, "s");
        add(rows, "Front porch", v.frontPorch(), DIGITS - 1, "s");
        add(rows, "Back porch", v.backPorch(), DIGITS - 1, "s");
        add(rows, "Blank level", v.blank(), DIGITS - 1, "V");
        add(rows, "White", v.white(), DIGITS - 1, "V");
    }

    private static void values(List<FigureRow> rows, Measures m, String unit) {
        add(rows, "Frequency", m.frequency(), DIGITS, "Hz");
        add(rows, "Period", m.period(), DIGITS, "s");
        add(rows, "Low", m.low(), DIGITS, unit);
        add(rows, "High", m.high(), DIGITS, unit);
        add(rows, "Amplitude", m.amplitude(), DIGITS, unit);
        add(rows, "Least", m.min(), DIGITS, unit);
        add(rows, "Greatest", m.max(), DIGITS, unit);
        add(rows, "Mean", m.mean(), DIGITS, unit);
        add(rows, "RMS", m.rms(), DIGITS, unit);
        add(rows, "Duty factor", m.duty().times(100), DIGITS - 1, "%");
        add(rows, "Pulse at 50 %", m.pulse(), DIGITS, "s");
        add(rows, "Rise 10 to 90 %", m.rise(), DIGITS, "s");
        add(rows, "Fall 90 to 10 %", m.fall(), DIGITS, "s");
        add(rows, "Overshoot", m.overshoot(), DIGITS - 1, "%");
        add(rows, "Undershoot", m.undershoot(), DIGITS - 1, "%");
        add(rows, "Crest factor", m.crest(), DIGITS, "");
    }

    private static void states(List<FigureRow> rows, DigitalMeasures m) {
        add(rows, "Frequency", m.frequency(), DIGITS, "Hz");
        add(rows, "Period", m.period(), DIGITS, "s");
        add(rows, "Duty factor", m.duty().times(100), DIGITS - 1, "%");
        add(rows, "Pulse", m.pulse(), DIGITS, "s");
        rows.add(new FigureRow("Edges", String.valueOf(m.edges()), ""));
        rows.add(new FigureRow("Is low for", share(m.low()), ""));
        rows.add(new FigureRow("Is high for", share(m.high()), ""));
        rows.add(new FigureRow("Is unknown (x) for", share(m.unknown()), ""));
        rows.add(new FigureRow("Is let go (z) for", share(m.floating()), ""));
    }

    private static String share(double of) {
        return Si.text(of * 100, 3, "%");
    }

    private static void add(List<FigureRow> rows, String name, Figure figure, int digits, String unit) {
        rows.add(figure.known()
                ? new FigureRow(name, FigureText.value(figure, digits, unit), FigureText.uncertainty(figure, unit))
                : new FigureRow(name, figure.reason(), ""));
    }
}
