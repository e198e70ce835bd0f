// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.sheet;

import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;

/** Draws wires and symbols on a page, in points from its top left. */
final class SheetPen implements AutoCloseable {

    private static final float WIRE = 0.6f;
    private static final float OUTLINE = 0.8f;
    private static final float DOT = 1.5f;
    /** How far the corner of a Bezier quarter circle reaches, for a radius of 1. */
    private static final float ROUND = 0.5523f;

    private final PDPageContentStream out;
    private final float height;
    private final PDFont font = new PDType1Font(FontName.HELVETICA);

    SheetPen(PDDocument document, float width, float height) throws IOException {
        PDPage page = new PDPage(new PDRectangle(width, height));
        document.addPage(page);
        this.height = height;
        this.out = new PDPageContentStream(document, page);
    }

    void wire(double x0, double y0, double x1, double y1) throws IOException {
        out.setStrokingColor(0f, 0.45f, 0f);
        line(x0, y0, x1, y1, WIRE);
    }

    void dot(double x, double y) throws IOException {
        out.setNonStrokingColor(0f, 0.45f, 0f);
        float cx = (float) x;
        float cy = height - (float) y;
        float k = ROUND * DOT;
        out.moveTo(cx + DOT, cy);
        out.curveTo(cx + DOT, cy + k, cx + k, cy + DOT, cx, cy + DOT);
        out.curveTo(cx - k, cy + DOT, cx - DOT, cy + k, cx - DOT, cy);
        out.curveTo(cx - DOT, cy - k, cx - k, cy - DOT, cx, cy - DOT);
        out.curveTo(cx + k, cy - DOT, cx + DOT, cy - k, cx + DOT, cy);
        out.fill();
    }

    /** A box of a symbol. */
    void box(double x0, double y0, double x1, double y1) throws IOException {
        out.setStrokingColor(0.5f, 0f, 0f);
        out.setLineWidth(OUTLINE);
        out.addRect((float) x0, height - (float) y1, (float) (x1 - x0), (float) (y1 - y0));
        out.stroke();
    }

    /** A lead of a symbol. */
    void lead(double x0, double y0, double x1, double y1) throws IOException {
        out.setStrokingColor(0.5f, 0f, 0f);
        line(x0, y0, x1, y1, WIRE);
    }

    /** Text whose base line starts at a place. */
    void text(String text, double x, double y, double size) throws IOException {
        out.setNonStrokingColor(0f, 0f, 0f);
        out.beginText();
        out.setFont(font, (float) size);
        out.newLineAtOffset((float) x, height - (float) y);
        out.showText(text);
        out.endText();
    }

    @Override
    public void close() throws IOException {
        out.close();
    }

    private void line(double x0, double y0, double x1, double y1, float width) throws IOException {
        out.setLineWidth(width);
        out.moveTo((float) x0, height - (float) y0);
        out.lineTo((float) x1, height - (float) y1);
        out.stroke();
    }
}
