// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

import org.probeleaf.drawing.PagePicture;
import org.probeleaf.drawing.PageSize;
import org.probeleaf.drawing.Raster;
import org.probeleaf.schematic.geometry.Box;

/** A page that is one picture. */
record ImagePicture(ScaledImage image, PageSize size) implements PagePicture {

    @Override
    public Raster render(double scale, Box region) {
        int w = Math.max(1, (int) Math.ceil(region.width() * scale));
        int h = Math.max(1, (int) Math.ceil(region.height() * scale));
        BufferedImage raster = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = raster.createGraphics();
        try {
            g.setBackground(Color.WHITE);
            g.clearRect(0, 0, w, h);
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            AffineTransform unit = new AffineTransform();
            unit.translate(-region.x0() * scale, -region.y0() * scale);
            unit.scale(size.width() * scale, size.height() * scale);
            unit.translate(0, 1);
            unit.scale(1, -1);
            image.paint(g, unit);
        } finally {
            g.dispose();
        }
        return Rasters.opaque(w, h, ((DataBufferInt) raster.getRaster().getDataBuffer()).getData());
    }
}
