// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

import com.lowagie.text.pdf.PdfArray;
import com.lowagie.text.pdf.PdfDictionary;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfReader;
import com.lowagie.text.pdf.PdfString;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.rendering.PDFRenderer;

/** What tests ask of PDF files. */
final class Pdfs {

    private Pdfs() {
    }

    static List<PdfDictionary> annotations(PdfReader reader, int page) {
        PdfArray array = reader.getPageN(page).getAsArray(PdfName.ANNOTS);
        List<PdfDictionary> list = new ArrayList<>();
        for (int i = 0; array != null && i < array.size(); i++) {
            list.add(array.getAsDict(i));
        }
        return list;
    }

    static String text(PdfDictionary d, PdfName key) {
        PdfString s = d.getAsString(key);
        return s == null ? "" : s.toUnicodeString();
    }

    static void assertSameContent(byte[] original, byte[] marked, String password) throws IOException {
        try (PDDocument a = open(original, password); PDDocument b = open(marked, password)) {
            assertEquals(a.getNumberOfPages(), b.getNumberOfPages());
            for (int i = 0; i < a.getNumberOfPages(); i++) {
                assertArrayEquals(raw(a.getPage(i)), raw(b.getPage(i)));
            }
        }
    }

    /** The content streams of a page as they lie in the file, still packed. */
    static byte[] raw(PDPage page) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        var streams = page.getContentStreams();
        while (streams.hasNext()) {
            PDStream stream = streams.next();
            try (InputStream in = stream.getCOSObject().createRawInputStream()) {
                all.write(in.readAllBytes());
            }
        }
        return all.toByteArray();
    }

    /** With annotations hidden, the first pages render as they did. */
    static void assertSamePixels(byte[] original, byte[] marked, String password, int pages) throws IOException {
        try (PDDocument a = open(original, password); PDDocument b = open(marked, password)) {
            for (int i = 0; i < pages; i++) {
                assertArrayEquals(pixels(render(a, i, false)), pixels(render(b, i, false)), "page " + (i + 1));
            }
        }
    }

    static PDDocument open(byte[] bytes, String password) throws IOException {
        return Loader.loadPDF(bytes, password == null ? "" : password);
    }

    static BufferedImage render(PDDocument document, int page, boolean annotations) throws IOException {
        PDFRenderer renderer = new PDFRenderer(document);
        renderer.setAnnotationsFilter(a -> annotations);
        return renderer.renderImage(page, 1);
    }

    static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }
}
