// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.junit.jupiter.api.Test;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Point;

/** Pages written with PDFBox come back as primitives at the places where a reader shows them (ISO 32000-1 clause 8). */
class PagePrimitivesTest {

    private static final double EXACT = 1e-3;
    private static final PDFont FONT = new PDType1Font(Standard14Fonts.FontName.HELVETICA);

    private interface Painter {
        void paint(PDPageContentStream out, PDDocument document, PDPage page) throws IOException;
    }

    @Test
    void draw_uprightPage_hasItsOriginAtTheTopLeft() throws IOException {
        Drawing d = draw(400, 300, 0, null, (out, doc, page) -> line(out, 10, 290, 110, 290));

        assertEquals(400, d.width(), EXACT);
        checkLine(d.strokes().get(0), 10, 10, 110, 10);
    }

    @Test
    void draw_pageTurnedBy90_isTurnedClockwise() throws IOException {
        // The lower left corner of the page comes to the upper left of what is shown.
        Drawing d = draw(400, 300, 90, null, (out, doc, page) -> line(out, 0, 0, 100, 0));

        assertEquals(300, d.width(), EXACT);
        assertEquals(400, d.height(), EXACT);
        checkLine(d.strokes().get(0), 0, 0, 0, 100);
    }

    @Test
    void draw_pageTurnedBy180And270_isTurnedClockwise() throws IOException {
        checkLine(draw(400, 300, 180, null, (out, doc, page) -> line(out, 0, 0, 100, 0)).strokes().get(0),
                400, 0, 300, 0);
        checkLine(draw(400, 300, 270, null, (out, doc, page) -> line(out, 0, 0, 100, 0)).strokes().get(0),
                300, 400, 300, 300);
    }

    @Test
    void draw_croppedPage_countsFromTheCropBox() throws IOException {
        Drawing d = draw(400, 300, 0, new PDRectangle(50, 40, 200, 100),
                (out, doc, page) -> line(out, 60, 130, 160, 130));

        assertEquals(200, d.width(), EXACT);
        checkLine(d.strokes().get(0), 10, 10, 110, 10);
    }

    @Test
    void draw_formInAForm_isEnteredWithBothTransforms() throws IOException {
        Drawing d = draw(400, 300, 0, null, (out, doc, page) -> {
            PDFormXObject inner = form(doc, "0 0 m 10 0 l S", null);
            PDFormXObject outer = form(doc, "2 0 0 2 5 5 cm /In Do", inner);
            out.transform(Matrix.getTranslateInstance(100, 100));
            out.drawForm(outer);
        });

        checkLine(d.strokes().get(0), 105, 195, 125, 195);
    }

    @Test
    void draw_layerThatIsOff_isLeftOut() throws IOException {
        Drawing d = draw(400, 300, 0, null, (out, doc, page) -> {
            PDOptionalContentProperties layers = new PDOptionalContentProperties();
            PDOptionalContentGroup off = new PDOptionalContentGroup("off");
            PDOptionalContentGroup on = new PDOptionalContentGroup("on");
            layers.addGroup(off);
            layers.addGroup(on);
            layers.setGroupEnabled(off, false);
            doc.getDocumentCatalog().setOCProperties(layers);
            out.beginMarkedContent(COSName.OC, off);
            line(out, 0, 10, 50, 10);
            out.endMarkedContent();
            out.beginMarkedContent(COSName.OC, on);
            line(out, 0, 20, 50, 20);
            out.endMarkedContent();
        });

        assertEquals(1, d.strokes().size());
        checkLine(d.strokes().get(0), 0, 280, 50, 280);
    }

    @Test
    void draw_lineOutsideTheClip_isLeftOut() throws IOException {
        Drawing d = draw(400, 300, 0, null, (out, doc, page) -> {
            out.addRect(0, 0, 100, 100);
            out.clip();
            line(out, 10, 50, 90, 50);
            line(out, 10, 200, 90, 200);
        });

        assertEquals(1, d.strokes().size());
        checkLine(d.strokes().get(0), 10, 250, 90, 250);
    }

    @Test
    void draw_textInRenderingMode3_isCarriedAsInvisible() throws IOException {
        Drawing d = draw(400, 300, 0, null, (out, doc, page) -> {
            text(out, "SHOWN", 10, 100, null);
            out.beginText();
            out.setRenderingMode(RenderingMode.NEITHER);
            out.setFont(FONT, 10);
            out.newLineAtOffset(10, 50);
            out.showText("HIDDEN");
            out.endText();
        });

        assertTrue(find(d, "SHOWN").visible());
        assertFalse(find(d, "HIDDEN").visible());
    }

