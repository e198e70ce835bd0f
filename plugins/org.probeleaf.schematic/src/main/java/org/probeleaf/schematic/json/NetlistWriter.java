// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.json;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.Junction;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Sheet;
import org.probeleaf.schematic.netlist.Wire;

/** Writes the netlist document as a stream: one line a part, pin, wire and label, so that two can be compared. */
final class NetlistWriter {

    private static final JsonFactory JSON = JsonFactory.builder().build();

    private final JsonGenerator out;

    private NetlistWriter(JsonGenerator out) {
        this.out = out;
    }

    static void write(Netlist netlist, OutputStream stream) throws IOException {
        try (JsonGenerator g = JSON.createGenerator(stream)) {
            g.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            g.setPrettyPrinter(new LinePrinter());
            new NetlistWriter(g).document(netlist);
            g.writeRaw('\n');
        }
    }

    private void document(Netlist n) throws IOException {
        out.writeStartObject();
        out.writeStringField("format", NetlistJson.FORMAT);
        out.writeNumberField("version", NetlistJson.VERSION);
        out.writeObjectFieldStart("source");
        out.writeStringField("file", n.file());
        out.writeStringField("sha256", n.sha256());
        out.writeEndObject();
        list("sheets", n.sheets(), this::sheet);
        list("parts", n.parts(), this::part);
        list("nets", n.nets(), this::net);
        list("warnings", n.doubts(), this::doubt);
        out.writeEndObject();
    }

    private void sheet(Sheet s) throws IOException {
        out.writeStartObject();
        out.writeNumberField("page", s.page());
        length("width", s.width());
        length("height", s.height());
        out.writeStringField("kind", s.kind().name().toLowerCase(Locale.ROOT));
        out.writeEndObject();
    }

    private void part(Part p) throws IOException {
        PartUnit first = p.units().get(0);
        out.writeStartObject();
        out.writeStringField("ref", p.ref());
        out.writeStringField("value", p.value());
        out.writeNumberField("page", first.page());
        box(first.box());
        list("units", p.units(), this::unit);
        list("pins", p.pins(), this::pin);
        out.writeEndObject();
    }

    private void unit(PartUnit u) throws IOException {
        out.writeStartObject();
        out.writeStringField("name", u.name());
        out.writeNumberField("page", u.page());
        box(u.box());
        out.writeEndObject();
    }

    private void pin(Pin p) throws IOException {
        out.writeStartObject();
        out.writeStringField("number", p.number());
        out.writeStringField("name", p.name());
        out.writeStringField("unit", p.unit());
        at(p.at());
        out.writeNumberField("page", p.page());
        out.writeStringField("net", p.net());
        if (p.implied()) {
            out.writeBooleanField("implied", true);
        }
        out.writeEndObject();
    }

    private void net(Net n) throws IOException {
        out.writeStartObject();
        out.writeStringField("id", n.id());
        out.writeStringField("name", n.name());
        out.writeArrayFieldStart("pages");
        for (int page : n.pages()) {
            out.writeNumber(page);
        }
        out.writeEndArray();
        list("wires", n.wires(), this::wire);
        list("junctions", n.junctions(), this::junction);
        list("labels", n.labels(), this::label);
        out.writeFieldName("confidence");
        number(n.confidence(), 4);
        out.writeEndObject();
    }

    private void wire(Wire w) throws IOException {
        out.writeStartObject();
        out.writeNumberField("page", w.page());
        out.writeArrayFieldStart("points");
        for (Point p : w.points()) {
            point(p);
        }
        out.writeEndArray();
        out.writeEndObject();
    }

    private void junction(Junction j) throws IOException {
        out.writeStartObject();
        out.writeNumberField("page", j.page());
        at(j.at());
        out.writeEndObject();
    }

    private void label(NetLabel l) throws IOException {
        out.writeStartObject();
        out.writeStringField("text", l.text());
        out.writeNumberField("page", l.page());
        at(l.at());
        out.writeStringField("kind", l.kind().name().toLowerCase(Locale.ROOT));
        out.writeEndObject();
    }

    private void doubt(Doubt d) throws IOException {
        out.writeStartObject();
        out.writeStringField("code", d.code());
        out.writeNumberField("page", d.page());
        at(d.at());
        out.writeStringField("text", d.text());
        out.writeEndObject();
    }

    private void at(Point p) throws IOException {
        out.writeFieldName("at");
        if (p == null) {
            out.writeNull();
        } else {
            point(p);
        }
    }

    private void point(Point p) throws IOException {
        out.writeStartArray();
        number(p.x(), 3);
        number(p.y(), 3);
        out.writeEndArray();
    }

    private void box(Box b) throws IOException {
        out.writeArrayFieldStart("box");
        number(b.x0(), 3);
        number(b.y0(), 3);
        number(b.x1(), 3);
        number(b.y1(), 3);
        out.writeEndArray();
    }

    private void length(String key, double points) throws IOException {
        out.writeFieldName(key);
        number(points, 3);
    }

    private void number(double v, int places) throws IOException {
        BigDecimal d = BigDecimal.valueOf(v).setScale(places, RoundingMode.HALF_EVEN).stripTrailingZeros();
        out.writeNumber(d.scale() < 1 ? d.setScale(1).toPlainString() : d.toPlainString());
    }

    private <T> void list(String key, List<T> items, Each<T> each) throws IOException {
        out.writeArrayFieldStart(key);
        for (T item : items) {
            each.write(item);
        }
        out.writeEndArray();
    }

    private interface Each<T> {
        void write(T item) throws IOException;
    }
}
