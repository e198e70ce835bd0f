// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.Map;

/**
 * A graphics that forwards its state to another and leaves the painting of shapes to its subclass. Any other kind of
 * painting is reported through {@link #unsupported()}: PDFBox paints shapes only, glyphs included.
 */
abstract class ForwardingGraphics extends Graphics2D {

    private final Graphics2D state;
    private final Graphics2D spare;

    ForwardingGraphics(Graphics2D state, Graphics2D spare) {
        this.state = state;
        this.spare = spare;
    }

    /** Something was painted that is no shape. */
    protected abstract void unsupported();

    @Override
    public Graphics create() {
        unsupported();
        return spare.create();
    }

    @Override
    public void dispose() {
        state.dispose();
        spare.dispose();
    }

    @Override
    public void rotate(double theta) {
        state.rotate(theta);
    }

    @Override
    public void rotate(double theta, double x, double y) {
        state.rotate(theta, x, y);
    }

    @Override
    public void scale(double sx, double sy) {
        state.scale(sx, sy);
    }

    @Override
    public void shear(double shx, double shy) {
        state.shear(shx, shy);
    }

    @Override
    public void transform(AffineTransform t) {
        state.transform(t);
    }

    @Override
    public void setTransform(AffineTransform t) {
        state.setTransform(t);
    }

    @Override
    public AffineTransform getTransform() {
        return state.getTransform();
    }

    @Override
    public void translate(int x, int y) {
        state.translate(x, y);
    }

    @Override
    public void translate(double tx, double ty) {
        state.translate(tx, ty);
    }

    @Override
    public Paint getPaint() {
        return state.getPaint();
    }

    @Override
    public void setPaint(Paint paint) {
        state.setPaint(paint);
    }

    @Override
    public Composite getComposite() {
        return state.getComposite();
    }

    @Override
    public void setComposite(Composite composite) {
        state.setComposite(composite);
    }

    @Override
    public Color getBackground() {
        return state.getBackground();
    }

    @Override
    public void setBackground(Color color) {
        state.setBackground(color);
    }

    @Override
    public Stroke getStroke() {
        return state.getStroke();
    }

    @Override
    public void setStroke(Stroke stroke) {
        state.setStroke(stroke);
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return state.getFontRenderContext();
    }

    @Override
    public void setRenderingHint(RenderingHints.Key key, Object value) {
        state.setRenderingHint(key, value);
    }

    @Override
    public Object getRenderingHint(RenderingHints.Key key) {
        return state.getRenderingHint(key);
    }

    @Override
    public void setRenderingHints(Map<?, ?> hints) {
        state.setRenderingHints(hints);
    }

    @Override
    public void addRenderingHints(Map<?, ?> hints) {
        state.addRenderingHints(hints);
    }

    @Override
    public RenderingHints getRenderingHints() {
        return state.getRenderingHints();
    }

    @Override
    public Color getColor() {
        return state.getColor();
    }

    @Override
    public void setColor(Color color) {
        state.setColor(color);
    }

    @Override
    public Font getFont() {
        return state.getFont();
    }

    @Override
    public void setFont(Font font) {
        state.setFont(font);
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return state.getFontMetrics(font);
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return state.getDeviceConfiguration();
    }

    @Override
    public boolean drawImage(Image i, AffineTransform t, ImageObserver o) {
        unsupported();
        return true;
    }

    @Override
    public void drawImage(BufferedImage i, BufferedImageOp op, int x, int y) {
        unsupported();
    }

    @Override
    public void drawRenderedImage(RenderedImage i, AffineTransform t) {
        unsupported();
    }

    @Override
    public void drawRenderableImage(RenderableImage i, AffineTransform t) {
        unsupported();
    }

    @Override
    public void drawString(String s, int x, int y) {
        unsupported();
    }

    @Override
    public void drawString(String s, float x, float y) {
        unsupported();
    }

    @Override
    public void drawString(AttributedCharacterIterator s, int x, int y) {
        unsupported();
    }

    @Override
    public void drawString(AttributedCharacterIterator s, float x, float y) {
        unsupported();
    }

    @Override
    public void drawGlyphVector(GlyphVector g, float x, float y) {
        unsupported();
    }

    @Override
    public boolean hit(Rectangle r, Shape s, boolean onStroke) {
        unsupported();
        return true;
    }

    @Override
    public void setPaintMode() {
        unsupported();
    }

    @Override
    public void setXORMode(Color c) {
        unsupported();
    }

    @Override
    public void copyArea(int x, int y, int w, int h, int dx, int dy) {
        unsupported();
    }

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        unsupported();
    }

    @Override
    public void fillRect(int x, int y, int w, int h) {
        unsupported();
    }

    @Override
    public void clearRect(int x, int y, int w, int h) {
        unsupported();
    }

    @Override
    public void drawRoundRect(int x, int y, int w, int h, int aw, int ah) {
        unsupported();
    }

    @Override
    public void fillRoundRect(int x, int y, int w, int h, int aw, int ah) {
        unsupported();
    }

    @Override
    public void drawOval(int x, int y, int w, int h) {
        unsupported();
    }

    @Override
    public void fillOval(int x, int y, int w, int h) {
        unsupported();
    }

    @Override
    public void drawArc(int x, int y, int w, int h, int a0, int a) {
        unsupported();
    }

    @Override
    public void fillArc(int x, int y, int w, int h, int a0, int a) {
        unsupported();
    }

    @Override
    public void drawPolyline(int[] xs, int[] ys, int n) {
        unsupported();
    }

    @Override
    public void drawPolygon(int[] xs, int[] ys, int n) {
        unsupported();
    }

    @Override
    public void fillPolygon(int[] xs, int[] ys, int n) {
        unsupported();
    }

    @Override
    public boolean drawImage(Image i, int x, int y, ImageObserver o) {
        unsupported();
        return true;
    }

    @Override
    public boolean drawImage(Image i, int x, int y, int w, int h, ImageObserver o) {
        unsupported();
        return true;
    }

    @Override
    public boolean drawImage(Image i, int x, int y, Color c, ImageObserver o) {
        unsupported();
        return true;
    }

    @Override
    public boolean drawImage(Image i, int x, int y, int w, int h, Color c, ImageObserver o) {
        unsupported();
        return true;
    }

    @Override
    public boolean drawImage(Image i, int dx1, int dy1, int dx2, int dy2, int sx1, int sy1, int sx2, int sy2,
            ImageObserver o) {
        unsupported();
        return true;
    }

    @Override
    public boolean drawImage(Image i, int dx1, int dy1, int dx2, int dy2, int sx1, int sy1, int sx2, int sy2, Color c,
            ImageObserver o) {
        unsupported();
        return true;
    }

    @Override
    public void clipRect(int x, int y, int w, int h) {
        unsupported();
    }

    @Override
    public void setClip(int x, int y, int w, int h) {
        unsupported();
    }

    @Override
    public Rectangle getClipBounds() {
        return getClip() == null ? null : getClip().getBounds();
    }
}
