// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.List;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.Plot;
import org.probeleaf.waveform.plot.PlotBand;
import org.probeleaf.waveform.plot.PlotCursor;
import org.probeleaf.waveform.plot.PlotFrame;
import org.probeleaf.waveform.plot.PlotLevel;
import org.probeleaf.waveform.plot.PlotPane;
import org.probeleaf.waveform.plot.PlotTrace;

class PdfPlotTest {

    private static Plot plot() {
        PlotTrace trace = PlotTrace.of("/INP µA", Channel.volts("CH1", 1e-6, 0, 5, 5, 5, 0), Ink.TRACE_A);
        PlotPane pane = PlotPane.of(List.of(trace), List.of(new PlotLevel(2, "VIH 2 V", Ink.THRESHOLD)))
                .with(List.of(new PlotBand(0.8, 2, Ink.NEITHER)));
        return new Plot(400, 200, 0, 4e-6, List.of(pane), List.of(new PlotCursor("A", 3e-6)), false);
    }

    /** The colour of a pixel is that of an ink, but for the edges that rendering softens. */
    private static boolean like(int rgb, Ink ink) {
        int off = 0;
        for (int shift = 0; shift <= 16; shift += 8) {
            off = Math.max(off, Math.abs((rgb >> shift & 0xff) - (ink.rgb() >> shift & 0xff)));
        }
        return off < 12;
    }

    @Test
    void document_ofAPlot_hasItsWordsAndItsLinesWhereTheyBelong() throws Exception {
        try (PDDocument document = Loader.loadPDF(PdfPlot.document(plot()))) {
            assertEquals(1, document.getNumberOfPages());
            assertEquals(400, document.getPage(0).getMediaBox().getWidth(), 1e-3);
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("/INP µA") && text.contains("VIH 2 V") && text.contains("4 µs"), text);
            assertFalse(document.getPage(0).getResources().getXObjectNames().iterator().hasNext(), "no picture in it");
            BufferedImage page = new PDFRenderer(document).renderImage(0, 4);
            PlotFrame f = plot().frame();
            assertTrue(like(page.getRGB((int) (4 * f.x(2e-6)), (int) (4 * f.y(5))), Ink.TRACE_A));
            assertTrue(like(page.getRGB((int) (4 * f.x(2.1e-6)), (int) (4 * f.y(1.4))), Ink.NEITHER));
            assertTrue(like(page.getRGB((int) (4 * f.x(3e-6)), (int) (4 * f.y(1.3))), Ink.CURSOR));
        }
    }

    @Test
    void draw_onAPage_keepsToItsPlaceAndLeavesTheStateAsItWas() throws Exception {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage();
            document.addPage(page);
            try (PDPageContentStream out = new PDPageContentStream(document, page)) {
                new PdfPlot(document).draw(out, plot(), 100, 600, 0.5);
                out.addRect(10, 10, 20, 20);
                out.fill();
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            BufferedImage image = new PDFRenderer(Loader.loadPDF(bytes.toByteArray())).renderImage(0, 1);
            PlotFrame f = plot().frame();
            int x = (int) Math.round(100 + 0.5 * f.x(2.1e-6));
            int y = (int) Math.round(page.getMediaBox().getHeight() - 600 + 0.5 * f.y(1.4));
            assertTrue(like(image.getRGB(x, y), Ink.NEITHER), Integer.toHexString(image.getRGB(x, y)));
            assertEquals(0xff000000, image.getRGB(20, (int) page.getMediaBox().getHeight() - 20));
            assertEquals(0xffffffff, image.getRGB(90, 300));
            assertEquals(0xffffffff, image.getRGB(310, 300));
        }
    }
}
