// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.IOException;
import java.io.PrintStream;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

import com.fasterxml.jackson.core.JsonGenerator;

import org.probeleaf.job.history.HistoryStep;
import org.probeleaf.job.history.HistoryStep.Captured;
import org.probeleaf.job.history.HistoryStep.Done;
import org.probeleaf.job.history.HistoryStep.Read;
import org.probeleaf.job.history.PlaceHistory;
import org.probeleaf.schematic.place.Place;

/** The answer of {@code history}. */
public final class HistoryText {

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm").withZone(ZoneId.systemDefault());

    private HistoryText() {
    }

    /** A line for each step, the oldest first. */
    public static void write(PrintStream out, Place place, PlaceHistory history) {
        if (history.steps().isEmpty()) {
            out.println("Nothing has been read at " + place.text() + " yet.");
        }
        for (HistoryStep step : history.steps()) {
            out.println(WHEN.format(step.when()) + "  " + words(step));
        }
    }

    private static String words(HistoryStep step) {
        if (step instanceof Done done) {
            return "-- " + done.words();
        }
        if (step instanceof Captured captured) {
            return captured.capture().place().text() + "  waveform " + captured.capture().fileName();
        }
        Read read = (Read) step;
        String change = read.changeText();
        String beside = change.isEmpty() ? "" : "; " + change + (read.board().isEmpty() ? "" : " " + read.board());
        return JobText.reading(read.reading()) + beside;
    }

    /** Writes the keys of the answer into an open object. */
    public static void json(JsonGenerator out, Place place, PlaceHistory history) throws IOException {
        out.writeStringField("at", place.text());
        out.writeArrayFieldStart("steps");
        for (HistoryStep step : history.steps()) {
            if (step instanceof Read read) {
                JobJson.start(out, read.reading());
                out.writeStringField("what", "reading");
                JobJson.reading(out, read.reading());
                if (Double.isNaN(read.change())) {
                    out.writeNullField("change");
                } else {
                    out.writeNumberField("change", read.change());
                }
                out.writeStringField("board", read.board());
            } else if (step instanceof Captured captured) {
                JobJson.start(out, captured.capture());
                out.writeStringField("what", "waveform");
                out.writeStringField("file", captured.capture().fileName());
            } else {
                out.writeStartObject();
                out.writeStringField("what", "board");
                out.writeStringField("when", step.when().toString());
                out.writeStringField("words", ((Done) step).words());
            }
            out.writeEndObject();
        }
        out.writeEndArray();
    }
}
