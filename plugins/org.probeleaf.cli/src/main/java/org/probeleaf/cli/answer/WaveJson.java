// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;

import com.fasterxml.jackson.core.JsonGenerator;

import org.probeleaf.waveform.compare.Comparison;
import org.probeleaf.waveform.judge.Judgement;
import org.probeleaf.waveform.measure.Figure;
import org.probeleaf.waveform.report.CaptureReport;
import org.probeleaf.waveform.report.TraceReport;
import org.probeleaf.waveform.video.VideoSignal;

/** The answer of {@code wave} as JSON. */
public final class WaveJson {

    private static final MathContext DIGITS = new MathContext(10);

    private WaveJson() {
    }

    /** Writes the keys of the answer into an open object. */
    public static void write(JsonGenerator out, CaptureReport report) throws IOException {
        out.writeStringField("format", report.notes().format());
        strings(out, "assumed", report.notes().assumed());
        out.writeArrayFieldStart("channels");
        for (TraceReport trace : report.traces()) {
            out.writeStartObject();
            trace(out, trace);
            out.writeEndObject();
        }
        out.writeEndArray();
        difference(out, report.difference());
    }

    private static void trace(JsonGenerator out, TraceReport t) throws IOException {
        out.writeStringField("name", t.name());
        out.writeStringField("unit", t.unit());
        out.writeNumberField("samples", t.samples());
        number(out, "interval_s", t.interval());
        for (Map.Entry<String, Figure> f : t.figures().entrySet()) {
            number(out, f.getKey(), f.getValue().value());
        }
        out.writeObjectFieldStart("uncertainty");
        for (Map.Entry<String, Figure> f : t.figures().entrySet()) {
            if (f.getValue().known()) {
                number(out, f.getKey(), f.getValue().uncertainty());
            }
        }
        out.writeEndObject();
        if (t.measures() != null && t.measures().levels() != null) {
            out.writeStringField("low_by", t.measures().levels().lowBy().words());
            out.writeStringField("high_by", t.measures().levels().highBy().words());
        }
        Judgement j = t.judgement();
        out.writeStringField("verdict", j.verdict().word());
        strings(out, "findings", j.findings().stream().map(v -> v.word()).toList());
        number(out, "low_margin_V", j.lowMargin());
        number(out, "high_margin_V", j.highMargin());
        bool(out, "toggles", j.toggles());
        out.writeArrayFieldStart("reasons");
        for (String reason : j.reasons()) {
            out.writeString(reason);
        }
        for (String reason : t.missing()) {
            out.writeString(reason);
        }
        out.writeEndArray();
        video(out, t.video());
    }

    private static void video(JsonGenerator out, VideoSignal v) throws IOException {
        if (v == null) {
            out.writeNullField("video");
            return;
        }
        out.writeObjectFieldStart("video");
        out.writeStringField("system", v.system() == null ? null : v.system().title());
        if (v.system() == null) {
            out.writeNullField("lines");
        } else {
            out.writeNumberField("lines", v.system().lines());
        }
        number(out, "line_Hz", v.lineRate().value());
        number(out, "field_Hz", v.fieldRate().value());
        number(out, "lines_per_field", v.lines().value());
        bool(out, "interlaced", v.interlaced());
        number(out, "sync_V", v.sync().value());
        number(out, "sync_s", v.syncWidth().value());
        number(out, "front_porch_s", v.frontPorch().value());
        number(out, "back_porch_s", v.backPorch().value());
        number(out, "blank_V", v.blank().value());
        number(out, "white_V", v.white().value());
        bool(out, "would_lock", v.locks());
        strings(out, "reasons", v.reasons());
        out.writeEndObject();
    }

    private static void difference(JsonGenerator out, Comparison d) throws IOException {
        if (d == null) {
            out.writeNullField("difference");
            return;
        }
        out.writeObjectFieldStart("difference");
        out.writeStringField("reference", d.name());
        out.writeStringField("verdict", d.same() ? "same" : "differs");
        number(out, "shift_s", d.shift());
        number(out, "correlation", d.correlation());
        number(out, "gain", d.gain());
        number(out, "offset_V", d.offset());
        number(out, "rms_V", d.rms());
        number(out, "max_V", d.max());
        number(out, "scaled_pct", d.scaledRms() * 100);
        number(out, "outside_pct", d.outside() * 100);
        strings(out, "reasons", d.reasons());
        out.writeEndObject();
    }

    private static void strings(JsonGenerator out, String key, List<String> values) throws IOException {
        out.writeArrayFieldStart(key);
        for (String value : values) {
            out.writeString(value);
        }
        out.writeEndArray();
    }

    private static void bool(JsonGenerator out, String key, Boolean value) throws IOException {
        if (value == null) {
            out.writeNullField(key);
        } else {
            out.writeBooleanField(key, value);
        }
    }

    /** Ten digits; what has no value is null. */
    private static void number(JsonGenerator out, String key, double value) throws IOException {
        if (Double.isFinite(value)) {
            out.writeNumberField(key, new BigDecimal(value).round(DIGITS).doubleValue());
        } else {
            out.writeNullField(key);
        }
    }
}
