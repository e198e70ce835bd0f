// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutputNamesTest {

    @ParameterizedTest
    @CsvSource({"board.pdf, board", "a/board.pdf b/other.pdf, board other", "a/sheet.pdf b/sheet.pdf, a b",
        "a/sheet.pdf b/sheet.pdf c/x.pdf, a b x", "x/a/s.pdf y/a/s.pdf, a a-2", "d/board.pdf d/board.png, board.pdf board.png",
        "a/S.pdf b/s.pdf, a b", "noending, noending", "a/sheet.pdf b/a.pdf c/sheet.pdf, a a-2 c"})
    void of_drawings_areNamedByFileOrFolder(String drawings, String names) {
        assertEquals(List.of(names.split(" ")),
                OutputNames.of(List.of(drawings.split(" ")).stream().map(Path::of).toList()));
    }

    @Property
    void of_anyDrawings_areAllDifferent(@ForAll("drawings") List<Path> drawings) {
        List<String> names = OutputNames.of(drawings);
        assertEquals(drawings.size(), names.size());
        assertEquals(names.size(), new HashSet<>(names.stream().map(n -> n.toLowerCase(Locale.ROOT)).toList()).size());
    }

    @Provide
    Arbitrary<List<Path>> drawings() {
        Arbitrary<String> name = Arbitraries.of("a", "b", "A", "a-2");
        return Combinators.combine(name, name, Arbitraries.of(".pdf", ".png", ""))
                .as((folder, file, ending) -> Path.of(folder, file + ending)).list().ofMaxSize(8);
    }
}
