// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave.photo;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.measure.FigureText;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.Si;

/** The figures by which a person sees whether volts and time per division were said right. */
final class PhotoFigures {

    private static final int DIGITS = 3;

    private PhotoFigures() {
    }

    /** Amplitude, and the frequency of what repeats itself; a line each. */
    static String of(Measures m) {
        List<String> lines = new ArrayList<>();
        if (m.amplitude().known()) {
            lines.add("Amplitude " + FigureText.both(m.amplitude(), DIGITS, "V"));
        } else {
            lines.add("Peak to peak " + Si.text(m.peakToPeak(), DIGITS, "V"));
        }
        lines.add(m.frequency().known() ? "Frequency " + FigureText.both(m.frequency(), DIGITS, "Hz") : "No frequency: " + m.frequency().reason());
        return String.join("\n", lines);
    }
}
