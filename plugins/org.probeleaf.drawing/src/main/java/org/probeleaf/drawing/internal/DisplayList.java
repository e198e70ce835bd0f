// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.List;

import org.probeleaf.drawing.PagePicture;
import org.probeleaf.drawing.PageSize;
import org.probeleaf.drawing.Raster;
import org.probeleaf.schematic.geometry.Box;

/**
 * A page as the list of what is painted on it, in points. A piece of it is rendered by painting again only what
 * touches the piece, which takes milliseconds where interpreting the page takes many times that. Immutable.
 */
final class DisplayList implements PagePicture {

    /**
     * One act of painting.
     *
     * @param shape     in user space; null for a picture
     * @param image     the picture, or null
     * @param transform user space to points on the page; for a picture, its unit square to points
     * @param stroke    of a drawn line, or null where the shape is filled
     * @param paint     colour
     * @param composite how it covers what is beneath
     * @param clip      what it is cut to, in points on the page, or null
     * @param smooth    whether edges are smoothed
     * @param bounds    round everything it can touch, in points on the page
     */
    record Op(Shape shape, ScaledImage image, AffineTransform transform, Stroke stroke, Paint paint,
            Composite composite, Shape clip, boolean smooth, Rectangle2D bounds) {
    }

    private final PageSize size;
    private final List<Op> ops;

    DisplayList(PageSize size, List<Op> ops) {
        this.size = size;
        this.ops = List.copyOf(ops);
    }

    @Override
    public PageSize size() {
        return size;
    }

    @Override
    public Raster render(double scale, Box region) {
        int w = Math.max(1, (int) Math.ceil(region.width() * scale));
        int h = Math.max(1, (int) Math.ceil(region.height() * scale));
        BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setBackground(Color.WHITE);
            g.clearRect(0, 0, w, h);
            g.setRenderingHint(RenderingHints.KEY_RENDERING, RenderingHints.VALUE_RENDER_QUALITY);
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            AffineTransform base = new AffineTransform(scale, 0, 0, scale, -region.x0() * scale,
                    -region.y0() * scale);
            replay(g, base, new Rectangle2D.Double(region.x0(), region.y0(), w / scale, h / scale));
        } finally {
            g.dispose();
        }
        return Rasters.opaque(w, h, ((DataBufferInt) image.getRaster().getDataBuffer()).getData());
    }

    private void replay(Graphics2D g, AffineTransform base, Rectangle2D piece) {
        Shape clip = null;
        for (Op op : ops) {
            if (!op.bounds.intersects(piece)) {
                continue;
            }
            if (op.clip != clip) {
                clip = op.clip;
                g.setTransform(base);
                g.setClip(clip == null || clip.contains(piece) ? null : clip);
            }
            AffineTransform t = new AffineTransform(base);
            t.concatenate(op.transform);
            g.setComposite(op.composite);
            if (op.image != null) {
                op.image.paint(g, t);
                continue;
            }
            g.setTransform(t);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING,
                    op.smooth ? RenderingHints.VALUE_ANTIALIAS_ON : RenderingHints.VALUE_ANTIALIAS_OFF);
            g.setPaint(op.paint);
            if (op.stroke == null) {
                g.fill(op.shape);
            } else {
                g.setStroke(op.stroke);
                g.draw(op.shape);
            }
        }
    }

    /** How far a stroke reaches beyond its line, in its own units. */
    static double reach(Stroke stroke) {
        if (stroke instanceof BasicStroke b) {
            double mitre = b.getLineJoin() == BasicStroke.JOIN_MITER ? Math.min(b.getMiterLimit(), 4) : 1;
            return b.getLineWidth() * Math.max(1, mitre) + 0.5;
        }
        return 8;
    }
}
