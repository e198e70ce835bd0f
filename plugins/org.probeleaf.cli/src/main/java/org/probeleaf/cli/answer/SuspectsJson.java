// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.IOException;
import java.util.List;

import com.fasterxml.jackson.core.JsonGenerator;

import org.probeleaf.diagnosis.Finding;
import org.probeleaf.diagnosis.NextProbe;
import org.probeleaf.diagnosis.PossibleFault;
import org.probeleaf.diagnosis.Suspect;

/** The answer of {@code suspects} as JSON. */
public final class SuspectsJson {

    private SuspectsJson() {
    }

    /** Writes the keys of the answer into an open object. */
    public static void write(JsonGenerator out, Finding finding) throws IOException {
        out.writeArrayFieldStart("suspects");
        for (Suspect s : finding.suspects()) {
            out.writeStartObject();
            out.writeStringField("ref", s.ref());
            out.writeStringField("pin", s.pin());
            out.writeStringField("fault", s.fault());
            out.writeNumberField("weight", s.weight());
            out.writeStringField("why", s.why());
            out.writeArrayFieldStart("faults");
            for (PossibleFault f : s.faults()) {
                out.writeStartObject();
                out.writeStringField("pin", f.pin());
                out.writeStringField("kind", f.kind().word());
                out.writeStringField("fault", f.fault());
                out.writeNumberField("weight", f.weight());
                out.writeEndObject();
            }
            out.writeEndArray();
            out.writeEndObject();
        }
        out.writeEndArray();
        sets(out, "diagnoses", finding.diagnoses());
        next(out, finding.next());
        sets(out, "conflicts", finding.conflicts());
        out.writeArrayFieldStart("notes");
        for (String note : finding.notes()) {
            out.writeString(note);
        }
        out.writeEndArray();
    }

    private static void next(JsonGenerator out, NextProbe next) throws IOException {
        if (next == null) {
            out.writeNullField("next");
            return;
        }
        out.writeObjectFieldStart("next");
        out.writeStringField("at", next.at().text());
        out.writeStringField("net", next.net() == null ? null : next.net().title());
        out.writeNumberField("expected_probes", next.expectedProbes());
        out.writeStringField("why", next.why());
        out.writeEndObject();
    }

    private static void sets(JsonGenerator out, String key, List<List<String>> sets) throws IOException {
        out.writeArrayFieldStart(key);
        for (List<String> set : sets) {
            out.writeStartArray();
            for (String ref : set) {
                out.writeString(ref);
            }
            out.writeEndArray();
        }
        out.writeEndArray();
    }
}
