// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

import org.probeleaf.cli.io.Console;

/**
 * Runs the common verbs once on the shipped example, so that the Java platform can keep the classes they load for a
 * faster start. What it writes goes to a temporary folder and is removed.
 */
public final class Rehearsal {

    private Rehearsal() {
    }

    /** The process; it says nothing. */
    public static void main(String[] args) throws IOException {
        String home = System.getProperty("probeleaf.home");
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
        Console console = new Console(nowhere, nowhere, true, home == null ? null : Path.of(home), Map.of());
        Path folder = Files.createTempDirectory("probeleaf-rehearsal");
        try {
            Main.run(new String[] {"--help"}, console);
            Path sheet = home == null ? null : Path.of(home, "examples", "tern-tl8", "tern-tl8.pdf");
            if (sheet != null && Files.exists(sheet)) {
                play(console, sheet.toString(), folder);
            }
        } finally {
            remove(folder);
        }
    }

    private static void play(Console console, String sheet, Path folder) {
        String nets = folder.resolve("nets.json").toString();
        String job = folder.resolve("job.probeleaf").toString();
        String[][] lines = {
            {"nets", "--json", nets, "--timing", folder.resolve("timing.json").toString(), sheet},
            {"nets", nets},
            {"trace", nets, "--from", "IC1.21", "--to", "IC4.20", "--json", folder.resolve("t.json").toString()},
            {"job", "new", job, sheet},
            {"reading", job, "1@100,100", "5.03V", "--expect", "5V+-5%"},
            {"note", job, "1@100,100", "rehearsal"},
            {"undo", job},
            {"job", "show", job},
            {"handover", job, "--out", folder.resolve("out").toString(), "--sheet-only"},
        };
        for (String[] line : lines) {
            Main.run(line, console);
        }
    }

    private static void remove(Path folder) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
            for (Path file : files) {
                if (Files.isDirectory(file)) {
                    remove(file);
                } else {
                    Files.deleteIfExists(file);
                }
            }
        }
        Files.deleteIfExists(folder);
    }
}
