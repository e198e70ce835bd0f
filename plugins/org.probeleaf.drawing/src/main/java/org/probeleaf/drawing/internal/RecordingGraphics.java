// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Keeps what is painted on it as {@link DisplayList.Op}s. */
final class RecordingGraphics extends ForwardingGraphics {

    private final List<DisplayList.Op> ops = new ArrayList<>();
    private boolean scaleMatters;
    private Shape lastUserClip;
    private AffineTransform lastClipTransform;
    private Shape lastClip;

    /**
     * @param state holds transform, clip, paint and so on
     * @param spare for what must be given out as a graphics of its own
     */
    RecordingGraphics(Graphics2D state, Graphics2D spare) {
        super(state, spare);
    }

    List<DisplayList.Op> ops() {
        return ops;
    }

    /** Whether something was painted that looks different at another scale. */
    boolean scaleMatters() {
        return scaleMatters;
    }

    @Override
    public void setClip(Shape clip) {
        AffineTransform transform = getTransform();
        if (clip != lastUserClip || !transform.equals(lastClipTransform)) {
            lastUserClip = clip;
            lastClipTransform = transform;
            lastClip = clip == null ? null : simple(transform.createTransformedShape(clip));
        }
    }

    /** A rectangle where the outline is one: rectangles are tested and cut much faster. */
    private static Shape simple(Shape shape) {
        Rectangle2D bounds = shape.getBounds2D();
        return shape.contains(bounds.getX() + 1e-4, bounds.getY() + 1e-4, bounds.getWidth() - 2e-4,
                bounds.getHeight() - 2e-4) ? bounds : shape;
    }

    @Override
    public Shape getClip() {
        return lastUserClip;
    }

    @Override
    public void clip(Shape s) {
        scaleMatters = true;
    }

    @Override
    public void draw(Shape shape) {
        add(shape, true);
    }

    @Override
    public void fill(Shape shape) {
        add(shape, false);
    }

    @Override
    public void clearRect(int x, int y, int w, int h) {
        // the paper, which each rendering brings along
    }

    @Override
    protected void unsupported() {
        scaleMatters = true;
    }

    /** Records a picture over the unit square that {@code unit} places in user space. */
    void addImage(ScaledImage image, AffineTransform unit, Composite composite) {
        AffineTransform t = getTransform();
        t.concatenate(unit);
        Rectangle2D bounds = t.createTransformedShape(new Rectangle2D.Double(0, 0, 1, 1)).getBounds2D();
        ops.add(new DisplayList.Op(null, image, t, null, Color.BLACK, composite, lastClip, true, bounds));
    }

    private void add(Shape shape, boolean stroked) {
        if (!(getPaint() instanceof Color) || !(getComposite() instanceof AlphaComposite)) {
            scaleMatters = true;
            return;
        }
        Rectangle2D own = shape.getBounds2D();
        double reach = stroked ? DisplayList.reach(getStroke()) : 0.05;
        Rectangle2D grown = new Rectangle2D.Double(own.getX() - reach, own.getY() - reach,
                own.getWidth() + 2 * reach, own.getHeight() + 2 * reach);
        AffineTransform t = getTransform();
        Rectangle2D bounds = t.createTransformedShape(grown).getBounds2D();
        boolean smooth = getRenderingHint(RenderingHints.KEY_ANTIALIASING) != RenderingHints.VALUE_ANTIALIAS_OFF;
        ops.add(new DisplayList.Op(copy(shape), null, t, stroked ? getStroke() : null, getPaint(), getComposite(),
                lastClip, smooth, bounds));
    }

    private static Shape copy(Shape shape) {
        if (shape instanceof GeneralPath path) {
            return new Path2D.Float(path);
        }
        return new Path2D.Double(shape);
    }
}
