// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.probeleaf.handover.wave.Wave;
import org.probeleaf.waveform.measure.Figure;
import org.probeleaf.waveform.measure.Si;
import org.probeleaf.waveform.report.TraceReport;

/** A waveform in a few words. */
public final class WaveWords {

    private static final int DIGITS = 3;

    private WaveWords() {
    }

    /** Rate and levels of the first trace ({@code 500 kHz, 200 mV to 3.4 V}), or why there are none. */
    public static String line(Wave wave) {
        if (wave == null) {
            return "";
        }
        if (wave.problem() != null) {
            return "cannot be read: " + wave.problem();
        }
        return wave.first().map(WaveWords::line).orElse("nothing in it");
    }

    private static String line(TraceReport trace) {
        Map<String, Figure> f = trace.figures();
        List<String> parts = new ArrayList<>();
        Figure rate = f.get("frequency_Hz");
        if (rate != null && rate.known()) {
            parts.add(Si.text(rate.value(), DIGITS, "Hz"));
        }
        Figure low = f.get("low_V");
        Figure high = f.get("high_V");
        Figure mean = f.get("mean_V");
        if (low.known() && high.known()) {
            parts.add(Si.text(low.value(), DIGITS, trace.unit()) + " to " + Si.text(high.value(), DIGITS, trace.unit()));
        } else if (mean.known()) {
            parts.add(Si.text(mean.value(), DIGITS, trace.unit()));
        }
        return parts.isEmpty() ? trace.name() : String.join(", ", parts);
    }
}
