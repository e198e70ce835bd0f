// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The shipped folder as a person runs it: as a process of its own, from a place with a space in its name. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the scripts are for a POSIX shell")
class ShippedCommandTest {

    @TempDir
    private Path folder;
    private Path home;

    @BeforeEach
    void copyTheFolder() throws IOException {
        assumeTrue(Files.isDirectory(House.core().resolve("lib")), "the folder is not assembled; run mvn verify");
        home = folder.resolve("my tools");
        try (Stream<Path> files = Files.walk(House.core())) {
            for (Path file : files.toList()) {
                if (!file.toString().endsWith(".jsa")) {
                    Files.copy(file, home.resolve(House.core().relativize(file).toString()));
                }
            }
        }
        assertTrue(home.resolve("bin/probeleaf").toFile().setExecutable(true));
    }

    @Test
    void command_firstRunAndLaterOnes_answerAlike() throws Exception {
        Ran first = run("--version");
        assertEquals("", first.err());
        assertTrue(first.out().startsWith("Probeleaf "), first.out());
        assertTrue(Files.size(home.resolve("lib/classes.jsa")) > 0, "the classes are kept");
        assertEquals(first, run("--version"));
    }

    @Test
    void command_resultsAndErrors_goTheirOwnWays() throws Exception {
        Path sheet = home.resolve("examples/tern-tl8/tern-tl8.pdf");
        Ran good = run("trace", sheet.toString(), "--from", "IC1.21");
        assertEquals(0, good.code(), good.err());
        assertEquals("", good.err(), "no progress where nobody watches");
        assertTrue(good.out().contains("/RD"), good.out());
        Ran bad = run("nets", folder.resolve("absent.pdf").toString());
        assertEquals(3, bad.code());
        assertEquals("", bad.out());
        assertEquals(1, bad.err().lines().count(), bad.err());
        assertEquals(2, run("frobnicate").code());
    }

    /** Signs outside ASCII get in and out, whatever locale the process starts with. */
    @Test
    void command_signsOutsideAscii_areKept() throws Exception {
        Path job = folder.resolve("job.probeleaf");
        assertEquals(0, run("job", "new", job.toString(), home.resolve("examples/tern-tl8/tern-tl8.pdf").toString(),
                "--customer", "Hafenb\u00fcro").code());
        Ran reading = run("reading", job.toString(), "IC1.11", "4.95V", "--expect", "5V\u00b15%");
        assertEquals(0, reading.code(), reading.err());
        assertTrue(reading.out().contains("5V\u00b15%: good"), reading.out());
        assertTrue(run("job", "show", job.toString()).out().contains("Hafenb\u00fcro"));
    }

    @Test
    void launchers_areSoundForAPlainShell() throws Exception {
        for (Path script : List.of(House.root().resolve("probeleaf"), House.root().resolve(".ci/run"),
                home.resolve("bin/probeleaf"))) {
            assertEquals("", run(List.of("sh", "-n", script.toString())).err());
            assertTrue(Files.isExecutable(script), script.toString());
        }
    }

    private record Ran(int code, String out, String err) {
    }

    private Ran run(String... words) throws Exception {
        List<String> line = new ArrayList<>(List.of(home.resolve("bin/probeleaf").toString()));
        line.addAll(List.of(words));
        return run(line);
    }

    private Ran run(List<String> line) throws Exception {
        Path out = Files.createTempFile(folder, "out", null);
        Path err = Files.createTempFile(folder, "err", null);
        ProcessBuilder builder = new ProcessBuilder(line).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().keySet().removeIf(k -> k.equals("LANG") || k.startsWith("LC_"));
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        Process process = builder.start();
        process.getOutputStream().close();
        int code = process.waitFor();
        return new Ran(code, Files.readString(out, StandardCharsets.UTF_8), Files.readString(err, StandardCharsets.UTF_8));
    }
}
