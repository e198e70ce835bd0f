// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.Test;
import org.probeleaf.photo.trace.FollowedTrace.Second;

/** Screens with one trace and with two; a graticule of 10x8 divisions. */
class SecondTraceTest {

    private static final Color YELLOW = new Color(250, 230, 30);
    private static final Color CYAN = new Color(40, 190, 230);
    private static final int DIVISION = 60;
    private static final int RIM = 80;

    private final BufferedImage image = new BufferedImage(10 * DIVISION + 2 * RIM, 8 * DIVISION + 2 * RIM,
            BufferedImage.TYPE_INT_RGB);
    private final Graphics2D g = image.createGraphics();

    SecondTraceTest() {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(new Color(6, 8, 14));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.translate(RIM, RIM);
        g.setColor(new Color(96, 100, 108));
        for (int i = 0; i <= 10; i++) {
            g.drawLine(i * DIVISION, 0, i * DIVISION, 8 * DIVISION);
        }
        for (int i = 0; i <= 8; i++) {
            g.drawLine(0, i * DIVISION, 10 * DIVISION, i * DIVISION);
        }
    }

    /** A sine of two divisions, so far above the centre. */
    private void sine(double above, Color colour) {
        Path2D.Double path = new Path2D.Double();
        for (int x = 0; x <= 10 * DIVISION; x++) {
            double y = (4 - above - Math.sin(2 * Math.PI * x / (2.7 * DIVISION))) * DIVISION;
            if (x == 0) {
                path.moveTo(x, y);
            } else {
                path.lineTo(x, y);
            }
        }
        g.setColor(colour);
        g.setStroke(new BasicStroke(3));
        g.draw(path);
    }

    private PhotoReading read() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return PhotoReader.read(out.toByteArray(), PhotoOptions.of(1, 1e-3));
    }

    private static boolean told(PhotoReading reading) {
        return reading.imported().notes().assumed().stream().anyMatch(n -> n.startsWith("There seems to be "));
    }

    @Test
    void oneTrace_noOtherIsTold() throws IOException {
        sine(1.3, YELLOW);
        PhotoReading reading = read();
        assertEquals(Second.NONE, reading.trace().second());
        assertFalse(told(reading));
    }

    @Test
    void sameColour_isTold() throws IOException {
        sine(2.3, YELLOW);
        sine(-2.3, YELLOW);
        PhotoReading reading = read();
        assertEquals(Second.ALIKE, reading.trace().second());
        assertTrue(told(reading));
    }

    @Test
    void otherColour_isTold() throws IOException {
        sine(2.3, YELLOW);
        sine(-2.3, CYAN);
        PhotoReading reading = read();
        assertEquals(Second.UNLIKE, reading.trace().second());
        assertTrue(told(reading));
    }
}
