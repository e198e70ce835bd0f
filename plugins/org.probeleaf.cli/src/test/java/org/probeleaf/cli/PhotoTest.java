// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import javax.imageio.ImageIO;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code wave} and {@code capture} on a made picture of a screen. */
class PhotoTest {

    private static final int DIVISION = 50;

    @TempDir
    private Path folder;
    private Path photo;

    /** A sine of 4 divisions, 2.5 divisions a period, its middle one division above the centre. */
    @BeforeEach
    void draw() throws IOException {
        BufferedImage image = new BufferedImage(640, 520, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.translate(70, 60);
        g.setColor(new Color(90, 92, 100));
        for (int i = 0; i <= 10; i++) {
            g.drawLine(i * DIVISION, 0, i * DIVISION, 8 * DIVISION);
        }
        for (int i = 0; i <= 8; i++) {
            g.drawLine(0, i * DIVISION, 10 * DIVISION, i * DIVISION);
        }
        g.setColor(new Color(250, 230, 30));
        g.setStroke(new BasicStroke(2.5f));
        Path2D.Double trace = new Path2D.Double();
        trace.moveTo(0, 3 * DIVISION);
        for (int x = 1; x <= 10 * DIVISION; x++) {
            trace.lineTo(x, (3 - 2 * Math.sin(2 * Math.PI * x / (2.5 * DIVISION))) * DIVISION);
        }
        g.draw(trace);
        g.dispose();
        photo = folder.resolve("screen.png");
        ImageIO.write(image, "png", photo.toFile());
    }

    private static Map<?, ?> first(Map<String, Object> answer, String list) {
        return (Map<?, ?>) ((List<?>) answer.get(list)).get(0);
    }

    private static double number(Map<?, ?> of, String key) {
        return ((Number) of.get(key)).doubleValue();
    }

    @Test
    void wave_photograph_hasTheFigures() throws IOException {
        Map<?, ?> c = first(Shell.run("wave", photo, "--per-division", "500mV,20us", "--json", "-").done().json(), "channels");
        assertEquals(2, number(c, "amplitude_V"), 0.02);
        assertEquals(50e-6, number(c, "period_s"), 0.2e-6);
        assertEquals(0.5, number(c, "mean_V"), 0.02);
        String text = Shell.run("wave", photo, "--per-division", "500mV,20us").done().out();
        assertTrue(text.contains("0 V lies at the centre of the screen"), text);
        assertTrue(text.contains("10x8 divisions"), text);
    }

    @Test
    void wave_everythingSaid_isTaken() throws IOException {
        Map<?, ?> c = first(Shell.run("wave", photo, "--per-division", "1V,1ms", "--corners", "70,60;570,60;570,460;70,460",
                "--divisions", "10x8", "--zero", "1", "--trace", "#fae61e", "--json", "-").done().json(), "channels");
        assertEquals(4, number(c, "amplitude_V"), 0.05);
        assertEquals(2.5e-3, number(c, "period_s"), 0.02e-3);
        assertEquals(0, number(c, "mean_V"), 0.04);
    }

    @Test
    void wave_wrongWords_oneLine() throws IOException {
        Shell.run("wave", photo).failed(2, "screen.png is a photograph", "--per-division 1V,20us");
        Shell.run("wave", photo, "--per-division", "1V").failed(2, "--per-division", "volts and time");
        Shell.run("wave", photo, "--per-division", "20us,1V").failed(2, "--per-division");
        Shell.run("wave", photo, "--per-division", "0V,1us").failed(2, "above zero");
        Shell.run("wave", photo, "--per-division", "1V,1us", "--corners", "1,1").failed(2, "--corners", "four corners");
        Shell.run("wave", photo, "--per-division", "1V,1us", "--divisions", "ten").failed(2, "--divisions", "10x8");
        Shell.run("wave", photo, "--per-division", "1V,1us", "--trace", "mauve").failed(2, "--trace", "mauve", "#RRGGBB");
        Shell.run("wave", photo, "--per-division", "1V,1us", "--trace", "9999,1").failed(2, "--trace", "640 by 520");
        Shell.run("wave", photo, "--per-division", "1V,1us", "--zero", "up").failed(2, "--zero");
        Path text = Files.writeString(folder.resolve("plain.csv"), "0,1\n1,2\n2,3\n");
        Shell.run("wave", text, "--per-division", "1V,1us").failed(2, "plain.csv is none");
        byte[] whole = Files.readAllBytes(photo);
        Path cut = Files.write(folder.resolve("cut.png"), java.util.Arrays.copyOf(whole, 300));
        Shell.run("wave", cut, "--per-division", "1V,1us").failed(3, "cut.png", "damaged");
    }

    @Test
    void capture_photograph_isKeptWithHowItIsRead() throws IOException {
        Path job = folder.resolve("a.probeleaf");
        Shell.run("job", "new", job, Shell.EXAMPLE).done();
        Shell.run("capture", job, "IC5.8", photo).failed(2, "--per-division");
        Shell.run("capture", job, "IC5.8", photo, "--per-division", "1V,20us", "--trace", "130,160", "--zero", "-2").done();
        Map<?, ?> capture = first(Shell.run("job", "show", job, "--json", "-").done().json(), "captures");
        assertEquals("screen.png", capture.get("file"));
        assertEquals((int) Files.size(photo), capture.get("size"));
    }
}
