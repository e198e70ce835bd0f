// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.pdf;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.probeleaf.drawing.PageSize;
import org.probeleaf.drawing.Raster;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Picture;
import org.probeleaf.schematic.geometry.Box;

/** A sheet file as a PDF document to put annotations on: the PDF itself, or pages that show the pictures of an image. */
public final class SheetDocument {

    /** A reader looks for the mark of a PDF in so many bytes from the start (ISO 32000-1, implementation note 13). */
    private static final int HEADER = 1024;

    private SheetDocument() {
    }

    /**
     * @param file     the sheet, open
     * @param bytes    of it
     * @param password that opens it, or null
     */
    public static PDDocument open(SheetFile file, byte[] bytes, String password) throws IOException {
        String head = new String(bytes, 0, Math.min(bytes.length, HEADER), StandardCharsets.ISO_8859_1);
        return head.contains("%PDF-") ? Loader.loadPDF(bytes, password == null ? "" : password) : paged(file, bytes);
    }

    private static PDDocument paged(SheetFile file, byte[] bytes) throws IOException {
        PDDocument document = new PDDocument();
        try {
            for (int i = 1; i <= file.pageCount(); i++) {
                PageSize size = file.pageSize(i);
                PDPage page = new PDPage(new PDRectangle((float) size.width(), (float) size.height()));
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    content.drawImage(picture(document, file, i, bytes), 0, 0, (float) size.width(),
                            (float) size.height());
                }
            }
            return document;
        } catch (IOException | RuntimeException e) {
            document.close();
            throw e;
        }
    }

    /** A JPEG goes in as it came, anything else pixel for pixel. */
    private static PDImageXObject picture(PDDocument document, SheetFile file, int page, byte[] bytes)
            throws IOException {
        boolean jpeg = bytes.length > 2 && (bytes[0] & 255) == 0xFF && (bytes[1] & 255) == 0xD8;
        if (jpeg) {
            return JPEGFactory.createFromStream(document, new ByteArrayInputStream(bytes));
        }
        PageSize size = file.pageSize(page);
        Picture picture = file.draw(page).pictures().get(0);
        Raster raster = file.render(page, picture.pixelsWide() / size.width(),
                new Box(0, 0, size.width(), size.height()));
        BufferedImage image = new BufferedImage(raster.width(), raster.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, raster.width(), raster.height(), raster.argb(), 0, raster.width());
        return LosslessFactory.createFromImage(document, image);
    }
}
