// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.waveform.compare.Comparison;
import org.probeleaf.waveform.judge.Judgement;
import org.probeleaf.waveform.measure.Si;
import org.probeleaf.waveform.video.VideoSignal;
import org.probeleaf.workbench.session.CaptureSign;
import org.probeleaf.workbench.session.HeldAgainst;
import org.probeleaf.workbench.session.LoadedCapture;
import org.probeleaf.workbench.session.LoadedTrace;

/**
 * Something that is said of a capture.
 *
 * @param sign  whether it is good, or null where that is not judged
 * @param title in a few words
 * @param lines sentences on it
 */
record Finding(Outcome sign, String title, List<String> lines) {

    private static final double WORTH_A_WORD = 0.02;
    /** Nobody wants to know closer than this, in per cent. */
    private static final double LEAST = 0.01;

    Finding {
        lines = List.copyOf(lines);
    }

    /** What is said of a trace by itself. */
    static Finding of(LoadedTrace trace, Judgement j, HeldAgainst by) {
        List<String> lines = new ArrayList<>(j.reasons());
        if (by.problem() != null) {
            lines.add(0, by.problem());
        }
        boolean low = !Double.isNaN(j.lowMargin());
        boolean high = !Double.isNaN(j.highMargin());
        if (low || high) {
            lines.add("To spare: " + (low ? "low " + Si.text(j.lowMargin(), 3, "V") : "")
                    + (low && high ? ", " : "") + (high ? "high " + Si.text(j.highMargin(), 3, "V") : "") + ".");
        }
        if (j.toggles() != null && !trace.logic()) {
            lines.add(j.toggles() ? "The next stage sees both states." : "The next stage sees one state only.");
        }
        if (!by.why().isEmpty()) {
            lines.add(by.why());
        }
        String name = by.thresholds() == null ? "" : " for " + by.thresholds().name();
        return new Finding(CaptureSign.of(trace, j).orElse(null), capital(j.verdict().word().replace('-', ' ')) + name, lines);
    }

    /** How it compares with another. */
    static Finding of(Comparison c, String name, String unit) {
        List<String> lines = new ArrayList<>(c.reasons());
        if (c.overlay() != null && c.shift() != 0) {
            lines.add("The reference is moved by " + Si.text(c.overlay().laid(), "s") + " to lie on it.");
        }
        if (Math.abs(c.gain() - 1) > WORTH_A_WORD) {
            lines.add("Scaled by " + Si.text(c.gain(), 3, "") + " and moved by " + Si.text(c.offset(), 3, unit)
                    + ", the reference fits it to " + Si.text(Math.max(LEAST, c.scaledRms() * 100), 2, "%") + ".");
        }
        return new Finding(c.same() ? Outcome.GOOD : Outcome.BAD, (c.same() ? "The same as " : "Differs from ") + name, lines);
    }

    /** Why it is not compared with another, or that this is under way. */
    static Finding notCompared(LoadedCapture other, LoadedTrace measured) {
        String name = other.mark().fileName();
        String why = other.problem() != null ? capital(other.problem()) + "."
                : measured.logic() || other.traces().stream().allMatch(LoadedTrace::logic)
                        ? "Traces of logic states are not compared; both captures need a channel of values." : "Comparing\u2026";
        return new Finding(null, "Beside " + name, List.of(why));
    }

    /** Whether a display would lock. */
    static Finding of(VideoSignal v) {
        Outcome sign = v.locks() == null ? Outcome.UNSURE : v.locks() ? Outcome.GOOD : Outcome.BAD;
        String title = v.locks() == null ? "Video" : v.locks() ? "A display would lock" : "A display would not lock";
        return new Finding(sign, title, v.reasons().stream().filter(r -> !r.startsWith(title)).toList());
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
