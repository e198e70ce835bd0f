// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * A sheet with its true netlist.
 *
 * @param name  name of its folder
 * @param sheet the sheet
 * @param truth the true netlist
 */
public record Case(String name, Path sheet, Path truth) {

    /**
     * The cases of a folder, by name: each a folder with {@code sheet.pdf} and {@code truth.json}.
     *
     * @param only names of those wanted, or an empty list for all
     * @throws IOException where the folder cannot be read or holds none
     */
    public static List<Case> in(Path folder, List<String> only) throws IOException {
        List<Case> cases;
        try (Stream<Path> inside = Files.list(folder)) {
            cases = inside.filter(f -> only.isEmpty() || only.contains(f.getFileName().toString()))
                    .map(f -> new Case(f.getFileName().toString(), f.resolve("sheet.pdf"), f.resolve("truth.json")))
                    .filter(c -> Files.isRegularFile(c.sheet) && Files.isRegularFile(c.truth))
                    .sorted((a, b) -> a.name.compareTo(b.name)).toList();
        }
        if (cases.isEmpty()) {
            throw new IOException(folder + ": no cases there; name a folder of folders with sheet.pdf and truth.json");
        }
        return cases;
    }
}
