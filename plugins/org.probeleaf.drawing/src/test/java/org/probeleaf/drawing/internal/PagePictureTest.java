// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.drawing.PagePicture;
import org.probeleaf.drawing.Raster;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.schematic.geometry.Box;

/** The recorded page against PDFBox's own rendering of it. */
class PagePictureTest {

    @ParameterizedTest
    @CsvSource({"0,1", "0,2.5", "90,1.7", "180,0.6", "270,3"})
    void render_linesTextFills_equalsDirectRendering(int rotation, double scale) throws IOException {
        try (SheetFile file = SheetFile.open(sheet(rotation, false), "t.pdf", null)) {
            PagePicture picture = file.picture(1);
            assertTrue(picture instanceof DisplayList, "recorded");
            Box piece = new Box(30, 20, 180, 120);
            assertAlike(file.render(1, scale, piece), picture.render(scale, piece), 3);
        }
    }

    @Test
    void render_picture_isShownTheRightWayUp() throws IOException {
        try (SheetFile file = SheetFile.open(sheet(0, true), "t.pdf", null)) {
            Raster r = file.picture(1).render(1, new Box(0, 0, 300, 200));
            assertEquals(0xFFFF0000, r.argb()[60 * r.width() + 230], "upper half is red");
            assertEquals(0xFF0000FF, r.argb()[110 * r.width() + 230], "lower half is blue");
        }
    }

    @Test
    void render_afterClosing_stillWorks() throws IOException {
        PagePicture picture;
        try (SheetFile file = SheetFile.open(sheet(0, false), "t.pdf", null)) {
            picture = file.picture(1);
        }
        assertEquals(600, picture.render(2, new Box(0, 0, 300, 200)).width());
    }

    @Test
    void picture_ofPageThatIsNotThere_isRefused() throws IOException {
        try (SheetFile file = SheetFile.open(sheet(0, false), "t.pdf", null)) {
            SheetException e = org.junit.jupiter.api.Assertions.assertThrows(SheetException.class,
                    () -> file.picture(2));
            assertEquals(SheetException.Problem.NO_SUCH_PAGE, e.problem());
        }
    }

    private static void assertAlike(Raster expected, Raster actual, double allowedMean) {
        assertEquals(expected.width(), actual.width());
        assertEquals(expected.height(), actual.height());
        long sum = 0;
        for (int i = 0; i < expected.argb().length; i++) {
            sum += Math.abs((expected.argb()[i] >> 8 & 0xFF) - (actual.argb()[i] >> 8 & 0xFF));
        }
        double mean = (double) sum / expected.argb().length;
        assertTrue(mean <= allowedMean, "mean difference " + mean);
    }

    private static byte[] sheet(int rotation, boolean withPicture) throws IOException {
        try (PDDocument document = new PDDocument()) {
            PDPage page = new PDPage(new PDRectangle(300, 200));
            page.setRotation(rotation);
            document.addPage(page);
            try (PDPageContentStream c = new PDPageContentStream(document, page)) {
                c.addRect(10, 10, 250, 160);
                c.clip();
                c.setLineWidth(0.7f);
                for (int i = 0; i < 12; i++) {
                    c.moveTo(20, 20 + 12 * i);
                    c.curveTo(80, 40 + 12 * i, 120, 12 * i, 280, 20 + 12 * i);
                    c.stroke();
                }
                c.setNonStrokingColor(Color.ORANGE);
                c.addRect(40, 60, 30, 20);
                c.fill();
                c.beginText();
                c.setFont(new PDType1Font(Standard14Fonts.FontName.HELVETICA), 14);
                c.newLineAtOffset(60, 100);
                c.showText("IC3 74LS138");
                c.endText();
                if (withPicture) {
                    BufferedImage image = new BufferedImage(64, 64, BufferedImage.TYPE_INT_RGB);
                    for (int i = 0; i < 64 * 64; i++) {
                        image.setRGB(i % 64, i / 64, i < 64 * 32 ? 0xFF0000 : 0x0000FF);
                    }
                    c.drawImage(LosslessFactory.createFromImage(document, image), 200, 70, 50, 100);
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        }
    }
}
