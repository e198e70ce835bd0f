// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.json;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.jr.ob.JSON;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.Junction;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Sheet;
import org.probeleaf.schematic.netlist.SheetKind;
import org.probeleaf.schematic.netlist.Wire;

/** Reads the netlist document, checking as it goes. */
final class NetlistReader {

    private static final JSON READER =
            JSON.builder(JsonFactory.builder().disable(StreamReadFeature.AUTO_CLOSE_SOURCE).build()).build();

    private NetlistReader() {
    }

    static Netlist read(InputStream in) throws IOException {
        JsonObject doc = parse(in);
        String format = doc.map().get("format") instanceof String s ? s : null;
        if (!NetlistJson.FORMAT.equals(format)) {
            throw new IOException("is no netlist document: its \"format\" is not \"" + NetlistJson.FORMAT + "\"");
        }
        double version = doc.number("version", NetlistJson.VERSION);
        if (version > NetlistJson.VERSION) {
            throw new IOException("is a netlist document of version " + doc.text("version")
                    + ", which a newer Probeleaf wrote; this one reads up to version " + NetlistJson.VERSION);
        }
        Object source = doc.map().get("source");
        JsonObject from = JsonObject.from("source", source == null ? Map.of() : source);
        List<Part> parts = doc.objects("parts", NetlistReader::part);
        return new Netlist(orEmpty(from.text("file")), orEmpty(from.text("sha256")),
                doc.objects("sheets", NetlistReader::sheet), parts,
                withNetsOfPins(doc.objects("nets", NetlistReader::net), parts),
                doc.objects("warnings", NetlistReader::doubt));
    }

    private static JsonObject parse(InputStream in) throws IOException {
        try {
            Object value = READER.anyFrom(in);
            if (value instanceof Map<?, ?> map) {
                return new JsonObject("", map);
            }
        } catch (JsonProcessingException e) {
            String place = e.getLocation() == null ? "" : " at line " + e.getLocation().getLineNr()
                    + ", column " + e.getLocation().getColumnNr();
            throw new IOException("is no JSON that can be read: it breaks off or is malformed" + place, e);
        }
        throw new IOException("is no netlist document: it holds no JSON object");
    }

    private static Sheet sheet(JsonObject o) throws IOException {
        return new Sheet(o.page("page", 1), o.number("width", 0), o.number("height", 0),
                word(SheetKind.class, o, SheetKind.VECTOR));
    }

    private static Part part(JsonObject o) throws IOException {
        int page = o.page("page", 1);
        List<Pin> pins = o.objects("pins", pin -> pin(pin, page));
        List<PartUnit> units = o.objects("units",
                u -> new PartUnit(u.text("name"), u.page("page", page), orRound(u.box("box"), pins)));
        return new Part(o.neededText("ref"), o.text("value"),
                units.isEmpty() ? List.of(new PartUnit(null, page, orRound(o.box("box"), pins))) : units, pins);
    }

    private static Pin pin(JsonObject o, int page) throws IOException {
        boolean implied = o.flag("implied");
        return new Pin(o.text("number"), o.text("name"), o.text("unit"), o.page("page", page), o.point("at"),
                o.text("net"), implied);
    }

    private static Box orRound(Box box, List<Pin> pins) {
        if (box != null) {
            return box;
        }
        return pins.stream().filter(p -> p.at() != null).map(p -> Box.of(p.at())).reduce(Box::union)
                .orElse(new Box(0, 0, 0, 0));
    }

    private static Net net(JsonObject o) throws IOException {
        List<Wire> wires = o.objects("wires", NetlistReader::wire);
        List<Junction> junctions = o.objects("junctions",
                j -> new Junction(j.page("page", 1), j.neededPoint("at")));
        List<NetLabel> labels = o.objects("labels", l -> new NetLabel(l.neededText("text"), l.page("page", 1),
                l.neededPoint("at"), word(LabelKind.class, l, LabelKind.LABEL)));
        Set<Integer> pages = new TreeSet<>();
        for (Object page : o.items("pages")) {
            pages.add(JsonObject.page(page, o.where() + ".pages"));
        }
        if (!o.map().containsKey("pages")) {
            wires.forEach(w -> pages.add(w.page()));
            labels.forEach(l -> pages.add(l.page()));
        }
        return new Net(o.neededText("id"), o.text("name"), new ArrayList<>(pages), wires, junctions, labels,
                o.number("confidence", 1));
    }

    private static Wire wire(JsonObject o) throws IOException {
        List<Point> points = o.points("points");
        if (points.size() < 2) {
            throw JsonObject.bad(o.where() + ".points must be two points or more");
        }
        return new Wire(o.page("page", 1), points);
    }

    private static Doubt doubt(JsonObject o) throws IOException {
        return new Doubt(orEmpty(o.text("code")), o.page("page", 1), o.point("at"), orEmpty(o.text("text")));
    }

    /** The nets as listed, each once, and those that only pins speak of. */
    private static List<Net> withNetsOfPins(List<Net> listed, List<Part> parts) throws IOException {
        List<Net> nets = new ArrayList<>(listed);
        Set<String> ids = new HashSet<>();
        for (Net net : listed) {
            if (!ids.add(net.id())) {
                throw JsonObject.bad("two nets have the id \"" + net.id() + "\"");
            }
        }
        for (Part part : parts) {
            for (Pin pin : part.pins()) {
                if (pin.net() != null && ids.add(pin.net())) {
                    nets.add(new Net(pin.net(), null, List.of(pin.page()), List.of(), List.of(), List.of(), 1));
                }
            }
        }
        return nets;
    }

    /** The word under {@code kind}; one that is not known counts as {@code otherwise}. */
    private static <E extends Enum<E>> E word(Class<E> type, JsonObject o, E otherwise) throws IOException {
        String word = o.text("kind");
        for (E e : type.getEnumConstants()) {
            if (e.name().toLowerCase(Locale.ROOT).equals(word)) {
                return e;
            }
        }
        return otherwise;
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }
}
