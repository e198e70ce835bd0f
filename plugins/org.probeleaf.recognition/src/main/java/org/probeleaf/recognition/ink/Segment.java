// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * A straight piece of a drawn line. Two are equal where all about them is. Not a record, since its box and hash are asked for all the time.
 */
public final class Segment {

    private final int stroke;
    private final int style;
    private final Point a;
    private final Point b;
    private final Shape shape;
    private final double width;
    private final Box box;
    private final int hash;

    /**
     * @param stroke index of the stroke it was cut from; pieces of one stroke share it
     * @param style  index of its style
     * @param a      one end
     * @param b      the other end
     * @param shape  what kind of stroke it was cut from
     * @param width  line width in points
     */
    public Segment(int stroke, int style, Point a, Point b, Shape shape, double width) {
        this.stroke = stroke;
        this.style = style;
        this.a = a;
        this.b = b;
        this.shape = shape;
        this.width = width;
        this.box = Box.of(a.x(), a.y(), b.x(), b.y());
        int mixed = (31 * stroke + a.hashCode()) * 0x85EBCA6B + b.hashCode();
        this.hash = mixed ^ mixed >>> 15;
    }

    public int stroke() {
        return stroke;
    }

    public int style() {
        return style;
    }

    public Point a() {
        return a;
    }

    public Point b() {
        return b;
    }

    public Shape shape() {
        return shape;
    }

    public double width() {
        return width;
    }

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Segment s && hash == s.hash && stroke == s.stroke && style == s.style
                && a.equals(s.a) && b.equals(s.b) && shape == s.shape && width == s.width;
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public String toString() {
        return shape + " " + a.x() + "," + a.y() + " " + b.x() + "," + b.y() + " of " + stroke;
    }

    /** What kind of stroke a segment was cut from. */
    public enum Shape {
        /** One straight line, or several end to end that turn by right or half-right angles. */
        LINE,
        /** A closed outline. */
        CLOSED,
        /** An open line with a curve in it. */
        CURVED,
        /** A closed outline with a curve in it: a circle, a bubble. */
        ROUND,
        /** The outline of a filled shape. */
        FILLED
    }

    public double length() {
        return a.distance(b);
    }

    public Box box() {
        return box;
    }

    /** Whether it runs along an axis of the page, within about three degrees. */
    public boolean upright() {
        double dx = Math.abs(b.x() - a.x());
        double dy = Math.abs(b.y() - a.y());
        return Math.min(dx, dy) <= 0.05 * Math.max(dx, dy);
    }

    public boolean horizontal() {
        return Math.abs(b.x() - a.x()) >= Math.abs(b.y() - a.y());
    }

    /** The end of this segment that {@code p} lies nearer to. */
    public Point nearerEnd(Point p) {
        return p.distance(a) <= p.distance(b) ? a : b;
    }

    /** The end of this segment that {@code p} lies farther from. */
    public Point fartherEnd(Point p) {
        return p.distance(a) <= p.distance(b) ? b : a;
    }

    /** The distance from {@code p} to the nearest place on this segment, in points. */
    public double distance(Point p) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double square = dx * dx + dy * dy;
        double px = p.x() - a.x();
        double py = p.y() - a.y();
        if (square > 0) {
            double t = Math.max(0, Math.min(1, (px * dx + py * dy) / square));
            px -= t * dx;
            py -= t * dy;
        }
        return Math.sqrt(px * px + py * py);
    }

    /** Whether {@code p} lies within {@code reach} points of this segment; most are told by its box. */
    public boolean comesNear(Point p, double reach) {
        return p.x() >= box.x0() - reach && p.x() <= box.x1() + reach && p.y() >= box.y0() - reach
                && p.y() <= box.y1() + reach && distance(p) <= reach;
    }

    /** The place on this segment nearest to {@code p}. */
    public Point nearest(Point p) {
        return p.nearestOn(a, b);
    }

    /** Where this segment and {@code other} cross or meet, or null where they do not or run in parallel. */
    public Point crossing(Segment other) {
        double dx = b.x() - a.x();
        double dy = b.y() - a.y();
        double ex = other.b.x() - other.a.x();
        double ey = other.b.y() - other.a.y();
        double det = dx * ey - dy * ex;
        if (Math.abs(det) < 1e-9) {
            return null;
        }
        double t = ((other.a.x() - a.x()) * ey - (other.a.y() - a.y()) * ex) / det;
        double s = ((other.a.x() - a.x()) * dy - (other.a.y() - a.y()) * dx) / det;
        return t < 0 || t > 1 || s < 0 || s > 1 ? null : new Point(a.x() + t * dx, a.y() + t * dy);
    }
}
