// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.wave;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.probeleaf.waveform.measure.FigureText;
import org.probeleaf.waveform.report.TraceReport;

/**
 * A figure in words.
 *
 * @param name  what it is
 * @param value with its unit and by how much it may differ
 */
record FigureWords(String name, String value) {

    private static final int DIGITS = 4;
    private static final Map<String, String> NAMES = Map.ofEntries(Map.entry("low_V", "Low"), Map.entry("high_V", "High"),
            Map.entry("amplitude_V", "Amplitude"), Map.entry("min_V", "Least"), Map.entry("max_V", "Greatest"),
            Map.entry("mean_V", "Mean"), Map.entry("rms_V", "RMS"), Map.entry("frequency_Hz", "Frequency"),
            Map.entry("period_s", "Period"), Map.entry("duty", "Duty factor"), Map.entry("rise_s", "Rise 10 to 90 %"),
            Map.entry("fall_s", "Fall 90 to 10 %"), Map.entry("overshoot_pct", "Overshoot"),
            Map.entry("undershoot_pct", "Undershoot"), Map.entry("pulse_s", "Pulse at 50 %"));

    /** The figures of a trace that are known, in their order. */
    static List<FigureWords> of(TraceReport trace) {
        List<FigureWords> words = new ArrayList<>();
        trace.figures().forEach((key, figure) -> {
            if (figure.known() && NAMES.containsKey(key)) {
                words.add(new FigureWords(NAMES.get(key), FigureText.both(figure, DIGITS, unit(key, trace.unit()))));
            }
        });
        return words;
    }

    private static String unit(String key, String unit) {
        return key.endsWith("_V") ? unit : key.endsWith("_s") ? "s" : key.endsWith("_Hz") ? "Hz" : key.endsWith("_pct") ? "%" : "";
    }
}
