// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.judge;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.measure.DigitalMeasures;
import org.probeleaf.waveform.measure.Si;

/** Judges a line of logic states. */
public final class DigitalJudge {

    private static final double MOSTLY = 0.5;

    private DigitalJudge() {
    }

    /** What is said of a line by its figures. */
    public static Judgement judge(DigitalMeasures m) {
        List<String> reasons = new ArrayList<>();
        Verdict verdict = verdict(m, reasons);
        if (m.unknown() > 0 && verdict != Verdict.UNKNOWN) {
            reasons.add("It is unknown (x) for " + Si.text(m.unknown() * 100, 3, "%") + " of the time.");
        }
        if (m.floating() > 0 && verdict != Verdict.FLOATING) {
            reasons.add("Nobody drives it (z) for " + Si.text(m.floating() * 100, 3, "%") + " of the time.");
        }
        return new Judgement(verdict, List.of(verdict), reasons, Double.NaN, Double.NaN, m.edges() > 0);
    }

    private static Verdict verdict(DigitalMeasures m, List<String> reasons) {
        if (m.edges() > 0) {
            Beat beat = Beat.of(m.instants());
            if (beat.missing() > 0) {
                reasons.add((beat.missing() == 1 ? "1 pulse is" : beat.missing() + " pulses are") + " missing from a beat of "
                        + Si.text(beat.usual(), "s") + "; the longest gap is " + Si.text(beat.longest(), "s") + ".");
                return Verdict.MISSING_PULSES;
            }
            reasons.add(beat.even() ? "It goes up and down every " + Si.text(beat.usual(), "s") + " ("
                    + Si.text(1 / beat.usual(), "Hz") + ")." : "It changes state " + m.edges() + (m.edges() == 1 ? " time."
                            : " times, at no even distance."));
            return beat.even() ? Verdict.CLOCKING : Verdict.TOGGLING;
        }
        if (m.unknown() > MOSTLY) {
            reasons.add("Its state is unknown (x).");
            return Verdict.UNKNOWN;
        }
        if (m.floating() > MOSTLY) {
            reasons.add("Nobody drives it (z).");
            return Verdict.FLOATING;
        }
        boolean high = m.high() >= m.low();
        reasons.add("It stays " + (high ? "high." : "low."));
        return high ? Verdict.STATIC_HIGH : Verdict.STATIC_LOW;
    }
}
