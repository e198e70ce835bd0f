// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * The piece of the document that the canvas shows.
 *
 * @param zoom logical pixels per point
 * @param left document x at the canvas' left edge, in points
 * @param top  document y at the canvas' top edge, in points
 */
public record Viewport(double zoom, double left, double top) {

    /** Smallest and largest zoom. */
    public static final double LEAST = 0.02;
    public static final double MOST = 40;

    /** The view in which {@code box} fills a canvas of the given size but for a margin in pixels. */
    public static Viewport fitting(Box box, double width, double height, double margin) {
        double zoom = clamp(Math.min((width - 2 * margin) / Math.max(1e-6, box.width()),
                (height - 2 * margin) / Math.max(1e-6, box.height())));
        return centred(box.centre(), zoom, width, height);
    }

    /** The view in which the width of {@code box} fills the canvas, its top edge at the canvas' top. */
    public static Viewport fittingWidth(Box box, double width, double margin) {
        double zoom = clamp((width - 2 * margin) / Math.max(1e-6, box.width()));
        return new Viewport(zoom, box.x0() - margin / zoom, box.y0() - margin / zoom);
    }

    /** The view with a document point in the middle of a canvas of the given size. */
    public static Viewport centred(Point middle, double zoom, double width, double height) {
        double z = clamp(zoom);
        return new Viewport(z, middle.x() - width / 2 / z, middle.y() - height / 2 / z);
    }

    /** Document to screen. */
    public Point toScreen(Point document) {
        return new Point((document.x() - left) * zoom, (document.y() - top) * zoom);
    }

    /** Screen to document. */
    public Point toDocument(double x, double y) {
        return new Point(left + x / zoom, top + y / zoom);
    }

    /** The view zoomed by a factor, with the document point under the given pixel staying where it is. */
    public Viewport zoomedAt(double x, double y, double factor) {
        double z = clamp(zoom * factor);
        Point fixed = toDocument(x, y);
        return new Viewport(z, fixed.x() - x / z, fixed.y() - y / z);
    }

    /** The view after the paper was dragged by the given pixels. */
    public Viewport dragged(double dx, double dy) {
        return new Viewport(zoom, left - dx / zoom, top - dy / zoom);
    }

    /** What a canvas of the given size shows, in document points. */
    public Box shown(double width, double height) {
        return new Box(left, top, left + width / zoom, top + height / zoom);
    }

    /** This view moved so far that some of {@code all} stays in sight. */
    public Viewport within(Box all, double width, double height) {
        double keep = 80 / zoom;
        double l = Math.max(all.x0() - width / zoom + keep, Math.min(left, all.x1() - keep));
        double t = Math.max(all.y0() - height / zoom + keep, Math.min(top, all.y1() - keep));
        return new Viewport(zoom, l, t);
    }

    private static double clamp(double zoom) {
        return Math.max(LEAST, Math.min(MOST, zoom));
    }
}
