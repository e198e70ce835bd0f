// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.recognition.Progress;
import org.probeleaf.recognition.Recogniser;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Netlist;

/** The recogniser reads the committed sheet to exactly what the generator drew it from. */
class RecognisedSheetTest {
    private static final Path COMMITTED = Path.of("..", "tern-tl8");
    private static Netlist truth;
    private static Netlist read;

    @BeforeAll
    static void readBoth() throws Exception {
        truth = NetlistJson.read(new ByteArrayInputStream(Files.readAllBytes(COMMITTED.resolve(TideLogger.JSON))));
        try (SheetFile sheet = SheetFile.open(COMMITTED.resolve(TideLogger.PDF), null)) {
            List<Drawing> drawings = new ArrayList<>();
            for (int page = 1; page <= sheet.pageCount(); page++) {
                drawings.add(sheet.draw(page));
            }
            read = new Recogniser().recognise(TideLogger.PDF, truth.sha256(), drawings, Progress.NONE);
        }
    }

    @Test
    void recognise_example_findsTheParts() {
        assertEquals("", Statements.difference(Statements.parts(truth), Statements.parts(read)));
    }

    @Test
    void recognise_example_findsThePins() {
        assertEquals("", Statements.difference(Statements.pins(truth), Statements.pins(read)));
    }

    @Test
    void recognise_example_findsTheNetsAndTheirNames() {
        assertEquals("", Statements.difference(Statements.nets(truth), Statements.nets(read)));
    }

    @Test
    void recognise_example_findsWhereThePinsAre() {
        assertEquals("", Statements.difference(Statements.pinPlaces(truth), Statements.pinPlaces(read)));
    }

    @Test
    void recognise_example_findsTheDrawnNamesAndWhatTheyAre() {
        assertEquals("", Statements.difference(Statements.labels(truth), Statements.labels(read)));
    }

    @Test
    void recognise_example_findsTheJunctions() {
        assertEquals("", Statements.difference(Statements.junctions(truth), Statements.junctions(read)));
    }
}
