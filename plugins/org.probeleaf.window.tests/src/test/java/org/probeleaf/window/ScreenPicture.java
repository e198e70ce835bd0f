// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;

import javax.imageio.ImageIO;

/** Draws the dark screen of a scope with a graticule of 10x8 divisions in a frame, and square waves on it. */
final class ScreenPicture {

    private static final int ACROSS = 10;
    private static final int UP = 8;
    /** Pixels a division, and about the screen. */
    private static final int DIVISION = 84;
    private static final int RIM = 110;

    private final BufferedImage image = new BufferedImage(ACROSS * DIVISION + 2 * RIM, UP * DIVISION + 2 * RIM,
            BufferedImage.TYPE_INT_RGB);
    private final Graphics2D g = image.createGraphics();

    ScreenPicture() {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(new Color(74, 76, 80));
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        g.setColor(new Color(6, 8, 14));
        g.fillRoundRect(RIM / 2, RIM / 2, image.getWidth() - RIM, image.getHeight() - RIM, 30, 30);
        g.translate(RIM, RIM);
        g.setColor(new Color(96, 100, 108));
        for (int i = 0; i <= ACROSS; i++) {
            g.drawLine(i * DIVISION, 0, i * DIVISION, UP * DIVISION);
        }
        for (int i = 0; i <= UP; i++) {
            g.drawLine(0, i * DIVISION, ACROSS * DIVISION, i * DIVISION);
        }
    }

    /**
     * Draws a wave that is high and low for the same time.
     *
     * @param high   how far its upper level lies above the centre of the screen, in divisions
     * @param low    its lower level
     * @param period in divisions
     */
    ScreenPicture square(double high, double low, double period, Color colour) {
        g.setColor(colour);
        g.setStroke(new BasicStroke(4, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        Path2D.Double path = new Path2D.Double();
        path.moveTo(0, down(high));
        boolean up = true;
        for (double at = 0.3 * period; at < ACROSS; at += period / 2) {
            path.lineTo(at * DIVISION, down(up ? high : low));
            up = !up;
            path.lineTo(at * DIVISION, down(up ? high : low));
        }
        path.lineTo(ACROSS * DIVISION, down(up ? high : low));
        g.draw(path);
        return this;
    }

    private static double down(double aboveCentre) {
        return (UP / 2.0 - aboveCentre) * DIVISION;
    }

    byte[] png() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }
}
