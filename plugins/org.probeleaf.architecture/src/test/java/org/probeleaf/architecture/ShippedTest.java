// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

/** What the assembled folders hold, against the list of licences. */
class ShippedTest {

    /** Bundles of Probeleaf itself; those that carry a library of others stand in the list. */
    private static final String OURS = "org.probeleaf.(?!rebundle).*";

    @Test
    void everyLibrary_inTheFolders_isListedWithItsLicence() throws IOException {
        Set<String> names = libraries();
        Set<String> listed = list().keySet();
        assertEquals(List.of(), names.stream().filter(n -> listed.stream().noneMatch(l -> means(l, n))).toList(),
                "shipped, but not in docs/licences/README.md");
        assertEquals(List.of(), listed.stream().filter(l -> names.stream().noneMatch(n -> means(l, n))).toList(),
                "in docs/licences/README.md, but not shipped");
    }

    @Test
    void everyLicenceText_thatIsNamed_isThere() throws IOException {
        for (String texts : list().values()) {
            for (String text : texts.split(",\\s*")) {
                Path file = House.root().resolve(text.equals("LICENSE") ? text : "docs/licences/" + text);
                assertTrue(Files.isRegularFile(file), file.toString());
            }
        }
    }

    /** The workbench runs in an OSGi framework, which takes nothing but bundles. */
    @Test
    void everyLibrary_ofTheWorkbench_isABundle() throws IOException {
        assumeAssembled();
        List<String> plain = new ArrayList<>();
        for (Path jar : jars(House.window().resolve("plugins"))) {
            try (JarFile file = new JarFile(jar.toFile())) {
                if (file.getManifest().getMainAttributes().getValue("Bundle-SymbolicName") == null) {
                    plain.add(jar.getFileName().toString());
                }
            }
        }
        assertEquals(List.of(), plain);
    }

    @Test
    void commandLineFolder_holdsWhatANewcomerNeeds() {
        assumeAssembled();
        for (String file : List.of("bin/probeleaf", "LICENSE", "licences/README.md", "licences/EPL-2.0.txt",
                "examples/tern-tl8/tern-tl8.pdf")) {
            assertTrue(Files.isRegularFile(House.core().resolve(file)), file);
        }
        assertTrue(Files.isExecutable(House.core().resolve("bin/probeleaf")));
    }

    @Test
    void windowFolder_holdsItsLicences() {
        assumeAssembled();
        for (String file : List.of("launch", "LICENSE", "licences/README.md", "licences/EPL-2.0.txt")) {
            assertTrue(Files.isRegularFile(House.window().resolve(file)), file);
        }
    }

    private static Set<String> libraries() throws IOException {
        assumeAssembled();
        Set<String> names = new TreeSet<>();
        for (Path folder : List.of(House.core().resolve("lib"), House.window().resolve("plugins"))) {
            jars(folder).stream().map(p -> p.getFileName().toString().replaceFirst("-\\d.*$", ""))
                    .filter(n -> !n.matches(OURS)).forEach(names::add);
        }
        assertFalse(names.isEmpty());
        return names;
    }

    private static List<Path> jars(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(p -> p.toString().endsWith(".jar")).sorted().toList();
        }
    }

    private static void assumeAssembled() {
        assumeTrue(Files.isDirectory(House.core().resolve("lib")) && Files.isDirectory(House.window().resolve("plugins")),
                "the folders are not assembled; run mvn verify on the whole");
    }

    /** Name and texts of each row of the list, which is the page's first table. */
    private static Map<String, String> list() throws IOException {
        return Files.readAllLines(House.root().resolve("docs/licences/README.md")).stream()
                .takeWhile(l -> !l.startsWith("## ")).filter(l -> l.startsWith("| ") && !l.startsWith("| file")).map(l -> l.split("\\s*\\|\\s*"))
                .collect(Collectors.toMap(c -> c[1], c -> c[4], (a, b) -> b, LinkedHashMap::new));
    }

    private static boolean means(String listed, String name) {
        return listed.endsWith("*") ? name.startsWith(listed.substring(0, listed.length() - 1)) : listed.equals(name);
    }
}
