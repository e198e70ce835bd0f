// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.name.Tag;
import org.probeleaf.recognition.symbol.Body;
import org.probeleaf.recognition.wiring.Contact;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.Junction;
import org.probeleaf.schematic.netlist.LabelKind;
import org.probeleaf.schematic.netlist.NaturalOrder;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.NetLabel;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Sheet;
import org.probeleaf.schematic.netlist.SheetKind;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.schematic.partbook.PartBook;

/** Puts the readings of all pages together to one netlist. */
public final class NetlistBuilder {

    private static final double SURE = 0.98;
    private static final double DOUBTED = 0.6;
    private static final double LONGEST_STUB = 3.5;

    private final List<PageReading> pages;
    private final PartBook book;
    private final Nodes nodes;
    private final Refs refs = new Refs();
    private final Map<Integer, Draft> drafts = new LinkedHashMap<>();
    private final Map<String, PartDraft> parts = new TreeMap<>(NaturalOrder.INSTANCE);
    private final List<Doubt> doubts = new ArrayList<>();

    /** A net under construction. */
    private static final class Draft {
        final List<Wire> wires = new ArrayList<>();
        final List<Junction> junctions = new ArrayList<>();
        final List<NetLabel> labels = new ArrayList<>();
        final TreeSet<Integer> onPages = new TreeSet<>();
        int pins;
        int wireCount;
        /** Length of its lines in pitches. */
        double length;
        boolean doubted;
        String id;
    }

    /** A part under construction. */
    private static final class PartDraft {
        final List<PartUnit> units = new ArrayList<>();
        final List<DraftPin> pins = new ArrayList<>();
        String value;
    }

    private record DraftPin(String number, String name, String unit, int page, Point at, int net) {
    }

    /**
     * @param pages readings of the pages, by rising page number
     * @param book  knows the pins that a sheet does not draw
     */
    public NetlistBuilder(List<PageReading> pages, PartBook book) {
        this.pages = pages;
        this.book = book;
        this.nodes = new Nodes(pages);
    }

    /**
     * Builds the netlist.
     *
     * @param file   name of the sheet file
     * @param sha256 of its bytes
     * @param sheets its pages
     */
    public Netlist build(String file, String sha256, List<Sheet> sheets) {
        pages.forEach(p -> p.names().designators().values().forEach(t -> refs.note(t.text())));
        for (int p = 0; p < pages.size(); p++) {
            if (sheets.get(p).kind() == SheetKind.SCAN) {
                doubts.add(new Doubt("picture-page", pages.get(p).ink().page(), null,
                        "This page is a picture; the lines in pictures are not read yet."));
            }
            addConductors(p);
        }
        for (int p = 0; p < pages.size(); p++) {
            addParts(p);
        }
        List<Net> nets = nets();
        List<Part> partList = new ArrayList<>();
        ImpliedPins implied = new ImpliedPins(book, nets);
        parts.forEach((ref, draft) -> partList.add(
                implied.complete(new Part(ref, draft.value, draft.units, pins(draft)))));
        return new Netlist(file, sha256, sheets, partList, nets, doubts);
    }

    private void addConductors(int p) {
        PageReading page = pages.get(p);
        int number = page.ink().page();
        if (!page.complete()) {
            doubts.add(new Doubt("damaged-page", number, null,
                    "A part of this page could not be read: the file is damaged there. Get it again if you can."));
        }
        List<Segment> segments = page.conductors().segments();
        for (int s = 0; s < segments.size(); s++) {
            Draft net = draft(p, s);
            net.onPages.add(number);
            net.wireCount += page.conductors().isWire(s) ? 1 : 0;
            net.doubted |= !page.complete();
            net.length += segments.get(s).length() / page.ink().pitch();
            net.wires.add(new Wire(number, List.of(segments.get(s).a(), segments.get(s).b())));
        }
        for (Point junction : page.conductors().junctions()) {
            page.conductors().near(junction, page.ink().reach()).stream().findFirst()
                    .ifPresent(s -> draft(p, s).junctions.add(new Junction(number, junction)));
        }
        for (Tag tag : page.names().tags()) {
            draft(p, tag.segment()).labels.add(new NetLabel(tag.text(), number, tag.at(), tag.kind()));
        }
        Doubter doubter = new Doubter(page);
        doubts.addAll(doubter.doubts());
        doubter.segments().forEach(s -> draft(p, s).doubted = true);
        for (Tag tag : page.names().tags()) {
            draft(p, tag.segment()).doubted |= nodes.splitNames().contains(tag.text());
        }
        for (Point crossing : page.conductors().openCrossings()) {
            doubts.add(new Doubt("open-crossing", number, crossing,
                    "Four lines end on each other here without a dot; taken as a crossing, not a joint."));
            page.conductors().near(crossing, page.ink().reach()).forEach(s -> draft(p, s).doubted = true);
        }
    }

