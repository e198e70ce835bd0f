// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.recognition.Progress;
import org.probeleaf.recognition.Recogniser;
import org.probeleaf.schematic.netlist.Netlist;

/** The sheet is read the same where its letters don't say which letters they are. */
class UnnamedLettersTest {

    private static final Path COMMITTED = Path.of("..", "tern-tl8", TideLogger.PDF);

    @Test
    void recognise_textTurnedIntoOutlines_saysTheSame() throws Exception {
        byte[] pdf = Files.readAllBytes(COMMITTED);

        assertSame(read(pdf), read(Outlined.of(pdf)));
    }

    @Test
    void recognise_fontsWithoutMaps_saysTheSame() throws Exception {
        byte[] pdf = Files.readAllBytes(COMMITTED);

        assertSame(read(pdf), read(Unnamed.withoutMaps(pdf)));
    }

    @ParameterizedTest
    @ValueSource(chars = {'\ufffd', '\uf041', '\u0001'})
    void recognise_mapsThatSayNothing_saysTheSame(char character) throws Exception {
        byte[] pdf = Files.readAllBytes(COMMITTED);

        assertSame(read(pdf), read(Unnamed.mappedTo(pdf, character)));
    }

    private static void assertSame(Netlist original, Netlist read) {
        assertEquals("", Statements.difference(Statements.parts(original), Statements.parts(read)));
        assertEquals("", Statements.difference(Statements.pins(original), Statements.pins(read)));
        assertEquals("", Statements.difference(Statements.nets(original), Statements.nets(read)));
        assertEquals("", Statements.difference(Statements.labels(original), Statements.labels(read)));
        assertEquals("", Statements.difference(Statements.junctions(original), Statements.junctions(read)));
    }

    private static Netlist read(byte[] pdf) throws SheetException, IOException {
        try (SheetFile sheet = SheetFile.open(pdf, TideLogger.PDF, null)) {
            List<Drawing> drawings = new ArrayList<>();
            for (int page = 1; page <= sheet.pageCount(); page++) {
                drawings.add(sheet.draw(page));
            }
            return new Recogniser().recognise(TideLogger.PDF, "0".repeat(64), drawings, Progress.NONE);
        }
    }
}
