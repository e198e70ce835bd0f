// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdfwriter.ContentStreamWriter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.apache.pdfbox.util.Matrix;

/** Turns the text of a PDF into filled outlines, as drawing programs do when told to convert text to paths. */
final class Outlined {

    private Outlined() {
    }

    /** The same sheet with no text in it. */
    static byte[] of(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                List<TextPosition> letters = letters(document, page);
                removeText(document, page);
                try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.APPEND, false, true)) {
                    for (TextPosition letter : letters) {
                        draw(letter, out);
                    }
                }
                page.getResources().getCOSObject().removeItem(COSName.FONT);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        }
    }

    private static List<TextPosition> letters(PDDocument document, PDPage page) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                letters.add(letter);
            }
        };
        int number = document.getPages().indexOf(page) + 1;
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        stripper.getText(document);
        return letters;
    }

    private static void removeText(PDDocument document, PDPage page) throws IOException {
        List<Object> kept = new ArrayList<>();
        boolean text = false;
        for (Object token : new PDFStreamParser(page).parse()) {
            String name = token instanceof Operator operator ? operator.getName() : "";
            text |= name.equals("BT");
            if (!text) {
                kept.add(token);
            }
            text &= !name.equals("ET");
        }
        PDStream stream = new PDStream(document);
        try (var out = stream.createOutputStream()) {
            new ContentStreamWriter(out).writeTokens(kept);
        }
        page.setContents(stream);
    }

    private static void draw(TextPosition letter, PDPageContentStream out) throws IOException {
        Matrix matrix = letter.getTextMatrix();
        AffineTransform at = new AffineTransform(matrix.getScaleX(), matrix.getShearY(), matrix.getShearX(),
                matrix.getScaleY(), matrix.getTranslateX(), matrix.getTranslateY());
        at.concatenate(letter.getFont().getFontMatrix().createAffineTransform());
        var path = ((PDVectorFont) letter.getFont()).getNormalizedPath(letter.getCharacterCodes()[0]);
        float[] p = new float[6];
        float x = 0;
        float y = 0;
        boolean any = false;
        for (PathIterator i = path.getPathIterator(at); !i.isDone(); i.next()) {
            any = true;
            switch (i.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> out.moveTo(x = p[0], y = p[1]);
                case PathIterator.SEG_LINETO -> out.lineTo(x = p[0], y = p[1]);
                case PathIterator.SEG_QUADTO -> {
                    // A curve of second degree as one of third degree.
                    out.curveTo(x + (p[0] - x) * 2 / 3, y + (p[1] - y) * 2 / 3, p[2] + (p[0] - p[2]) * 2 / 3,
                            p[3] + (p[1] - p[3]) * 2 / 3, p[2], p[3]);
                    x = p[2];
                    y = p[3];
                }
                case PathIterator.SEG_CUBICTO -> out.curveTo(p[0], p[1], p[2], p[3], x = p[4], y = p[5]);
                default -> out.closePath();
            }
        }
        if (any) {
            out.fill();
        }
    }
}
