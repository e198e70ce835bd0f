// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/** Rules of the sources that stand in their text. */
class SourceTest {

    private static final int LONGEST = 450;

    @Test
    void everyJavaFile_isShortEnough() throws IOException {
        assertEquals(List.of(), wrong(lines -> lines.size() > LONGEST ? lines.size() + " lines" : null));
    }

    @Test
    void everyJavaFile_namesItsLicence() throws IOException {
        assertEquals(List.of(), wrong(lines -> lines.size() > 1
                && lines.get(0).equals("// SPDX-License-Identifier: Apache-2.0")
                && lines.get(1).equals("// SPDX-FileCopyrightText: The Probeleaf authors") ? null : "no SPDX header"));
    }

    @Test
    void everyPackage_saysWhatItIsFor() throws IOException {
        List<Path> silent = new ArrayList<>();
        for (Path file : javaFiles()) {
            Path folder = file.getParent();
            boolean main = folder.toString().replace('\\', '/').contains("/src/main/java/");
            if (main && !Files.exists(folder.resolve("package-info.java")) && !silent.contains(folder)) {
                silent.add(folder);
            }
        }
        assertEquals(List.of(), silent);
    }

    private static List<String> wrong(Function<List<String>, String> rule) throws IOException {
        List<String> wrong = new ArrayList<>();
        for (Path file : javaFiles()) {
            String what = rule.apply(Files.readAllLines(file));
            if (what != null) {
                wrong.add(file + ": " + what);
            }
        }
        return wrong;
    }

    private static List<Path> javaFiles() throws IOException {
        List<Path> files = new ArrayList<>();
        for (String top : List.of("plugins", "features", "examples")) {
            try (Stream<Path> all = Files.walk(House.root().resolve(top))) {
                all.filter(p -> p.toString().endsWith(".java") && !p.toString().contains("/target/"))
                        .forEach(files::add);
            } catch (UncheckedIOException e) {
                throw e.getCause();
            }
        }
        assertFalse(files.isEmpty());
        return files;
    }
}
