// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.junit.jupiter.api.Test;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.LetterForm;
import org.probeleaf.schematic.geometry.Point;

/** Letters of fonts of type 3 (ISO 32000-1 clause 9.6.5), whose names say nothing. */
class UnnamedLettersTest {

    private static final String SQUARE = "700 0 d0 100 0 500 500 re f";
    private static final String HOOK = "700 0 d0 q 2 0 0 2 0 0 cm 50 w 0 350 m 0 0 l 200 0 l S Q";
    private static final String NOTHING = "700 0 d0";

    @Test
    void draw_filledLetter_keepsItsOutlineInFontSizes() throws Exception {
        Drawing drawing = draw("(aab)", "g1", SQUARE, "g2", HOOK);

        LetterForm square = drawing.forms().get(0);
        assertTrue(square.filled());
        assertEquals(List.of(List.of(new Point(0.1, 0), new Point(0.6, 0), new Point(0.6, 0.5), new Point(0.1, 0.5))),
                square.lines().stream().map(l -> l.stream().map(UnnamedLettersTest::rounded).toList()).toList());
        String text = drawing.texts().get(0).text();
        assertEquals("" + square.sign() + square.sign() + drawing.forms().get(1).sign(), text);
    }

    @Test
    void draw_strokedLetter_keepsItsLines() throws Exception {
        Drawing drawing = draw("(b)", "g1", SQUARE, "g2", HOOK);

        LetterForm hook = drawing.forms().get(0);
        assertEquals(false, hook.filled());
        assertEquals(List.of(new Point(0, 0.7), new Point(0, 0), new Point(0.4, 0)),
                hook.lines().get(0).stream().map(UnnamedLettersTest::rounded).toList());
    }

    @Test
    void draw_emptyLetter_isABlank() throws Exception {
        Drawing drawing = draw("(aba)", "g1", SQUARE, "g2", NOTHING);

        char sign = drawing.forms().get(0).sign();
        assertEquals(1, drawing.forms().size());
        assertEquals(sign + " " + sign, drawing.texts().get(0).text());
    }

    @Test
    void draw_letterWithAName_isThatLetter() throws Exception {
        Drawing drawing = draw("(ab)", "R", SQUARE, "five", HOOK);

        assertEquals("R5", drawing.texts().get(0).text());
        assertEquals(List.of(), drawing.forms());
    }

    @Test
    void draw_damagedLetter_losesThatLetterOnly() throws Exception {
        Drawing drawing = draw("(ab)", "R", SQUARE, "g2", "Q Q ) 1 0 cm q q 5 l <</");

        assertEquals("R", drawing.texts().get(0).text());
    }

    private static Point rounded(Point p) {
        return new Point(Math.round(p.x() * 1e4) / 1e4, Math.round(p.y() * 1e4) / 1e4);
    }

    /** A page with a text in a font whose codes a and b have names and drawings. */
    private static Drawing draw(String text, String a, String drawnA, String b, String drawnB)
            throws IOException, SheetException {
        try (PDDocument document = new PDDocument()) {
            COSDictionary font = new COSDictionary();
            font.setItem(COSName.TYPE, COSName.FONT);
            font.setItem(COSName.SUBTYPE, COSName.TYPE3);
            font.setItem(COSName.FONT_BBOX, numbers(0, 0, 700, 700));
            font.setItem(COSName.FONT_MATRIX, numbers(0.001f, 0, 0, 0.001f, 0, 0));
            font.setInt(COSName.FIRST_CHAR, 'a');
            font.setInt(COSName.LAST_CHAR, 'b');
            font.setItem(COSName.WIDTHS, numbers(700, 700));
            COSArray differences = new COSArray(List.of(COSInteger.get('a'), COSName.getPDFName(a), COSName.getPDFName(b)));
            COSDictionary encoding = new COSDictionary();
            encoding.setItem(COSName.TYPE, COSName.ENCODING);
            encoding.setItem(COSName.DIFFERENCES, differences);
            font.setItem(COSName.ENCODING, encoding);
            COSDictionary letters = new COSDictionary();
            letters.setItem(COSName.getPDFName(a), stream(document, drawnA));
            letters.setItem(COSName.getPDFName(b), stream(document, drawnB));
            font.setItem(COSName.CHAR_PROCS, letters);
            COSDictionary fonts = new COSDictionary();
            fonts.setItem(COSName.getPDFName("F"), font);
            PDPage page = new PDPage();
            page.setResources(new PDResources());
            page.getResources().getCOSObject().setItem(COSName.FONT, fonts);
            page.getCOSObject().setItem(COSName.CONTENTS, stream(document, "BT /F 10 Tf 100 100 Td " + text + " Tj ET"));
            document.addPage(page);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            try (SheetFile file = SheetFile.open(out.toByteArray(), "letters.pdf", null)) {
                return file.draw(1);
            }
        }
    }

    private static COSArray numbers(float... values) {
        COSArray array = new COSArray();
        for (float v : values) {
            array.add(new COSFloat(v));
        }
        return array;
    }

    private static COSStream stream(PDDocument document, String content) throws IOException {
        COSStream stream = document.getDocument().createCOSStream();
        try (OutputStream out = stream.createOutputStream()) {
            out.write(content.getBytes(StandardCharsets.ISO_8859_1));
        }
        return stream;
    }
}
