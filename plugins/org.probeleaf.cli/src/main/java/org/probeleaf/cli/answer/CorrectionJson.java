// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.IOException;
import java.util.List;
import java.util.Locale;

import com.fasterxml.jackson.core.JsonGenerator;

import org.probeleaf.job.JobState;
import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Outcome;
import org.probeleaf.recognition.correction.Spot;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.SignalGraph;
import org.probeleaf.trace.TracedPin;

/** Corrections as JSON. */
public final class CorrectionJson {

    private CorrectionJson() {
    }

    /** Writes the list of a job's corrections into an open object. */
    public static void list(JsonGenerator out, JobState state) throws IOException {
        out.writeArrayFieldStart("corrections");
        List<KeptCorrection> all = state.sheetReading().corrections();
        for (int i = 0; i < all.size(); i++) {
            out.writeStartObject();
            out.writeNumberField("number", i + 1);
            out.writeStringField("id", all.get(i).id());
            correction(out, all.get(i).correction(), state.sheetReading().outcome(i));
            out.writeStringField("when", all.get(i).when().toString());
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    /** Writes what a correction has done into an open object. */
    public static void done(JsonGenerator out, Correction correction, Outcome outcome, Netlist before, Netlist after)
            throws IOException {
        correction(out, correction, outcome);
        SignalGraph graph = SignalGraph.of(after, PartBook.standard());
        out.writeArrayFieldStart("nets");
        for (Net net : CorrectionText.changed(before, after)) {
            out.writeStartObject();
            out.writeStringField("id", net.id());
            out.writeStringField("name", net.name());
            out.writeArrayFieldStart("pins");
            for (TracedPin pin : graph.pinsOn(net.id())) {
                out.writeString(pin.place().text());
            }
            out.writeEndArray();
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private static void correction(JsonGenerator out, Correction correction, Outcome outcome) throws IOException {
        Spot spot = correction.spots().get(0);
        out.writeStringField("correction", correction.words());
        out.writeNumberField("page", spot.page());
        out.writeArrayFieldStart("point");
        out.writeNumber(spot.at().x());
        out.writeNumber(spot.at().y());
        out.writeEndArray();
        out.writeStringField("state", outcome == null ? null
                : outcome.state().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        out.writeStringField("why", outcome == null ? "" : outcome.why());
    }
}
