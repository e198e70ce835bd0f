// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.waveform.format.CaptureException;

class PictureReaderTest {

    /** 120 by 80, green, with a red quarter at the top left and a blue one at the top right. */
    private static byte[] jpeg() throws IOException {
        BufferedImage image = new BufferedImage(120, 80, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(0, 160, 0));
        g.fillRect(0, 0, 120, 80);
        g.setColor(Color.RED);
        g.fillRect(0, 0, 60, 40);
        g.setColor(Color.BLUE);
        g.fillRect(60, 0, 60, 40);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", out);
        return out.toByteArray();
    }

    private static byte[] turned(int orientation, boolean big) throws IOException {
        byte[] plain = jpeg();
        byte[] tiff = new byte[26];
        System.arraycopy((big ? "MM" : "II").getBytes(StandardCharsets.US_ASCII), 0, tiff, 0, 2);
        put(tiff, 2, 42, big);
        put(tiff, big ? 6 : 4, 8, big);
        put(tiff, 8, 1, big);
        put(tiff, 10, 0x0112, big);
        put(tiff, 12, 3, big);
        put(tiff, big ? 16 : 14, 1, big);
        put(tiff, 18, orientation, big);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        out.write(new byte[] {(byte) 0xff, (byte) 0xe1, 0, (byte) (2 + 6 + tiff.length), 'E', 'x', 'i', 'f', 0, 0});
        out.write(tiff);
        out.write(plain, 2, plain.length - 2);
        return out.toByteArray();
    }

    private static void put(byte[] in, int at, int value, boolean big) {
        in[at] = (byte) (big ? value >> 8 : value);
        in[at + 1] = (byte) (big ? value : value >> 8);
    }

    private static String colour(Picture p, double x, double y) {
        int rgb = p.at(x * p.width(), y * p.height());
        int r = rgb >> 16;
        int g = rgb >> 8 & 0xff;
        int b = rgb & 0xff;
        return r > g && r > b ? "red" : b > g ? "blue" : "green";
    }

    /** What is seen at the top left and the top right, by the figures of Exif 2.3 (rows and columns of 0,0), from memory. */
    @ParameterizedTest
    @CsvSource({"1,red,blue,120", "2,blue,red,120", "3,green,green,120", "4,green,green,120", "5,red,green,80",
        "6,green,red,80", "7,green,blue,80", "8,blue,green,80"})
    void read_orientationOfTheCamera_isPutUpright(int code, String left, String right, int width) throws IOException {
        for (boolean big : new boolean[] {true, false}) {
            Picture p = PictureReader.read(turned(code, big));
            assertEquals(width, p.width());
            assertEquals(left, colour(p, 0.2, 0.2));
            assertEquals(right, colour(p, 0.8, 0.2));
        }
    }

    @Test
    void read_cutOff_oneLine() throws IOException {
        byte[] whole = jpeg();
        String message = assertThrows(CaptureException.class,
                () -> PictureReader.read(Arrays.copyOf(whole, 40))).getMessage();
        assertTrue(message.startsWith("the picture is damaged"), message);
    }

    @Test
    void read_noPicture_oneLine() {
        String message = assertThrows(CaptureException.class,
                () -> PictureReader.read("time,volts\n0,1\n".getBytes(StandardCharsets.US_ASCII))).getMessage();
        assertEquals("it is no PNG and no JPEG; save the photograph as one of these", message);
    }

    @Test
    void read_headOfAHugePicture_isRefusedUnread() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(70, 70, BufferedImage.TYPE_INT_RGB), "png", out);
        byte[] png = out.toByteArray();
        // Width and height of the IHDR chunk (PNG 1.2, 4.1.1; from memory), with its check sum made fit.
        png[17] = 1;
        png[21] = 1;
        java.util.zip.CRC32 sum = new java.util.zip.CRC32();
        sum.update(png, 12, 17);
        for (int i = 0; i < 4; i++) {
            png[29 + i] = (byte) (sum.getValue() >> 24 - 8 * i);
        }
        String message = assertThrows(CaptureException.class, () -> PictureReader.read(png)).getMessage();
        assertTrue(message.contains("too large"), message);
    }

    @Test
    void read_tinyPicture_oneLine() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", out);
        String message = assertThrows(CaptureException.class, () -> PictureReader.read(out.toByteArray())).getMessage();
        assertEquals("the picture has only 40 by 30 pixels; a screen needs at least 64 each way", message);
    }
}
