// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Point;

class OutlineLetteringTest {

    /** With letters that look alike in this font: I and l, O and 0, and 6 and 9 upside down. */
    private static final List<String> WORDS = List.of("IC1", "R101", "C10", "VIN", "Vin", "ILIM", "Illuminated", "Title: ALL",
            "OUT0", "OC0A", "GPIO10", "CLKO", "10k", "4.7uF", "100nF 50V", "D[0..7]", "R/W", "PB3(OC0)", "+5V", "-12V",
            "SDA", "SCL", "MISO", "Q6", "96", "69", "X1", "J8", "U16", "Q", "74HC595", "LM1117-3.3", "16 MHz", "51R", "2.2%",
            "i2c_int", "nRESET", "GND", "VCC", "5", "6", "9", "B", "E", "RX#", "8", "T");

    @ParameterizedTest
    @EnumSource
    void read_wordsInOutlines_saysThem(Direction direction) {
        Drawing read = LetteringReader.read(words(direction, false));

        assertEquals(sorted(WORDS), sorted(texts(read)));
        assertTrue(read.fills().isEmpty(), () -> read.fills().size() + " letters are left");
        assertTrue(read.texts().stream().allMatch(t -> t.angle() == direction.angle()));
    }

    @Test
    void read_lettersWithRims_takesTheRimsToo() {
        Drawing read = LetteringReader.read(words(Direction.RIGHT, true));

        assertEquals(sorted(WORDS), sorted(texts(read)));
        assertEquals(0, read.strokes().size());
    }

    @Test
    void read_word_hasThePlaceAndSizeOfText() {
        Printer printer = printer();

        Text text = LetteringReader.read(printer.print("Mains", 300, 400, 8, Direction.RIGHT).page()).texts().stream()
                .filter(t -> t.text().equals("Mains")).findFirst().orElseThrow();

        assertEquals(300, text.origin().x(), 1);
        assertEquals(400, text.origin().y(), 0.1);
        assertEquals(8, text.size(), 0.3);
        assertEquals(400 - 0.72 * 8, text.box().y0(), 0.3);
        assertEquals(400 + 0.2 * 8, text.box().y1(), 0.3);
    }

    @Test
    void read_wordUnderBar_isActiveLow() {
        Printer printer = printer().print("RESET", 300, 400, 8, Direction.RIGHT)
                .line(new Point(300, 393.2), new Point(327, 393.2));

        Drawing read = LetteringReader.read(printer.page());

        assertTrue(texts(read).contains("/RESET"), () -> texts(read).toString());
        assertEquals(0, read.strokes().size());
    }

    @Test
    void read_wordUnderSignOfGround_isNotActiveLow() {
        Printer printer = printer().print("GND", 300, 400, 8, Direction.RIGHT)
                .line(new Point(309, 380), new Point(309, 393)).line(new Point(304, 393), new Point(314, 393));

        Drawing read = LetteringReader.read(printer.page());

        assertTrue(texts(read).contains("GND"), () -> texts(read).toString());
        assertEquals(2, read.strokes().size());
    }

    @Test
    void read_arrowHeadsAndBars_leavesThem() {
        Printer printer = printer();
        for (int i = 0; i < 6; i++) {
            double x = 300 + 12 * i;
            printer.fill(new Point(x, 500), new Point(x + 3, 506), new Point(x - 3, 506));
            printer.fill(new Point(x, 520), new Point(x + 1, 520), new Point(x + 1, 526), new Point(x, 526));
        }

        Drawing read = LetteringReader.read(printer.page());

        assertEquals(12, read.fills().size(), () -> texts(read).toString());
    }

    @Test
    void read_pageWithoutWords_isAsItWas() {
        Printer printer = new Printer(false).print("PL", 100, 100, 20, Direction.RIGHT);

        Drawing read = LetteringReader.read(printer.page());

        assertEquals(printer.page(), read);
    }

    private static Printer printer() {
        Printer printer = new Printer(false);
        for (int i = 0; i < 12; i++) {
            printer.print(WORDS.get(i), 20 + 120 * (i % 6), 60 + 30 * (i / 6), 8, Direction.RIGHT);
        }
        return printer;
    }

    private static Drawing words(Direction direction, boolean rims) {
        Printer printer = new Printer(rims);
        for (int i = 0; i < WORDS.size(); i++) {
            printer.print(WORDS.get(i), 90 + 90 * (i % 8), 90 + 90 * (i / 8), i % 3 == 0 ? 6 : 8, direction);
        }
        return printer.page();
    }

    private static List<String> texts(Drawing drawing) {
        return drawing.texts().stream().map(Text::text).toList();
    }

    private static List<String> sorted(List<String> words) {
        return words.stream().sorted().toList();
    }
}
