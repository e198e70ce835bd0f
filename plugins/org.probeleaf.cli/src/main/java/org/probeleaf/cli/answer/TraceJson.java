// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import com.fasterxml.jackson.core.JsonGenerator;

import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.SignalPath;
import org.probeleaf.trace.TracedPin;
import org.probeleaf.trace.follow.CutOff;
import org.probeleaf.trace.follow.Followed.Node;
import org.probeleaf.trace.follow.Step;
import org.probeleaf.trace.follow.Stop;

/** The answer of {@code trace} as JSON. */
public final class TraceJson {

    private final JsonGenerator out;
    private final TraceAnswer answer;

    private TraceJson(JsonGenerator out, TraceAnswer answer) {
        this.out = out;
        this.answer = answer;
    }

    /** Writes the keys of the answer into an open object. */
    public static void write(JsonGenerator out, TraceAnswer answer) throws IOException {
        new TraceJson(out, answer).write();
    }

    private void write() throws IOException {
        out.writeStringField("from", answer.net().from().text());
        net(answer.net().net());
        pins("pins", answer.net().pins());
        pins("drivers", answer.net().drivers());
        pins("loads", answer.net().loads());
        DriveJson.write(out, answer.drivers(), answer.budgets());
        out.writeArrayFieldStart("reached");
        reached(answer.followed().root(), new ArrayList<>());
        out.writeEndArray();
        out.writeFieldName("tree");
        tree(answer.followed().root());
        out.writeBooleanField("cut", answer.followed().cut());
        out.writeArrayFieldStart("paths");
        for (SignalPath path : answer.paths()) {
            out.writeStartArray();
            for (Place place : path.places()) {
                out.writeString(place.text());
            }
            out.writeEndArray();
        }
        out.writeEndArray();
        if (answer.cuts() != null) {
            cuts();
        }
    }

    private void cuts() throws IOException {
        out.writeArrayFieldStart("cuts");
        for (CutOff cut : answer.cuts()) {
            out.writeStartObject();
            out.writeStringField("change", cut.change() instanceof BoardChange.Lift ? "lift" : "remove");
            out.writeStringField("at", cut.subject());
            out.writeArrayFieldStart("nets");
            for (Net net : cut.nets()) {
                out.writeString(net.id());
            }
            out.writeEndArray();
            out.writeArrayFieldStart("pins");
            for (CutOff.Separated part : cut.parts()) {
                for (TracedPin pin : part.pins()) {
                    out.writeString(pin.place().text());
                }
            }
            out.writeEndArray();
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void net(Net net) throws IOException {
        out.writeObjectFieldStart("net");
        out.writeStringField("id", net.id());
        out.writeStringField("name", net.name());
        out.writeEndObject();
    }

    private void pins(String key, List<TracedPin> pins) throws IOException {
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

    /** The pins on each net of the tree, once; of supplies none, since everything hangs on them. */
    private void reached(Node node, List<Step> way) throws IOException {
        if (node.shownElsewhere() || node.kind().isSupply() && node.depth() > 0) {
            return;
        }
        Set<String> through = new LinkedHashSet<>();
        way.forEach(s -> {
            through.add(s.in().part().ref());
            through.add(s.out().part().ref());
        });
        for (TracedPin p : node.pins()) {
            out.writeStartObject();
            out.writeStringField("ref", p.part().ref());
            out.writeStringField("number", p.pin().number());
            out.writeStringField("name", p.name());
            out.writeStringField("net", p.pin().net());
            out.writeArrayFieldStart("through");
            for (String ref : through) {
                out.writeString(ref);
            }
            out.writeEndArray();
            out.writeNumberField("depth", node.depth());
            out.writeStringField("reason", node.step() == null ? null : node.step().reason());
            out.writeStringField("stop", node.stops().stream().filter(s -> s.at() != null && s.at().pin() == p.pin())
                    .map(Stop::reason).findFirst().orElse(null));
            out.writeEndObject();
        }
        for (Node next : node.next()) {
            way.add(next.step());
            reached(next, way);
            way.remove(way.size() - 1);
        }
    }

    private void tree(Node node) throws IOException {
        out.writeStartObject();
        net(node.net());
        out.writeStringField("kind", word(node.kind()));
        out.writeNumberField("depth", node.depth());
        if (node.step() != null) {
            out.writeObjectFieldStart("by");
            out.writeStringField("in", node.step().in().place().text());
            out.writeStringField("out", node.step().out().place().text());
            out.writeStringField("kind", word(node.step().kind()));
            out.writeStringField("reason", node.step().reason());
            out.writeEndObject();
        }
        out.writeArrayFieldStart("stops");
        for (Stop stop : answer.goesOn() ? node.stops() : List.<Stop>of()) {
            out.writeStartObject();
            out.writeStringField("kind", word(stop.kind()));
            out.writeStringField("at", stop.at() == null ? null : stop.at().place().text());
            if (stop.count() > 0) {
                out.writeNumberField("count", stop.count());
            }
            out.writeStringField("reason", stop.reason());
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayFieldStart("next");
        for (Node next : node.next()) {
            tree(next);
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