    @Test
    void draw_contentDamagedInTheMiddle_saysThatItIsNotComplete() throws IOException {
        Drawing whole = drawContent("0 10 m 50 10 l S");
        Drawing damaged = drawContent("0 10 m 50 10 l S \u00ff\u00fe#\u00ffxq 12 ]] zz 0 20 m 50 20 l S");

        assertTrue(whole.complete());
        assertFalse(damaged.complete());
        assertFalse(damaged.strokes().isEmpty(), "what could be read is kept");
    }

    private static Drawing drawContent(String content) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(100, 100));
            PDStream stream = new PDStream(document);
            try (var out = stream.createOutputStream()) {
                out.write(content.getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
            }
            page.setContents(stream);
            document.addPage(page);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            try (SheetFile file = SheetFile.open(bytes.toByteArray(), "test.pdf", null)) {
                return file.draw(1);
            }
        }
    }

    @Test
    void draw_turnedText_tellsItsDirectionAndPlace() throws IOException {
        Drawing d = draw(400, 300, 0, null,
                (out, doc, page) -> text(out, "IC7", 0, 0, Matrix.getRotateInstance(Math.PI / 2, 50, 60)));

        Text t = find(d, "IC7");
        assertEquals(270, t.angle(), 0.5);
        assertEquals(50, t.origin().x(), EXACT);
        assertEquals(240, t.origin().y(), EXACT);
        assertTrue(t.box().height() > t.box().width(), "the box stands upright");
    }

    @Test
    void draw_lettersPlacedOneByOne_becomeOneWord() throws IOException {
        Drawing d = draw(400, 300, 0, null, (out, doc, page) -> {
            float x = 20;
            for (String letter : new String[] {"7", "4", "L", "S"}) {
                text(out, letter, x, 100, null);
                x += FONT.getStringWidth(letter) / 100;
            }
        });

        assertEquals("74LS", d.texts().get(0).text());
        assertEquals(1, d.texts().size());
    }

    @Test
    void draw_wordsSideBySide_stayApart() throws IOException {
        Drawing d = draw(400, 300, 0, null, (out, doc, page) -> {
            text(out, "GND", 20, 100, null);
            text(out, "GND", 20 + FONT.getStringWidth("GND") / 100 + 1, 100, null);
        });

        assertEquals(2, d.texts().size());
    }

    private static void line(PDPageContentStream out, float x0, float y0, float x1, float y1) throws IOException {
        out.moveTo(x0, y0);
        out.lineTo(x1, y1);
        out.stroke();
    }

    private static void text(PDPageContentStream out, String text, float x, float y, Matrix matrix)
            throws IOException {
        out.beginText();
        out.setFont(FONT, 10);
        if (matrix == null) {
            out.newLineAtOffset(x, y);
        } else {
            out.setTextMatrix(matrix);
        }
        out.showText(text);
        out.endText();
    }

    private static PDFormXObject form(PDDocument doc, String content, PDFormXObject inner) throws IOException {
        PDFormXObject form = new PDFormXObject(doc);
        form.setBBox(new PDRectangle(-100, -100, 500, 500));
        PDResources resources = new PDResources();
        if (inner != null) {
            resources.put(COSName.getPDFName("In"), inner);
        }
        form.setResources(resources);
        try (var out = form.getCOSObject().createOutputStream()) {
            out.write(content.getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        }
        return form;
    }

    private static Drawing draw(float width, float height, int rotation, PDRectangle crop, Painter painter)
            throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(width, height));
            page.setRotation(rotation);
            if (crop != null) {
                page.setCropBox(crop);
            }
            document.addPage(page);
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                painter.paint(out, document, page);
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            try (SheetFile file = SheetFile.open(bytes.toByteArray(), "test.pdf", null)) {
                return file.draw(1);
            }
        }
    }

    private static Text find(Drawing d, String text) {
        return d.texts().stream().filter(t -> t.text().equals(text)).findFirst().orElseThrow();
    }

    private static void checkLine(Stroke stroke, double x0, double y0, double x1, double y1) {
        Point a = stroke.points().get(0);
        Point b = stroke.points().get(stroke.points().size() - 1);
        assertEquals(x0, a.x(), EXACT);
        assertEquals(y0, a.y(), EXACT);
        assertEquals(x1, b.x(), EXACT);
        assertEquals(y1, b.y(), EXACT);
    }
}
