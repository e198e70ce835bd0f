// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

class LetteringReaderTest {

    private static final List<String> WORDS = List.of("IC27", "R105", "C36", "RESET", "CLOCK", "STROBE", "ADDRESS", "74HC541",
            "LATCH", "D0", "D1", "D2", "D3", "D4", "D5", "D6", "D7", "IO_SEL", "OUT3", "Q9", "100K", "470", "READ", "WRITE", "GND",
            "VCC", "FRONT PANEL", "MEMORY", "BUS_EN", "X1", "PORT", "KEY8", "MODE");

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void read_wordsOfAnotherHand_saysThem(long seed) {
        Scribe scribe = new Scribe(seed, seed % 2 == 0);
        for (int i = 0; i < WORDS.size(); i++) {
            boolean up = i % 4 == 3;
            scribe.write(WORDS.get(i), 20 + 70 * (i % 8), 60 + 60 * (i / 8), i % 3 == 0 ? 4 : 5, up ? Direction.UP : Direction.RIGHT);
        }

        Drawing read = LetteringReader.read(scribe.page());

        Set<String> missing = new TreeSet<>(WORDS);
        read.texts().forEach(t -> missing.remove(t.text()));
        assertTrue(missing.size() <= 2, "not read: " + missing + " among " + texts(read));
    }

    @Test
    void read_words_takesTheirStrokesAndLeavesLines() {
        Scribe scribe = new Scribe(3, false).line(new Point(100, 300), new Point(180, 300), new Point(180, 340));
        writeSomeWords(scribe);

        Drawing read = LetteringReader.read(scribe.page());

        assertEquals(1, read.strokes().size(), () -> read.strokes() + " of " + texts(read));
        assertEquals(8, read.texts().size());
    }

    @Test
    void read_wordUnderBar_isActiveLow() {
        Scribe scribe = new Scribe(5, false);
        writeSomeWords(scribe);
        scribe.write("READ", 100, 200, 4, Direction.RIGHT);
        Box word = LetteringReader.read(scribe.page()).texts().stream().filter(t -> t.text().equals("READ")).findFirst()
                .orElseThrow().box();
        scribe.bar(word.x0() - 0.5, word.x1() + 0.5, 194.6);

        List<String> read = texts(LetteringReader.read(scribe.page()));
        assertTrue(read.contains("/READ"), read::toString);
    }

    @Test
    void read_upwardsWord_turnsIt() {
        Scribe scribe = new Scribe(6, true);
        writeSomeWords(scribe);
        scribe.write("MEMORY", 100, 200, 4, Direction.UP);

        Text word = LetteringReader.read(scribe.page()).texts().stream().filter(t -> t.text().equals("MEMORY")).findFirst()
                .orElseThrow();

        assertEquals(270, word.angle());
        assertTrue(word.box().height() > word.box().width());
    }

    @Test
    void read_drawingWithoutWords_staysAsItIs() {
        Scribe scribe = new Scribe(7, false);
        for (int i = 0; i < 40; i++) {
            double x = 20 + 60 * (i % 8);
            double y = 40 + 50 * (i / 8);
            scribe.line(new Point(x, y), new Point(x + 4, y), new Point(x + 4, y + 6), new Point(x, y + 6), new Point(x, y))
                    .line(new Point(x + 8, y), new Point(x + 8, y + 6)).line(new Point(x + 10, y), new Point(x + 10, y + 6))
                    .line(new Point(x + 14, y), new Point(x + 18, y + 5)).line(new Point(x + 18, y), new Point(x + 14, y + 5));
        }

        Drawing read = LetteringReader.read(scribe.page());

        assertEquals(List.of(), texts(read));
        assertEquals(scribe.page().strokes().size(), read.strokes().size());
    }

    /** Two real sheets draw their lettering with strokes and also carry what it says as text that does not show. */
    @ParameterizedTest
    @ValueSource(strings = {"ez80-board", "m68k-board"})
    void read_strokesOfRealSheet_saysWhatItsHiddenTextSays(String name) throws IOException {
        Path sheet = Path.of(System.getProperty("probeleaf.shared", "none"), "eval", "cases", name, "sheet.pdf");
        assumeTrue(Files.isRegularFile(sheet), "skipped: the real sheets are not at hand");
        int right = 0;
        int all = 0;
        try (SheetFile file = SheetFile.open(sheet, null)) {
            for (int page = 1; page <= file.pageCount(); page++) {
                Drawing drawing = file.draw(page);
                List<Text> read = StrokeLettering.read(drawing.strokes(), new boolean[drawing.strokes().size()], 0);
                for (Text hidden : drawing.texts()) {
                    // Single signs and notes say nothing of designators, values and names.
                    if (hidden.text().matches("[A-Za-z0-9_]{2,12}")) {
                        all++;
                        right += read.stream().anyMatch(t -> t.text().equals(hidden.text())
                                && t.box().grow(4).contains(hidden.box().centre())) ? 1 : 0;
                    }
                }
            }
        }
        assertTrue(right >= 0.95 * all, right + " of " + all);
    }

    /** Enough words to learn the hand from. */
    private static void writeSomeWords(Scribe scribe) {
        for (int i = 1; i < 9; i++) {
            scribe.write(WORDS.get(i), 70 * i - 50, 60, 4, Direction.RIGHT);
        }
    }

    private static List<String> texts(Drawing drawing) {
        return new ArrayList<>(drawing.texts().stream().map(Text::text).toList());
    }
}
