// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;

import com.fasterxml.jackson.jr.ob.JSON;

import org.probeleaf.cli.io.Console;

/** Runs command lines in this process and keeps what they say. */
final class Shell {

    /** The checkout, which has the example where the shipped folder has it. */
    static final Path ROOT = Path.of("../..").toAbsolutePath().normalize();
    static final Path EXAMPLE = ROOT.resolve("examples/tern-tl8/tern-tl8.pdf");
    static final Path EXAMPLE_NETS = ROOT.resolve("examples/tern-tl8/tern-tl8.json");

    private Shell() {
    }

    /** What a command line left behind. */
    record Result(int code, String out, String err) {

        /** It ended with the code and one line on standard error that holds each of the words. */
        Result failed(int expected, String... words) {
            assertEquals(expected, code, err);
            assertEquals(1, err.lines().count(), err);
            Arrays.stream(words).forEach(w -> assertTrue(err.contains(w), () -> "no \"" + w + "\" in: " + err));
            assertFalse(err.contains("Exception"), err);
            assertEquals("", out);
            return this;
        }

        /** It ended well and said nothing on standard error. */
        Result done() {
            assertEquals("", err);
            assertEquals(0, code);
            return this;
        }

        Map<String, Object> json() throws IOException {
            return JSON.std.mapFrom(out);
        }
    }

    /** Runs with an own part book that is empty. */
    static Result run(Object... words) {
        return runWith(Map.of("PROBELEAF_PARTS", "target/no-parts"), words);
    }

    static Result runWith(Map<String, String> env, Object... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), false, ROOT, env);
        int code = Main.run(Arrays.stream(words).map(Object::toString).toArray(String[]::new), console);
        return new Result(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