    private Draft draft(int page, int segment) {
        return drafts.computeIfAbsent(nodes.net(page, segment), k -> new Draft());
    }

    private void addParts(int p) {
        PageReading page = pages.get(p);
        int number = page.ink().page();
        Map<Integer, List<Contact>> contactsOf = new HashMap<>();
        page.contacts().forEach(c -> contactsOf.computeIfAbsent(c.body(), k -> new ArrayList<>()).add(c));
        boolean lettered = !page.names().designators().isEmpty();
        if (!lettered && !page.contacts().isEmpty()) {
            doubts.add(new Doubt("no-designators", number, null, "No designator was found on this page: its lettering"
                    + " may be drawn as outlines, or it is no wiring sheet. Nets are drawn, parts are not named."));
        }
        for (Body body : page.bodies()) {
            Text text = page.names().designators().get(body.id());
            if (text == null) {
                continue;
            }
            String unit = refs.unit(text.text());
            PartDraft part = parts.computeIfAbsent(refs.ref(text.text()), k -> new PartDraft());
            part.units.add(new PartUnit(unit, number, body.box()));
            if (part.value == null) {
                part.value = page.names().values().get(body.id());
            }
            for (Contact c : contactsOf.getOrDefault(body.id(), List.of())) {
                draft(p, c.segment()).pins++;
                part.pins.add(new DraftPin(page.names().numbers().get(c), page.names().names().get(c), unit, number,
                        c.outer(), nodes.net(p, c.segment())));
            }
        }
    }

    private List<Net> nets() {
        List<Draft> kept = drafts.values().stream().filter(NetlistBuilder::isNet)
                .sorted(Comparator.comparing((Draft d) -> d.onPages.first())).toList();
        List<Net> nets = new ArrayList<>();
        for (Draft d : kept) {
            d.id = "N" + (nets.size() + 1);
            nets.add(new Net(d.id, name(d), List.copyOf(d.onPages), d.wires, d.junctions, d.labels,
                    d.doubted ? DOUBTED : SURE));
        }
        return nets;
    }

    /** A lead or a stub no longer than one, without a name or a second pin, is a pin drawn unconnected, not a net. */
    private static boolean isNet(Draft d) {
        boolean stub = d.pins == 1 && d.labels.isEmpty() && d.length < LONGEST_STUB;
        return !stub && (d.wireCount > 0 || d.pins > 1 || !d.labels.isEmpty() && d.pins > 0);
    }

    /** A supply's name wins, then the name printed most often, then the shortest. */
    private static String name(Draft d) {
        Map<String, Integer> votes = new HashMap<>();
        for (NetLabel label : d.labels) {
            votes.merge(label.text(), label.kind() == LabelKind.POWER ? 1000 : 1, Integer::sum);
        }
        return votes.entrySet().stream()
                .max(Comparator.comparing((Map.Entry<String, Integer> e) -> e.getValue())
                        .thenComparing(e -> -e.getKey().length()).thenComparing(Map.Entry::getKey))
                .map(Map.Entry::getKey).orElse(null);
    }

    private List<Pin> pins(PartDraft part) {
        NaturalOrder natural = NaturalOrder.INSTANCE;
        return part.pins.stream()
                .sorted(Comparator.comparing(DraftPin::number, natural).thenComparing(DraftPin::name, natural)
                        .thenComparing(DraftPin::page).thenComparing(q -> q.at().y()).thenComparing(q -> q.at().x()))
                .map(q -> Pin.drawn(q.number(), q.name(), q.unit(), q.page(), q.at(), drafts.get(q.net()).id))
                .toList();
    }
}
