// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/**
 * A picture with its halved copies, so that a large scan shown small stays legible and quick. The copies are made
 * when they are first needed. Any thread may use it.
 */
final class ScaledImage {

    private final List<BufferedImage> levels = new ArrayList<>();

    ScaledImage(BufferedImage image) {
        levels.add(image);
    }

    /**
     * Paints the picture.
     *
     * @param unit takes the unit square, y upwards as in PDF, to pixels
     */
    void paint(Graphics2D g, AffineTransform unit) {
        double wide = Math.hypot(unit.getScaleX(), unit.getShearY());
        double high = Math.hypot(unit.getShearX(), unit.getScaleY());
        BufferedImage image = level(wide, high);
        AffineTransform t = new AffineTransform(unit);
        t.translate(0, 1);
        t.scale(1.0 / image.getWidth(), -1.0 / image.getHeight());
        g.setTransform(new AffineTransform());
        g.drawImage(image, t, null);
    }

    /** The smallest copy with at least as many pixels as are shown, save for the last half step. */
    private synchronized BufferedImage level(double wide, double high) {
        int i = 0;
        while (true) {
            BufferedImage image = levels.get(i);
            if (image.getWidth() < 2 * wide || image.getHeight() < 2 * high || image.getWidth() < 4
                    || image.getHeight() < 4) {
                return image;
            }
            if (++i == levels.size()) {
                levels.add(half(image));
            }
        }
    }

    private static BufferedImage half(BufferedImage image) {
        int w = Math.max(1, image.getWidth() / 2);
        int h = Math.max(1, image.getHeight() / 2);
        boolean alpha = image.getColorModel().hasAlpha();
        BufferedImage result = new BufferedImage(w, h,
                alpha ? BufferedImage.TYPE_INT_ARGB : BufferedImage.TYPE_INT_RGB);
        Graphics2D g = result.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image, 0, 0, w, h, null);
        g.dispose();
        return result;
    }
}
