// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.probeleaf.waveform.format.CaptureException;

class PhotoReaderTest {

    private static byte[] grey() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(400, 300, BufferedImage.TYPE_INT_RGB), "png", out);
        return out.toByteArray();
    }

    @Test
    void read_nothingSaidOfTheScale_oneLine() {
        assertEquals("it is a photograph; say volts and time per division, as --per-division 1V,20us",
                assertThrows(CaptureException.class, () -> PhotoReader.read(grey(), PhotoOptions.none())).getMessage());
    }

    @Test
    void read_pictureWithoutAScreen_saysToMarkTheCorners() {
        String message = assertThrows(CaptureException.class,
                () -> PhotoReader.read(grey(), PhotoOptions.of(1, 1))).getMessage();
        assertTrue(message.startsWith("no graticule is found in the picture; give its four corners"), message);
    }

    @Test
    void read_screenWithoutATrace_saysSo() {
        PhotoOptions marked = PhotoOptions.of(1, 1)
                .withCorners(org.probeleaf.photo.graticule.Corners.parse("50,50;350,50;350,250;50,250"));
        String message = assertThrows(CaptureException.class, () -> PhotoReader.read(grey(), marked)).getMessage();
        assertTrue(message.startsWith("no trace stands out on the screen"), message);
    }
}
