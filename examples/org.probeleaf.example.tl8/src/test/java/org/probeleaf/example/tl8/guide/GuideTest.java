// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every command in the guide prints what the guide says. The page as it should be is written to {@code target/guide/}
 * where it differs; once looked at, it can take the place of the page.
 */
class GuideTest {
    private static final Path DOCS = Path.of("..", "..", "docs");
    private static final Path SHEET = Path.of("..", "tern-tl8");

    static List<Path> pages() throws IOException {
        try (Stream<Path> files = Files.list(DOCS.resolve("guide"))) {
            return files.filter(f -> f.toString().endsWith(".md")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void commands_onThePage_printWhatThePageSays(Path file, @TempDir Path folder) throws Exception {
        GuidePage page = GuidePage.parse(Files.readAllLines(file));
        layOutCheckout(folder);
        List<List<String>> outputs = new ArrayList<>();
        int code = 0;
        for (GuidePage.Piece piece : page.pieces()) {
            if ("echo $?".equals(piece.command())) {
                outputs.add(List.of(String.valueOf(code)));
            } else if (piece.command() != null) {
                List<String> printed = new ArrayList<>();
                code = run(folder, piece.command(), printed);
                outputs.add(printed);
            }
        }
        List<String> rewritten = page.rewritten(outputs);
        List<String> now = Files.readAllLines(file);
        if (!rewritten.equals(now)) {
            Path target = Files.createDirectories(Path.of("target", "guide")).resolve(file.getFileName());
            Files.write(target, rewritten);
        }
        assertEquals(String.join("\n", rewritten), String.join("\n", now));
    }

    /** The files of a checkout that the guide's commands name. */
    private static void layOutCheckout(Path folder) throws IOException {
        Path example = Files.createDirectories(folder.resolve("examples").resolve("tern-tl8"));
        try (Stream<Path> files = Files.list(SHEET)) {
            for (Path f : files.toList()) {
                Files.copy(f, example.resolve(f.getFileName()));
            }
        }
    }

    private static int run(Path folder, String command, List<String> printed) throws Exception {
        List<String> words = GuidePage.words(command);
        assertEquals("./probeleaf", words.get(0), "the guide's commands start with ./probeleaf");
        assertFalse(words.contains("window"), "the guide opens no window in a console block");
        List<String> line = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true", "-Duser.timezone=UTC", "-Dprobeleaf.home=" + folder, "-cp", absoluteClassPath(),
                "org.probeleaf.cli.Main"));
        line.addAll(words.subList(1, words.size()));
        Process process = new ProcessBuilder(line).directory(folder.toFile()).redirectErrorStream(true).start();
        process.getOutputStream().close();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        printed.addAll(text.lines().map(String::stripTrailing).toList());
        return process.waitFor();
    }

    private static String absoluteClassPath() {
        return Stream.of(System.getProperty("java.class.path").split(java.io.File.pathSeparator))
                .map(p -> Path.of(p).toAbsolutePath().toString())
                .reduce((a, b) -> a + java.io.File.pathSeparator + b).orElse("");
    }
}
