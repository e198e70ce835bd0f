// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;

import com.fasterxml.jackson.core.JsonGenerator;

import org.probeleaf.job.JobSheet;
import org.probeleaf.job.JobState;
import org.probeleaf.job.LogEntry;
import org.probeleaf.job.details.Hazard;
import org.probeleaf.job.expectation.Verdict;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;

/** A job as JSON. */
public final class JobJson {

    private JobJson() {
    }

    /** Writes the keys of the answer into an open object. */
    public static void write(JsonGenerator out, Path file, JobState state) throws IOException {
        out.writeStringField("file", file.toString());
        out.writeStringField("unit", state.details().unit());
        out.writeStringField("customer", state.details().customer());
        out.writeStringField("complaint", state.details().complaint());
        out.writeStringField("technician", state.details().technician());
        out.writeArrayFieldStart("hazards");
        for (Hazard hazard : state.details().hazards()) {
            out.writeString(hazard.key());
        }
        out.writeEndArray();
        out.writeArrayFieldStart("sheets");
        for (JobSheet sheet : state.sheets()) {
            out.writeStartObject();
            out.writeStringField("file", sheet.fileName());
            out.writeStringField("sha256", sheet.sha256());
            out.writeNumberField("first_page", sheet.firstPage());
            out.writeNumberField("pages", sheet.pageCount());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeBooleanField("recognised", state.netlist() != null);
        out.writeNumberField("parts", state.netlist() == null ? 0 : state.netlist().parts().size());
        out.writeNumberField("nets", state.netlist() == null ? 0 : state.netlist().nets().size());
        marks(out, state);
        CorrectionJson.list(out, state);
        BoardJson.list(out, "board_changes", state.boards().kept());
        BoardJson.list(out, "open_changes", state.boards().open());
        log(out, state);
        out.writeStringField("undo", state.undoName());
        out.writeStringField("redo", state.redoName());
        out.writeNumberField("revision", state.revision());
    }

    private static void marks(JsonGenerator out, JobState state) throws IOException {
        out.writeArrayFieldStart("labels");
        for (LabelMark label : state.labels()) {
            start(out, label);
            out.writeStringField("text", label.text());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("notes");
        for (NoteMark note : state.notes()) {
            start(out, note);
            out.writeStringField("text", note.text());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("readings");
        for (ReadingMark reading : state.readings()) {
            start(out, reading);
            reading(out, reading);
            out.writeEndObject();
        }
        out.writeEndArray();
        captures(out, state);
    }

    private static void captures(JsonGenerator out, JobState state) throws IOException {
        out.writeArrayFieldStart("captures");
        for (CaptureMark capture : state.captures()) {
            start(out, capture);
            out.writeStringField("file", capture.fileName());
            out.writeStringField("sha256", capture.sha256());
            out.writeNumberField("size", capture.size());
            out.writeStringField("read_as", capture.readAs());
            out.writeStringField("note", capture.note());
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    /** Writes what a reading says into an open object. */
    static void reading(JsonGenerator out, ReadingMark r) throws IOException {
        out.writeStringField("typed", r.typed());
        out.writeStringField("kind", r.value().kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        out.writeNumberField("value", r.value().value());
        if (r.span().isPresent()) {
            out.writeNumberField("low", r.span().get().low().value());
            out.writeNumberField("high", r.span().get().high().value());
        }
        out.writeStringField("unit", r.value().kind().unit().symbol());
        out.writeStringField("remark", r.remark());
        out.writeStringField("conditions", r.circumstances().conditions());
        out.writeStringField("instrument", r.circumstances().instrument());
        out.writeStringField("expected", r.expectation() == null ? null : r.expectation().text());
        verdict(out, "verdict", r.verdict());
        verdict(out, "judged", r.judged());
    }

    private static void verdict(JsonGenerator out, String key, Verdict verdict) throws IOException {
        if (verdict == null) {
            out.writeNullField(key);
        } else {
            out.writeObjectFieldStart(key);
            out.writeStringField("outcome", verdict.outcome().name().toLowerCase(Locale.ROOT));
            out.writeStringField("reason", verdict.reason());
            out.writeEndObject();
        }
    }

    static void start(JsonGenerator out, Mark mark) throws IOException {
        out.writeStartObject();
        out.writeStringField("id", mark.id());
        out.writeStringField("at", mark.place().text());
        out.writeNumberField("page", mark.page());
        out.writeArrayFieldStart("point");
        out.writeNumber(mark.at().x());
        out.writeNumber(mark.at().y());
        out.writeEndArray();
        out.writeStringField("when", mark.when().toString());
    }

    private static void log(JsonGenerator out, JobState state) throws IOException {
        out.writeArrayFieldStart("log");
        for (LogEntry entry : state.log()) {
            out.writeStartObject();
            out.writeNumberField("number", entry.number());
            out.writeStringField("when", entry.when().toString());
            out.writeStringField("change", entry.words());
            out.writeStringField("status", entry.status().name().toLowerCase(Locale.ROOT));
            out.writeEndObject();
        }
        out.writeEndArray();
    }
}
