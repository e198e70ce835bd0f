// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.Random;

/** A screen with what is about it, painted flat: so many pixels a division. */
final class FlatScene {

    private static final int SCALE = 100;
    private static final int RIM = 5;
    private static final Color[] GROUND = {new Color(8, 26, 16), new Color(26, 16, 6), new Color(6, 8, 14),
        new Color(34, 62, 176), new Color(236, 238, 234)};
    private static final Color[] GRID = {new Color(46, 98, 66), new Color(104, 72, 30), new Color(96, 100, 108),
        new Color(110, 138, 214), new Color(168, 170, 172)};
    private static final Color[] TRACE = {new Color(120, 255, 150), new Color(255, 184, 60), new Color(250, 230, 30),
        new Color(246, 250, 255), new Color(24, 28, 60)};

    private final BufferedImage image;
    private final int[] rgb;

    private FlatScene(BufferedImage image) {
        this.image = image;
        rgb = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    static FlatScene of(MadeWave wave, Look look, Random random) {
        int w = (look.across() + 2 * RIM) * SCALE;
        int h = (look.up() + 2 * RIM) * SCALE;
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(new Color(74, 76, 80));
        g.fillRect(0, 0, w, h);
        if (look.dressed()) {
            bench(g, w, h, random);
        }
        g.translate(RIM * SCALE, RIM * SCALE);
        g.scale(SCALE, SCALE);
        bezel(g, look, random);
        grid(g, look, random);
        if (look.dressed() && look.screen() >= 2) {
            words(g, look);
            if (look.screen() == 2 && random.nextBoolean()) {
                trace(g, new MadeWave(0, 1, 3, 0.2, -2.8), look, new Color(40, 190, 230), 0.03f);
            }
        }
        boolean tube = look.screen() < 2;
        float pen = (float) (tube ? 0.06 + 0.05 * random.nextDouble() : 0.03 + 0.05 * random.nextDouble());
        if (tube) {
            g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, 0.25f));
            trace(g, wave, look, TRACE[look.screen()], 2.6f * pen);
            g.setComposite(AlphaComposite.SrcOver);
        }
        trace(g, wave, look, TRACE[look.screen()], pen);
        g.dispose();
        if (look.pixels()) {
            pixels(image, look, random);
        }
        return new FlatScene(image);
    }

    private static void bench(Graphics2D g, int w, int h, Random random) {
        for (int i = 0; i < 1500; i++) {
            int v = 40 + random.nextInt(110);
            g.setColor(new Color(v, (int) (v * 0.9), (int) (v * 0.75)));
            g.fillRect(random.nextInt(w), random.nextInt(h), 8 + random.nextInt(60), 2 + random.nextInt(6));
        }
    }

    private static void bezel(Graphics2D g, Look look, Random random) {
        double out = 0.35 + 0.7 * random.nextDouble();
        g.setColor(new Color(58, 60, 64));
        g.fill(new java.awt.geom.RoundRectangle2D.Double(-2, -2, look.across() + 6.5, look.up() + 4, 0.8, 0.8));
        g.setColor(GROUND[look.screen()]);
        g.fill(new java.awt.geom.RoundRectangle2D.Double(-out, -out * 0.8, look.across() + 2 * out, look.up() + 1.6 * out,
                look.screen() < 2 ? 1 : 0.1, look.screen() < 2 ? 1 : 0.1));
        if (look.dressed()) {
            for (int i = 0; i < 6; i++) {
                g.setColor(new Color(150, 152, 150));
                g.fill(new java.awt.geom.Ellipse2D.Double(look.across() + out + 0.5 + i % 2 * 1.3, i / 2 * 2.4, 1, 1));
                g.setColor(new Color(30, 30, 32));
                g.fill(new java.awt.geom.Rectangle2D.Double(0.4 + i * 1.6, look.up() + out + 0.4, 1, 0.5));
            }
        }
    }

    private static void grid(Graphics2D g, Look look, Random random) {
        g.setColor(GRID[look.screen()]);
        float thick = 0.014f + 0.014f * random.nextFloat();
        boolean dotted = look.screen() == 2 && random.nextBoolean();
        BasicStroke inner = dotted ? new BasicStroke(thick * 1.3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1,
                new float[] {0.05f, 0.15f}, 0.025f) : new BasicStroke(thick);
        for (int i = 0; i <= look.across(); i++) {
            g.setStroke(i == 0 || i == look.across() ? new BasicStroke(thick) : inner);
            g.draw(new Line2D.Double(i, 0, i, look.up()));
        }
        for (int i = 0; i <= look.up(); i++) {
            g.setStroke(i == 0 || i == look.up() ? new BasicStroke(thick) : inner);
            g.draw(new Line2D.Double(0, i, look.across(), i));
        }
        g.setStroke(new BasicStroke(thick));
        for (int i = 0; i <= look.across() * 5; i++) {
            g.draw(new Line2D.Double(i / 5.0, look.up() / 2.0 - 0.08, i / 5.0, look.up() / 2.0 + 0.08));
        }
        for (int i = 0; i <= look.up() * 5; i++) {
            g.draw(new Line2D.Double(look.across() / 2.0 - 0.08, i / 5.0, look.across() / 2.0 + 0.08, i / 5.0));
        }
    }

    private static void words(Graphics2D g, Look look) {
        g.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont(0.36f));
        g.setColor(TRACE[look.screen()]);
        g.drawString("1: 1.00 V/div", 0.2f, look.up() - 0.15f);
        g.setColor(GRID[look.screen()].brighter());
        g.drawString("M 20 us   T run", look.across() - 3.6f, 0.45f);
    }

    private static void trace(Graphics2D g, MadeWave wave, Look look, Color colour, float pen) {
        g.setColor(colour);
        g.setStroke(new BasicStroke(pen, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        Path2D.Double path = new Path2D.Double();
        for (int i = 0; i <= look.across() * 200; i++) {
            double u = i / 200.0;
            double v = look.up() / 2.0 - wave.at(u);
            if (i == 0) {
                path.moveTo(u, v);
            } else {
                path.lineTo(u, v);
            }
        }
        g.draw(path);
    }

    /** Red, green and blue stripes with dark rows between, as of a panel with so many pixels a division. */
    private static void pixels(BufferedImage image, Look look, Random random) {
        double size = SCALE / (28 + 30 * random.nextDouble());
        for (int y = RIM * SCALE; y < (look.up() + RIM) * SCALE; y++) {
            for (int x = RIM * SCALE; x < (look.across() + RIM) * SCALE; x++) {
                int rgb = image.getRGB(x, y);
                double row = y / size % 1 > 0.8 ? 0.72 : 1.05;
                double third = x / size % 1 * 3;
                int out = 0;
                for (int c = 0; c < 3; c++) {
                    double v = (rgb >> 16 - 8 * c & 0xff) * row * (Math.abs(third - c - 0.5) < 0.5 ? 1.2 : 0.9);
                    out = out << 8 | (int) Math.min(255, v);
                }
                image.setRGB(x, y, out);
            }
        }
    }

    /** Adds the light of a place, in divisions from the upper left corner of the graticule. */
    void add(double u, double v, float[][] light, int at, float weight) {
        int x = (int) Math.max(0, Math.min(image.getWidth() - 1, Math.floor((u + RIM) * SCALE)));
        int y = (int) Math.max(0, Math.min(image.getHeight() - 1, Math.floor((v + RIM) * SCALE)));
        int pixel = rgb[y * image.getWidth() + x];
        for (int c = 0; c < 3; c++) {
            light[c][at] += weight * (pixel >> 16 - 8 * c & 0xff) / 255f;
        }
    }
}
