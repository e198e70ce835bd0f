// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;

/** Sheet files of every kind, sound and not. */
final class Fixtures {

    private Fixtures() {
    }

    /** A PDF of blank pages with a line on each. */
    static byte[] pdf(int pages) throws IOException {
        try (PDDocument document = document(pages); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            document.save(out);
            return out.toByteArray();
        }
    }

    /** The same, encrypted (AES, 256 bit) so that it asks for a password. */
    static byte[] protectedPdf(String password) throws IOException {
        try (PDDocument document = document(1); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            StandardProtectionPolicy policy = new StandardProtectionPolicy("owner", password, new AccessPermission());
            policy.setEncryptionKeyLength(256);
            document.protect(policy);
            document.save(out);
            return out.toByteArray();
        }
    }

    private static PDDocument document(int pages) throws IOException {
        PDDocument document = new PDDocument();
        for (int i = 0; i < pages; i++) {
            PDPage page = new PDPage(PDRectangle.A4);
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.moveTo(100, 100);
                content.lineTo(300, 100);
                content.stroke();
            }
        }
        return document;
    }

    /** A picture of one page in the format ({@code png}, {@code jpg}, {@code tiff}). */
    static byte[] picture(String format) throws IOException {
        try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            ImageIO.write(image(), format, out);
            return out.toByteArray();
        }
    }

    /** A TIFF of several pages. */
    static byte[] tiff(int pages) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("tiff").next();
        try (ByteArrayOutputStream bytes = new ByteArrayOutputStream();
                ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            writer.setOutput(out);
            writer.prepareWriteSequence(null);
            for (int i = 0; i < pages; i++) {
                writer.writeToSequence(new IIOImage(image(), null, null), null);
            }
            writer.endWriteSequence();
            out.flush();
            return bytes.toByteArray();
        } finally {
            writer.dispose();
        }
    }

    private static BufferedImage image() {
        BufferedImage image = new BufferedImage(400, 200, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 400; x++) {
            for (int y = 0; y < 200; y++) {
                image.setRGB(x, y, (x * 31 + y * 17) % 251 * 0x010203);
            }
        }
        return image;
    }

    static Path file(Path folder, String name, byte[] bytes) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.write(file, bytes);
    }
}
