// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

class NetlistJsonTest {

    @Property(tries = 300)
    void read_ofWritten_givesTheSameNetlist(@ForAll("netlists") Netlist netlist) throws IOException {
        assertEquals(netlist, read(write(netlist)));
    }

    @Test
    void write_shortNetlist_hasTheKeysOfTheFormat() throws IOException {
        Netlist n = new Netlist("b.pdf", "ab", List.of(new Sheet(1, 842, 595, SheetKind.VECTOR)),
                List.of(new Part("IC3", "74LS00", List.of(new PartUnit("A", 1, new Box(1, 2, 3, 4.25))),
                        List.of(new Pin("14", "VCC", null, 1, null, "N2", true)))),
                List.of(), List.of());
        String text = write(n);
        assertTrue(text.contains("\"format\": \"probeleaf-netlist\""), text);
        assertTrue(text.contains("\"source\": {\"file\": \"b.pdf\", \"sha256\": \"ab\"}"), text);
        assertTrue(text.contains("{\"page\": 1, \"width\": 842.0, \"height\": 595.0, \"kind\": \"vector\"}"), text);
        assertTrue(text.contains("\"box\": [1.0, 2.0, 3.0, 4.25]"), text);
        assertTrue(text.contains("\"at\": null, \"page\": 1, \"net\": \"N2\", \"implied\": true"), text);
        assertTrue(text.contains("\"warnings\": []"), text);
    }

    @Test
    void read_documentByOthers_makesDoWithoutWhatCanBeHad() throws IOException {
        Netlist n = read("""
                {"format": "probeleaf-netlist", "version": 1, "extra": {"a": [1, null]},
                 "parts": [{"ref": "R1", "pins": [{"number": 1, "at": [10, 20], "net": "N1", "page": 2},
                                                  {"number": "2", "at": [10, 30], "net": null}]}],
                 "nets": [{"id": "N7", "wires": [{"page": 3, "points": [[0, 0], [1, 0]]}]}]}""");
        Part r1 = n.part("R1").orElseThrow();
        assertEquals("1", r1.pins().get(0).number());
        assertNull(r1.value());
        assertEquals(new Box(10, 20, 10, 30), r1.units().get(0).box());
        assertEquals(List.of(3), n.net("N7").orElseThrow().pages());
        assertEquals(List.of(2), n.net("N1").orElseThrow().pages());
        assertEquals(1.0, n.net("N7").orElseThrow().confidence());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "[]", "3", "{", "{\"format\": \"probeleaf-netlist\"", "{}", "nonsense",
        "{\"format\": \"other\"}", "{\"format\": \"probeleaf-netlist\", \"version\": 2}",
        "{\"format\": \"probeleaf-netlist\", \"parts\": 3}",
        "{\"format\": \"probeleaf-netlist\", \"parts\": [{}]}",
        "{\"format\": \"probeleaf-netlist\", \"parts\": [{\"ref\": \"R1\", \"box\": [1]}]}",
        "{\"format\": \"probeleaf-netlist\", \"parts\": [{\"ref\": \"R1\", \"page\": 0}]}",
        "{\"format\": \"probeleaf-netlist\", \"parts\": [{\"ref\": [\"R1\"]}]}",
        "{\"format\": \"probeleaf-netlist\", \"nets\": [{\"id\": \"N1\"}, {\"id\": \"N1\"}]}",
        "{\"format\": \"probeleaf-netlist\", \"nets\": [{\"id\": \"N1\", \"wires\": [{\"points\": [[1, 2]]}]}]}",
        "{\"format\": \"probeleaf-netlist\", \"nets\": [{\"id\": \"N1\", \"labels\": [{\"text\": \"A\"}]}]}"})
    void read_malformed_saysSoInOneLine(String text) {
        IOException e = assertThrows(IOException.class, () -> read(text));
        assertFalse(e.getMessage().isBlank());
        assertFalse(e.getMessage().contains("\n"), e.getMessage());
    }

    @Test
    void read_deeplyNested_isRefused() {
        assertThrows(IOException.class, () -> read("[".repeat(100_000)));
    }

    private static String write(Netlist netlist) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        NetlistJson.write(netlist, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static Netlist read(String text) throws IOException {
        return NetlistJson.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    @Provide
    Arbitrary<Netlist> netlists() {
        Arbitrary<Point> point = Combinators.combine(length(), length()).as(Point::new);
        Arbitrary<Box> box = Combinators.combine(point, point).as((a, b) -> Box.of(a.x(), a.y(), b.x(), b.y()));
        Arbitrary<Integer> page = Arbitraries.integers().between(1, 12);
        Arbitrary<String> text = Arbitraries.strings().all().ofMaxLength(6).map(NetlistJsonTest::whole);
        Arbitrary<String> maybe = text.injectNull(0.3);
        Arbitrary<String> net = Arbitraries.of("N1", "N2");
        Arbitrary<Sheet> sheet = Combinators.combine(page, length(), length(), Arbitraries.of(SheetKind.class))
                .as(Sheet::new);
        Arbitrary<Pin> pin = Combinators.combine(maybe, maybe, maybe, page, point.injectNull(0.1),
                net.injectNull(0.2), Arbitraries.of(true, false)).as(Pin::new);
        Arbitrary<PartUnit> unit = Combinators.combine(maybe, page, box).as(PartUnit::new);
        Arbitrary<Part> part = Combinators.combine(text, maybe, unit.list().ofMinSize(1).ofMaxSize(3),
                pin.list().ofMaxSize(4)).as(Part::new);
        Arbitrary<Wire> wire = Combinators.combine(page, point.list().ofMinSize(2).ofMaxSize(4)).as(Wire::new);
        Arbitrary<Junction> junction = Combinators.combine(page, point).as(Junction::new);
        Arbitrary<NetLabel> label = Combinators.combine(text, page, point, Arbitraries.of(LabelKind.class))
                .as(NetLabel::new);
        Arbitrary<Doubt> doubt = Combinators.combine(text, page, point.injectNull(0.2), text).as(Doubt::new);
        Arbitrary<List<Integer>> pages = page.set().ofMaxSize(3).map(s -> s.stream().sorted().toList());
        Arbitrary<Double> sure = Arbitraries.integers().between(0, 10_000).map(i -> i / 10_000.0);
        Arbitrary<Net> body = Combinators.combine(maybe, pages, wire.list().ofMaxSize(3),
                junction.list().ofMaxSize(2), label.list().ofMaxSize(2), sure)
                .as((name, on, wires, joints, labels, c) -> new Net("?", name, on, wires, joints, labels, c));
        Arbitrary<List<Net>> nets = Combinators.combine(body, body)
                .as((a, b) -> List.of(withId(a, "N1"), withId(b, "N2")));
        return Combinators.combine(text, text, sheet.list().ofMaxSize(3), part.list().ofMaxSize(3), nets,
                doubt.list().ofMaxSize(3)).as(Netlist::new);
    }

    private static Net withId(Net n, String id) {
        return new Net(id, n.name(), n.pages(), n.wires(), n.junctions(), n.labels(), n.confidence());
    }

    /** Lengths as a document holds them: to a thousandth of a point. */
    private static Arbitrary<Double> length() {
        return Arbitraries.integers().between(-2_000_000, 20_000_000).map(i -> i / 1000.0);
    }

    /** UTF-8 has no half surrogate pairs. */
    private static String whole(String s) {
        return new String(s.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
    }
}
