// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.probeleaf.drawing.Raster;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.SheetKind;

/** Pictures as sheets. */
class ImageSheetFileTest {

    private static final int RED = 0xFFFF0000;
    private static final int BLUE = 0xFF0000FF;

    /** 72 points an inch: 400 pixels at 300 dpi are 96 points. PNG rounds to whole pixels a metre. */
    @ParameterizedTest
    @CsvSource({"300, 96", "600, 48", "72, 400", "0, 144", "3, 144", "100000, 144"})
    void pageSize_resolutionOfTheFile_isTakenWhereItCanBe(double dpi, double width) throws IOException {
        try (SheetFile file = SheetFile.open(png(dpi), "scan.png", null)) {
            assertEquals(1, file.pageCount());
            assertEquals(width, file.pageSize(1).width(), 0.1);
            assertEquals(width / 2, file.pageSize(1).height(), 0.1);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "tiff", "bmp"})
    void open_kindOfPicture_isToldByItsBytes(String format) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image(), format, out);
        if (format.equals("bmp")) {
            SheetException e = assertThrows(SheetException.class,
                    () -> SheetFile.open(out.toByteArray(), "sheet.png", null));
            assertEquals(SheetException.Problem.NOT_A_SHEET, e.problem());
        } else {
            try (SheetFile file = SheetFile.open(out.toByteArray(), "sheet.pdf", null)) {
                assertEquals(SheetKind.SCAN, file.draw(1).kind());
            }
        }
    }

    @Test
    void draw_picture_isOnePictureOverThePage() throws IOException {
        try (SheetFile file = SheetFile.open(png(300), "scan.png", null)) {
            Drawing d = file.draw(1);
            assertTrue(d.strokes().isEmpty() && d.texts().isEmpty());
            assertEquals(400, d.pictures().get(0).pixelsWide());
            assertEquals(d.width(), d.pictures().get(0).box().width());
        }
    }

    @Test
    void render_piece_isTheRightWayUpAndInPlace() throws IOException {
        try (SheetFile file = SheetFile.open(png(300), "scan.png", null)) {
            Raster whole = file.render(1, 2, new Box(0, 0, 96, 48));
            assertEquals(192, whole.width());
            assertEquals(RED, whole.argb()[10 * 192 + 10], "left half is red");
            assertEquals(BLUE, whole.argb()[10 * 192 + 180], "right half is blue");
            Raster piece = file.picture(1).render(4, new Box(60, 10, 80, 20));
            assertEquals(BLUE, piece.argb()[5]);
            Raster beyond = file.render(1, 1, new Box(90, 40, 120, 60));
            assertEquals(0xFFFFFFFF, beyond.argb()[beyond.argb().length - 1], "white paper beside the picture");
        }
    }

    @Test
    void page_thatIsNotThere_isSaid() throws IOException {
        try (SheetFile file = SheetFile.open(png(300), "scan.png", null)) {
            assertEquals(SheetException.Problem.NO_SUCH_PAGE,
                    assertThrows(SheetException.class, () -> file.draw(2)).problem());
        }
    }

    private static BufferedImage image() {
        BufferedImage image = new BufferedImage(400, 200, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 200; y++) {
            for (int x = 0; x < 400; x++) {
                image.setRGB(x, y, x < 200 ? RED : BLUE);
            }
        }
        return image;
    }

    /** A PNG with a resolution, or without one for 0. */
    private static byte[] png(double dpi) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        IIOMetadata about = writer.getDefaultImageMetadata(
                ImageTypeSpecifier.createFromRenderedImage(image()), null);
        if (dpi > 0) {
            // The chunk pHYs of the PNG specification: pixels per metre.
            IIOMetadataNode root = new IIOMetadataNode("javax_imageio_png_1.0");
            IIOMetadataNode resolution = new IIOMetadataNode("pHYs");
            resolution.setAttribute("pixelsPerUnitXAxis", Long.toString(Math.round(dpi / 0.0254)));
            resolution.setAttribute("pixelsPerUnitYAxis", Long.toString(Math.round(dpi / 0.0254)));
            resolution.setAttribute("unitSpecifier", "meter");
            root.appendChild(resolution);
            about.mergeTree("javax_imageio_png_1.0", root);
        }
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.write(new IIOImage(image(), null, about));
            out.flush();
            return bytes.toByteArray();
        } finally {
            writer.dispose();
        }
    }
}
