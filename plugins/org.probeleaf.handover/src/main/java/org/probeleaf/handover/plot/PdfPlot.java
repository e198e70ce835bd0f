// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.plot;

import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.probeleaf.handover.internal.paint.TypeFace;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.PlotShape;
import org.probeleaf.waveform.plot.PlotShape.Area;
import org.probeleaf.waveform.plot.PlotShape.Line;
import org.probeleaf.waveform.plot.PlotShape.Words;

/** Draws plots on pages of one document, as lines, areas and letters that stay sharp at any size. */
public final class PdfPlot {

    /** Size of letters in the plot's units; the margins of {@link Plot} are made for it. */
    private static final double LETTERS = 10.5;
    /** Thickness of the strokes that make letters bold, against their size. */
    private static final double BOLD = 0.035;
    private static final int ROUND = 1;

    private final TypeFace face;

    /** Draws in a document, which gets the letters that are used. */
    public PdfPlot(PDDocument document) throws IOException {
        this(TypeFace.in(document));
    }

    /** Draws with letters that a document already has. */
    public PdfPlot(TypeFace face) {
        this.face = face;
    }

    /** A document of one page that is as large as the plot, a point for each of its units. */
    public static byte[] document(Plot plot) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle((float) plot.width(), (float) plot.height()));
            document.addPage(page);
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                new PdfPlot(document).draw(out, plot, 0, plot.height(), 1);
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        }
    }

    /**
     * Draws a plot; the graphics state is afterwards as it was.
     *
     * @param out   a page's or a form's content
     * @param left  where its left edge is to be, in the content's own frame (y upwards)
     * @param top   where its upper edge is to be, in the same frame
     * @param scale points of the content for each unit of the plot
     */
    public void draw(PDPageContentStream out, Plot plot, double left, double top, double scale) throws IOException {
        out.saveGraphicsState();
        out.transform(new Matrix((float) scale, 0, 0, (float) scale, (float) left, (float) top));
        out.setLineJoinStyle(ROUND);
        for (PlotShape shape : plot.shapes()) {
            if (shape instanceof Line line) {
                stroke(out, line.ink());
                path(out, line.xy());
                out.stroke();
            } else if (shape instanceof Area area) {
                fill(out, area.ink());
                path(out, area.xy());
                out.fill();
            } else if (shape instanceof Words words) {
                words(out, words);
            }
        }
        out.restoreGraphicsState();
    }

    private static void path(PDPageContentStream out, double[] xy) throws IOException {
        out.moveTo((float) xy[0], (float) -xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            out.lineTo((float) xy[i], (float) -xy[i + 1]);
        }
    }

    private static void stroke(PDPageContentStream out, Ink ink) throws IOException {
        double[] dashes = ink.dashes();
        float[] pattern = new float[dashes.length];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = (float) dashes[i];
        }
        out.setLineDashPattern(pattern, 0);
        out.setLineWidth((float) ink.width());
        out.setStrokingColor(part(ink, 16), part(ink, 8), part(ink, 0));
    }

    private static void fill(PDPageContentStream out, Ink ink) throws IOException {
        out.setNonStrokingColor(part(ink, 16), part(ink, 8), part(ink, 0));
    }

    private static float part(Ink ink, int shift) {
        return (ink.rgb() >> shift & 0xff) / 255f;
    }

    private void words(PDPageContentStream out, Words words) throws IOException {
        String text = face.clean(words.text());
        double width = face.width(text, LETTERS);
        double x = switch (words.lean()) {
            case START -> words.x();
            case MIDDLE -> words.x() - width / 2;
            case END -> words.x() - width;
        };
        fill(out, words.ink());
        out.beginText();
        face.use(out, LETTERS);
        out.setRenderingMode(words.bold() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        if (words.bold()) {
            out.setStrokingColor(part(words.ink(), 16), part(words.ink(), 8), part(words.ink(), 0));
            out.setLineDashPattern(new float[0], 0);
            out.setLineWidth((float) (BOLD * LETTERS));
        }
        out.newLineAtOffset((float) x, (float) (-words.y() - TypeFace.capHeight() * LETTERS / 2));
        out.showText(text);
        out.endText();
    }
}
