// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.speed;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** The page drawer of a common PDF package, as the measure of how long a page may take. */
final class PublicTool {

    private static final double NANO = 1e-9;

    private PublicTool() {
    }

    /** @throws IOException where the tool is not installed */
    static void check() throws IOException {
        try {
            run(List.of("mutool", "-v"));
        } catch (IOException e) {
            throw new IOException("mutool is not installed (Debian: apt install mupdf-tools)", e);
        }
    }

    /** Seconds that {@code mutool draw -q -r 150 -F pbm -o /dev/null FILE PAGE} takes. */
    static double draw(Path file, int page) throws IOException {
        long start = System.nanoTime();
        run(List.of("mutool", "draw", "-q", "-r", "150", "-F", "pbm", "-o", "/dev/null", file.toString(),
                String.valueOf(page)));
        return (System.nanoTime() - start) * NANO;
    }

    private static void run(List<String> command) throws IOException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        try {
            process.waitFor();
        } catch (InterruptedException e) {
            process.destroy();
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", e);
        }
    }
}
