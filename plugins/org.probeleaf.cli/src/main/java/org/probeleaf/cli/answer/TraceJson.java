// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.IOException;
import java.util.List;

import com.fasterxml.jackson.core.JsonGenerator;

import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.NetTrace;
import org.probeleaf.trace.SignalPath;
import org.probeleaf.trace.TracedPin;

/** The answer of {@code trace} as JSON. */
public final class TraceJson {

    private TraceJson() {
    }

    /** Writes the keys of the answer into an open object. */
    public static void write(JsonGenerator out, NetTrace trace, List<SignalPath> paths) throws IOException {
        out.writeStringField("from", trace.from().text());
        out.writeObjectFieldStart("net");
        out.writeStringField("id", trace.net().id());
        out.writeStringField("name", trace.net().name());
        out.writeEndObject();
        pins(out, "pins", trace.pins());
        pins(out, "drivers", trace.drivers());
        pins(out, "loads", trace.loads());
        reached(out, trace);
        out.writeArrayFieldStart("paths");
        for (SignalPath path : paths) {
            out.writeStartArray();
            for (Place place : path.places()) {
                out.writeString(place.text());
            }
            out.writeEndArray();
        }
        out.writeEndArray();
    }

    private static void pins(JsonGenerator out, String key, List<TracedPin> pins) throws IOException {
        out.writeArrayFieldStart(key);
        for (TracedPin p : pins) {
            out.writeStartObject();
            out.writeStringField("ref", p.part().ref());
            out.writeStringField("number", p.pin().number());
            out.writeStringField("name", p.name());
            out.writeStringField("direction", p.direction().word());
            out.writeNumberField("page", p.pin().page());
            if (p.pin().at() == null) {
                out.writeNullField("at");
            } else {
                out.writeArrayFieldStart("at");
                out.writeNumber(p.pin().at().x());
                out.writeNumber(p.pin().at().y());
                out.writeEndArray();
            }
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    /** What the signal reaches without going through a part: the pins of its own net. */
    private static void reached(JsonGenerator out, NetTrace trace) throws IOException {
        out.writeArrayFieldStart("reached");
        for (TracedPin p : trace.pins()) {
            out.writeStartObject();
            out.writeStringField("ref", p.part().ref());
            out.writeStringField("number", p.pin().number());
            out.writeStringField("net", p.pin().net());
            out.writeArrayFieldStart("through");
            out.writeEndArray();
            out.writeNumberField("depth", 0);
            out.writeEndObject();
        }
        out.writeEndArray();
    }
}
