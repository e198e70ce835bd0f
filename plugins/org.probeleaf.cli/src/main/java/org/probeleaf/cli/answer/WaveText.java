// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.PrintStream;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

import org.probeleaf.waveform.compare.Comparison;
import org.probeleaf.waveform.judge.Judgement;
import org.probeleaf.waveform.measure.Figure;
import org.probeleaf.waveform.measure.FigureText;
import org.probeleaf.waveform.measure.LevelMethod;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.Si;
import org.probeleaf.waveform.report.CaptureReport;
import org.probeleaf.waveform.report.TraceReport;
import org.probeleaf.waveform.video.VideoSignal;

/** The answer of {@code wave} for people. */
public final class WaveText {

    private static final int NAME = 13;
    private static final int DIGITS = 4;
    private static final Map<String, String> NAMES = Map.ofEntries(Map.entry("low_V", "low"), Map.entry("high_V", "high"),
            Map.entry("amplitude_V", "amplitude"), Map.entry("min_V", "least"), Map.entry("max_V", "greatest"),
            Map.entry("mean_V", "mean"), Map.entry("rms_V", "RMS"), Map.entry("ac_rms_V", "RMS of AC"),
            Map.entry("crest", "crest factor"), Map.entry("frequency_Hz", "frequency"), Map.entry("period_s", "period"),
            Map.entry("duty", "duty factor"), Map.entry("rise_s", "rise 10-90 %"), Map.entry("fall_s", "fall 90-10 %"),
            Map.entry("overshoot_pct", "overshoot"), Map.entry("undershoot_pct", "undershoot"),
            Map.entry("pulse_s", "pulse"), Map.entry("separation_s", "pulse space"));

    private WaveText() {
    }

    /** What was assumed, each trace with verdict and figures, the difference. */
    public static void write(PrintStream out, CaptureReport report) {
        out.println("Read as " + report.notes().format() + ":");
        report.notes().assumed().forEach(n -> wrapped(out, "  ", n));
        report.traces().forEach(t -> trace(out, t));
        if (report.difference() != null) {
            difference(out, report.difference());
        }
    }

    private static void trace(PrintStream out, TraceReport t) {
        String what = t.measures() == null ? Words.count(t.samples(), "change")
                : Words.count(t.samples(), "sample") + (Double.isNaN(t.interval()) ? ""
                        : ", " + Si.text(t.interval(), "s") + " apart");
        out.println();
        Judgement j = t.judgement();
        out.println(t.name() + ": " + j.verdict().word().replace('-', ' ') + " (" + what + ")");
        j.reasons().forEach(r -> wrapped(out, "  ", r));
        if (!Double.isNaN(j.lowMargin()) || !Double.isNaN(j.highMargin())) {
            out.println("  Margin: low " + Si.text(j.lowMargin(), 3, t.unit()) + ", high " + Si.text(j.highMargin(), 3, t.unit())
                    + (j.toggles() == null ? "" : j.toggles() ? "; the next stage sees both states."
                            : "; the next stage sees one state only."));
        }
        t.figures().forEach((key, figure) -> {
            if (figure.known()) {
                out.println("    " + Words.padded(NAMES.get(key), NAME) + " " + value(key, figure, t.unit()));
            }
        });
        methods(out, t.measures());
        t.missing().forEach(m -> wrapped(out, "    ", "no " + named(m)));
        if (t.video() != null) {
            video(out, t.video());
        }
    }

    private static String named(String missing) {
        int colon = missing.indexOf(": ");
        List<String> names = Arrays.stream(missing.substring(0, colon).split(", ")).map(NAMES::get).toList();
        return String.join(", ", names) + missing.substring(colon);
    }

    /** Said only where a level is not the mode of the histogram. */
    private static void methods(PrintStream out, Measures m) {
        if (m == null || m.levels() == null) {
            return;
        }
        if (m.levels().lowBy() != LevelMethod.HISTOGRAM) {
            out.println("    low is the " + m.levels().lowBy().words() + ".");
        }
        if (m.levels().highBy() != LevelMethod.HISTOGRAM) {
            out.println("    high is the " + m.levels().highBy().words() + ".");
        }
    }

    /** A figure to the digit that its uncertainty leaves, four at most, with the uncertainty behind. */
    private static String value(String key, Figure f, String unit) {
        String u = key.endsWith("_V") ? unit : key.endsWith("_s") ? "s" : key.endsWith("_Hz") ? "Hz"
                : key.endsWith("_pct") ? "%" : "";
        return Words.padded(FigureText.value(f, DIGITS, u), 11) + unsure(f, u);
    }

    /** Nothing where it is a matter of rounding only. */
    private static String unsure(Figure f, String unit) {
        String text = FigureText.uncertainty(f, unit);
        return text.isEmpty() ? "" : " " + text;
    }

    private static void video(PrintStream out, VideoSignal v) {
        out.println("  Composite video" + (v.system() == null ? "" : ", " + v.system().title()) + ":");
        v.reasons().forEach(r -> wrapped(out, "    ", r));
        figure(out, "line rate", v.lineRate(), 6, "Hz");
        figure(out, "field rate", v.fieldRate(), 5, "Hz");
        figure(out, "sync depth", v.sync(), 3, "V");
        figure(out, "sync width", v.syncWidth(), 3, "s");
        figure(out, "front porch", v.frontPorch(), 3, "s");
        figure(out, "back porch", v.backPorch(), 3, "s");
        figure(out, "blank level", v.blank(), 3, "V");
        figure(out, "white", v.white(), 3, "V");
    }

    private static void figure(PrintStream out, String name, Figure f, int digits, String unit) {
        out.println("      " + Words.padded(name, NAME - 2) + " " + (f.known()
                ? Words.padded(Si.text(f.value(), digits, unit), 11) + unsure(f, unit)
                : "none: " + f.reason()));
    }

    private static void difference(PrintStream out, Comparison d) {
        out.println();
        out.println("Against " + d.name() + " of the reference: " + (d.same() ? "the same" : "it differs"));
        d.reasons().forEach(r -> wrapped(out, "  ", r));
        if (!Double.isNaN(d.rms())) {
            out.println("    shift        " + Si.text(d.shift(), "s"));
            out.println("    correlation  " + Si.text(d.correlation(), 4, ""));
            out.println("    gain         " + Si.text(d.gain(), 4, "") + ", offset " + Si.text(d.offset(), 3, "V"));
            out.println("    difference   " + Si.text(d.rms(), 3, "V") + " RMS, " + Si.text(d.max(), 3, "V") + " at most; "
                    + Si.text(d.scaledRms() * 100, 3, "%") + " in shape");
        }
    }

    private static void wrapped(PrintStream out, String pad, String text) {
        Words.wrapped(out, pad, Arrays.asList(text.split(" ")));
    }
}
