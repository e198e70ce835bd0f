// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code parts}, and that what it keeps counts for the other verbs. */
class PartsTest {

    @TempDir
    Path temp;

    private Map<String, String> env;

    @BeforeEach
    void ownFolder() {
        env = Map.of("PROBELEAF_PARTS", temp.resolve("mine").toString());
    }

    private Shell.Result run(Object... words) {
        return Shell.runWith(env, words);
    }

    private Path file(String text) throws IOException {
        return Files.writeString(temp.resolve("part.txt"), text);
    }

    @Test
    void parts_ofAValue_givesItsLines() {
        String out = run("parts", "SN74HCT32N").done().out();
        assertTrue(out.startsWith("part 7432 14 Quad 2-input OR"), out);
        assertTrue(out.contains("unit A OR 1,2 > 3"), out);
    }

    @Test
    void parts_alone_namesTheFolderAndWhatIsInIt() throws IOException {
        assertTrue(run("parts").done().out().contains("Your own book is empty; its folder is "
                + temp.resolve("mine")));
        run("parts", "--keep", file("part GLUE 1 A pin\n  spelt GLUE\n  1 in A\n")).done();
        assertTrue(run("parts").done().out().contains("GLUE  A pin, 1 pins"));
        run("parts", "--drop", "GLUE").done();
        assertFalse(run("parts").done().out().contains("GLUE"));
    }

    /** The read strobe's gate of the example, said to be driven the other way round. */
    @Test
    void trace_withAPartOfOnesOwn_goesByIt() throws IOException {
        String standard = run("parts", "7432").done().out();
        run("parts", "--keep", file(standard.replace("  9 in 3A", "  9 out 3A"))).done();
        Map<String, Object> answer = run("trace", Shell.EXAMPLE_NETS, "--from", "net:/RD", "--json", "-").done().json();
        List<?> drivers = ((List<?>) answer.get("drivers")).stream().map(d -> ((Map<?, ?>) d).get("ref")).toList();
        assertEquals(List.of("IC1", "IC5"), drivers);
    }

    @Test
    void badInput_isOneLine() throws IOException {
        run("parts", "NOSUCH99").failed(2, "NOSUCH99", "--keep");
        run("parts", "--drop", "7400").failed(2, "7400");
        run("parts", "--keep", temp.resolve("none.txt")).failed(3, "none.txt");
        run("parts", "--keep", file("part X 2 Two\n  1 in A\n")).failed(3, "part.txt", "1 of 2 pins");
        Files.createDirectories(temp.resolve("mine"));
        Files.writeString(temp.resolve("mine/odd.txt"), "pert X\n");
        run("trace", Shell.EXAMPLE_NETS, "--from", "net:/RD").failed(3, "odd.txt", "line 1");
        run("nets", Shell.EXAMPLE).failed(3, "odd.txt", "line 1");
    }
}
