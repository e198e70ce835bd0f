// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import org.probeleaf.cli.Shell.Result;

class CommandLineTest {

    @TempDir
    private Path folder;

    @Test
    void help_namesEveryVerb() {
        String out = Shell.run("--help").done().out();
        verbs().forEach(v -> assertTrue(out.lines().anyMatch(l -> l.startsWith("  " + v + " ")), v));
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void help_ofAVerb_saysWhatItDoesAndWhatEachWordMeans(String verb) {
        String out = Shell.run(verb, "--help").done().out();
        assertTrue(out.startsWith("Usage: probeleaf " + verb), out);
        assertTrue(out.lines().count() > 5, out);
        assertTrue(out.lines().allMatch(l -> l.length() <= 100), out);
    }

    @ParameterizedTest
    @ValueSource(strings = {"new", "show", "check"})
    void help_ofAJobVerb_saysWhatItDoes(String verb) {
        assertTrue(Shell.run("job", verb, "--help").done().out().startsWith("Usage: probeleaf job " + verb));
    }

    @Test
    void noVerb_showsTheHelpOnStandardErrorAndEndsWithTwo() {
        Result result = Shell.run();
        assertEquals(2, result.code());
        assertEquals("", result.out());
        assertTrue(result.err().contains("Verbs:"), result.err());
    }

    @Test
    void version_isPrinted() {
        assertTrue(Shell.run("--version").done().out().startsWith("Probeleaf "));
    }

    @ParameterizedTest
    @ValueSource(strings = {"frobnicate", "nets", "nets --frobnicate x.pdf", "trace x.pdf", "trace --from IC1.1", "job",
        "job new", "job frobnicate x", "label", "label x.probeleaf", "label x.probeleaf IC1", "reading x.probeleaf IC1",
        "note x.probeleaf", "undo", "handover x.probeleaf", "window a b",
        "nets x.pdf --pages 0", "nets x.pdf --pages a-b", "trace x.pdf --from 1@2", "label x.probeleaf 7@ text"})
    void wrongCommandLine_isToldInOneLineAndEndsWithTwo(String line) {
        Shell.run((Object[]) line.split(" ")).failed(2);
    }

    @Test
    void failureInside_showsItsPlaceOnlyWithDebug() {
        Path file = folder.resolve("absent.pdf");
        assertFalse(Shell.run("nets", file).err().contains("\tat "));
        assertTrue(Shell.run("nets", "--debug", file).err().contains("\tat "));
    }

    @Test
    void jsonThatCannotBeWritten_isToldAndEndsWithOne() {
        Shell.run("nets", Shell.EXAMPLE_NETS, "--json", Shell.EXAMPLE + "/x.json").failed(1, "x.json",
                "cannot be written");
    }

    @Test
    void window_withoutWorkbench_saysSo() {
        Shell.run("window").failed(1, "window");
        Shell.run("window", folder.resolve("absent.pdf")).failed(3, "absent.pdf");
    }

    static Stream<String> verbs() {
        return Stream.of("nets", "trace", "job", "label", "note", "reading", "undo", "redo", "handover", "window", "correct",
                "change", "putback", "boards", "parts", "demo");
    }
}
