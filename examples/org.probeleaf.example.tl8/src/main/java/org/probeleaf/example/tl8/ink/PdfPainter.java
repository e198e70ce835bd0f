// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.ink;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;

import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;
import org.probeleaf.schematic.geometry.Point;

/**
 * Writes pages of ink as a PDF. The same ink always gives the same bytes: the document id and dates are fixed, and
 * nothing is packed, because packed bytes depend on the machine's compression library.
 */
public final class PdfPainter {
    private static final Instant DRAWN = Instant.parse("1986-03-14T09:00:00Z");
    /** The control points of a quarter circle of radius 1 lie this far from its ends. */
    private static final double KAPPA = 0.5522847498;

    private final Typeface typeface;

    /** A painter that measures words in {@code typeface}. */
    public PdfPainter(Typeface typeface) {
        this.typeface = typeface;
    }

    /**
     * Paints a document.
     *
     * @param title of the document
     * @param pages its pages, in order
     * @return the bytes of the PDF file
     */
    public byte[] paint(String title, List<PageInk> pages) throws IOException {
        String level = System.getProperty(Filter.SYSPROP_DEFLATELEVEL);
        System.setProperty(Filter.SYSPROP_DEFLATELEVEL, "0");
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(1986L);
            document.setDocumentInformation(information(title));
            PDFont font = Typeface.in(document);
            for (PageInk page : pages) {
                paintPage(document, font, page);
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out, CompressParameters.NO_COMPRESSION);
            return out.toByteArray();
        } finally {
            if (level == null) {
                System.clearProperty(Filter.SYSPROP_DEFLATELEVEL);
            } else {
                System.setProperty(Filter.SYSPROP_DEFLATELEVEL, level);
            }
        }
    }

    private static PDDocumentInformation information(String title) {
        PDDocumentInformation info = new PDDocumentInformation();
        info.setTitle(title);
        info.setAuthor("Tern Instruments (fictional)");
        Calendar drawn = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        drawn.setTimeInMillis(DRAWN.toEpochMilli());
        info.setCreationDate(drawn);
        info.setModificationDate(drawn);
        return info;
    }

    private void paintPage(PDDocument document, PDFont font, PageInk ink) throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) ink.width(), (float) ink.height()));
        document.addPage(page);
        try (PDPageContentStream out = new PDPageContentStream(document, page, AppendMode.OVERWRITE, false)) {
            out.setLineCapStyle(1);
            out.setLineJoinStyle(1);
            for (Ink mark : ink.marks()) {
                paintMark(out, font, ink.height(), mark);
            }
        }
    }

    private void paintMark(PDPageContentStream out, PDFont font, double height, Ink mark) throws IOException {
        if (mark instanceof Ink.Line line) {
            paintLine(out, height, line);
        } else if (mark instanceof Ink.Curve curve) {
            out.setLineWidth((float) Ink.THIN);
            move(out, height, curve.from());
            curve(out, height, curve.c1(), curve.c2(), curve.to());
            out.stroke();
        } else if (mark instanceof Ink.Disc disc) {
            paintDisc(out, height, disc);
        } else if (mark instanceof Ink.Words words) {
            paintWords(out, font, height, words);
        }
    }

    private static void paintLine(PDPageContentStream out, double height, Ink.Line line) throws IOException {
        out.setLineWidth((float) line.width());
        move(out, height, line.points().get(0));
        for (Point p : line.points().subList(1, line.points().size())) {
            out.lineTo((float) p.x(), (float) (height - p.y()));
        }
        if (line.filled()) {
            out.closePath();
            out.fill();
        } else if (line.closed()) {
            out.closeAndStroke();
        } else {
            out.stroke();
        }
    }

    private static void paintDisc(PDPageContentStream out, double height, Ink.Disc disc) throws IOException {
        double r = disc.radius();
        double k = r * KAPPA;
        Point c = disc.centre();
        out.setLineWidth((float) Ink.THIN);
        move(out, height, c.plus(r, 0));
        curve(out, height, c.plus(r, k), c.plus(k, r), c.plus(0, r));
        curve(out, height, c.plus(-k, r), c.plus(-r, k), c.plus(-r, 0));
        curve(out, height, c.plus(-r, -k), c.plus(-k, -r), c.plus(0, -r));
        curve(out, height, c.plus(k, -r), c.plus(r, -k), c.plus(r, 0));
        if (disc.filled()) {
            out.closePath();
            out.fill();
        } else {
            out.closeAndStroke();
        }
    }

    private void paintWords(PDPageContentStream out, PDFont font, double height, Ink.Words words) throws IOException {
        Point s = typeface.start(words);
        out.beginText();
        out.setFont(font, (float) words.size());
        if (words.upward()) {
            out.setTextMatrix(new Matrix(0, 1, -1, 0, (float) s.x(), (float) (height - s.y())));
        } else {
            out.newLineAtOffset((float) s.x(), (float) (height - s.y()));
        }
        out.showText(words.text());
        out.endText();
    }

    private static void move(PDPageContentStream out, double height, Point p) throws IOException {
        out.moveTo((float) p.x(), (float) (height - p.y()));
    }

    private static void curve(PDPageContentStream out, double height, Point c1, Point c2, Point to)
            throws IOException {
        out.curveTo((float) c1.x(), (float) (height - c1.y()), (float) c2.x(), (float) (height - c2.y()),
                (float) to.x(), (float) (height - to.y()));
    }
}
