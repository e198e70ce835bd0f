// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import com.fasterxml.jackson.jr.ob.JSON;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NetsTest {

    @TempDir
    private Path folder;

    @Test
    void nets_forPeople_listsNetsWithTheirPins() {
        String out = Shell.run("nets", Shell.EXAMPLE_NETS).done().out();
        assertTrue(out.contains("2 sheets, 66 parts"), out);
        assertTrue(out.lines().anyMatch(l -> l.matches("  /RD +.*IC1\\.21.*IC13\\.1.*")), out);
    }

    @Test
    void nets_jsonToStandardOutput_isOneDocumentOfTheFormat() throws IOException {
        Map<String, Object> doc = Shell.run("nets", Shell.EXAMPLE, "--json", "-").done().json();
        assertEquals("probeleaf-netlist", doc.get("format"));
        assertEquals("tern-tl8.pdf", ((Map<?, ?>) doc.get("source")).get("file"));
        assertTrue(doc.keySet().containsAll(Set.of("version", "sheets", "parts", "nets", "warnings")));
    }

    @Test
    void nets_severalIntoAFolder_areNamedAfterTheirFiles() throws IOException {
        Path a = Fixtures.file(folder, "in/a.pdf", Fixtures.pdf(1));
        Path b = Fixtures.file(folder, "in/b.pdf", Fixtures.pdf(1));
        Shell.run("nets", "--json", folder.resolve("out"), a, b).done();
        assertEquals(Set.of("a.json", "b.json"), names("out"));
    }

    @Test
    void nets_severalOfOneName_areNamedAfterTheirFolders() throws IOException {
        Path a = Fixtures.file(folder, "a/sheet.pdf", Fixtures.pdf(1));
        Path b = Fixtures.file(folder, "b/sheet.pdf", Fixtures.pdf(1));
        assertEquals("", Shell.run("nets", "--json", folder.resolve("out") + "/", a, b).done().out());
        assertEquals(Set.of("a.json", "b.json"), names("out"));
    }

    @Test
    void nets_oneIntoAFolder_isNamedAfterItsFile() throws IOException {
        Path a = Fixtures.file(folder, "a/sheet.pdf", Fixtures.pdf(1));
        Shell.run("nets", a, "--json", folder.resolve("out") + "/").done();
        assertEquals(Set.of("sheet.json"), names("out"));
    }

    @Test
    void nets_oneOfSeveralUnreadable_readsTheOthersAndEndsWithThree() throws IOException {
        Path good = Fixtures.file(folder, "good.pdf", Fixtures.pdf(1));
        Path bad = Fixtures.file(folder, "bad.pdf", new byte[0]);
        Shell.run("nets", "--json", folder.resolve("out"), bad, good).failed(3, "bad.pdf");
        assertEquals(Set.of("good.json"), names("out"));
    }

    @Test
    void nets_pages_readsTheseOnly() throws IOException {
        Path file = Fixtures.file(folder, "five.pdf", Fixtures.pdf(5));
        Object sheets = Shell.run("nets", file, "--pages", "2-3,5", "--json", "-").done().json().get("sheets");
        assertEquals(List.of(2, 3, 5), ((List<?>) sheets).stream().map(s -> ((Map<?, ?>) s).get("page")).toList());
        Shell.run("nets", file, "--pages", "6").failed(2, "no page 6", "has 5");
        Shell.run("nets", file, "--pages", "3-1").failed(2, "3-1");
    }

    @Test
    void nets_timing_hasAnEntryForEachPageInOrder() throws IOException {
        Path file = Fixtures.file(folder, "three.pdf", Fixtures.pdf(3));
        Path timing = folder.resolve("timing.json");
        Shell.run("nets", file, "--timing", timing, "--json", folder.resolve("n.json")).done();
        List<?> sheets = (List<?>) JSON.std.mapFrom(Files.readString(timing)).get("sheets");
        assertEquals(List.of(1, 2, 3), sheets.stream().map(s -> ((Map<?, ?>) s).get("page")).toList());
        for (Object sheet : sheets) {
            Map<?, ?> s = (Map<?, ?>) sheet;
            double sum = number(s, "open") + number(s, "draw") + number(s, "recognise");
            assertEquals(sum, number(s, "total"), 1e-5);
            assertEquals(file.toString(), s.get("file"));
        }
    }

    @Test
    void nets_severalToStandardOutput_isAWrongCommandLine() throws IOException {
        Shell.run("nets", "--json", "-", Shell.EXAMPLE_NETS, Shell.EXAMPLE_NETS).failed(2, "name a folder");
        Path file = Fixtures.file(folder, "there.json", new byte[0]);
        Shell.run("nets", "--json", file, Shell.EXAMPLE_NETS, Shell.EXAMPLE_NETS).failed(2, "there.json", "folder");
    }

    @Test
    void nets_ofADocument_givesTheDocumentAgain() throws IOException {
        String once = Shell.run("nets", Shell.EXAMPLE_NETS, "--json", "-").done().out();
        Path copy = Files.writeString(folder.resolve("copy.json"), once);
        assertEquals(once, Shell.run("nets", copy, "--json", "-").done().out());
    }

    private static double number(Map<?, ?> map, String key) {
        return ((Number) map.get(key)).doubleValue();
    }

    private Set<String> names(String in) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(in))) {
            return files.map(p -> p.getFileName().toString()).collect(Collectors.toSet());
        }
    }
}
