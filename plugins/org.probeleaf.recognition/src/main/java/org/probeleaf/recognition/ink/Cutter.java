// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Fill;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.ink.Segment.Shape;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.geometry.Repeats;

/** Cuts strokes and the outlines of fills into straight segments, and finds round filled spots. */
final class Cutter {

    private final Drawing drawing;
    private final Map<Style, Integer> styles = new HashMap<>();
    private final List<Style> styleList = new ArrayList<>();
    private final List<Segment> segments = new ArrayList<>();
    private final List<Dot> dots = new ArrayList<>();
    private final double largestDot;
    private final SpatialIndex<Dot> spots;
    private final Repeats repeats = new Repeats();
    private int strokeCount;

    Cutter(Drawing drawing) {
        this.drawing = drawing;
        this.largestDot = largestDot(drawing, drawing.texts());
        cutFills();
        this.spots = new SpatialIndex<>(List.copyOf(dots), d -> Box.of(d.at()));
        cutStrokes();
    }

    /** A junction dot is smaller than a letter; without text to go by the page's size serves. */
    private static double largestDot(Drawing drawing, List<Text> texts) {
        double[] sizes = texts.stream().mapToDouble(Text::size).sorted().toArray();
        return sizes.length > 0 ? 0.9 * sizes[sizes.length / 2]
                : Math.max(drawing.width(), drawing.height()) / 120;
    }

    List<Segment> segments() {
        return segments;
    }

    List<Dot> dots() {
        return dots;
    }

    List<Style> styles() {
        return styleList;
    }

    private void cutStrokes() {
        drawing.strokes().forEach(this::cut);
    }

    private void cut(Stroke stroke) {
        List<Point> points = stroke.points();
        Box box = Box.around(points);
        if (box.width() == 0 && box.height() == 0) {
            if (stroke.round() && stroke.width() > 0) {
                dots.add(new Dot(points.get(0), stroke.width() / 2, stroke.rgb()));
            }
            return;
        }
        int loop = stroke.closed() || stroke.curved() ? 0 : loopStart(points);
        if (loop > 0) {
            cut(part(stroke, points.subList(0, loop + 1)));
            cut(part(stroke, points.subList(loop, points.size())));
            return;
        }
        boolean closed = stroke.closed() || points.size() > 3 && points.get(0).distance(points.get(points.size() - 1))
                < Math.max(0.02, 0.25 * stroke.width());
        if (stroke.curved() && closed && isRound(points, box) && coversDot(box)) {
            // The rim of a filled spot.
            return;
        }
        int style = style(new Style(stroke.rgb(), Math.round(stroke.width() * 20), stroke.dashed()));
        Shape shape = stroke.curved() ? closed ? Shape.ROUND : Shape.CURVED : closed ? Shape.CLOSED : Shape.LINE;
        addChain(points, closed, style, shape, stroke.width());
    }

    private static Stroke part(Stroke of, List<Point> points) {
        return new Stroke(List.copyOf(points), false, of.curved(), of.width(), of.rgb(), of.dashed(), of.round());
    }

    /** Where a line that runs into itself does so, as an arrow drawn together with its lead: the index, or 0. */
    private static int loopStart(List<Point> points) {
        Point last = points.get(points.size() - 1);
        for (int i = 1; i < points.size() - 3; i++) {
            if (points.get(i).distance(last) < 0.02) {
                return points.get(0).distance(last) < 0.02 ? 0 : i;
            }
        }
        return 0;
    }

    private void cutFills() {
        double pageArea = drawing.width() * drawing.height();
        for (Fill fill : drawing.fills()) {
            Box b = fill.box();
            if (isRound(fill.points(), b) && b.width() <= largestDot) {
                dots.add(new Dot(b.centre(), b.width() / 2, fill.rgb()));
            } else if (b.width() * b.height() < 0.3 * pageArea && !isPaper(fill.rgb())) {
                int style = style(new Style(fill.rgb(), -1, false));
                if (Math.min(b.width(), b.height()) < 1.2 && fill.points().size() <= 5) {
                    addThin(b, fill.rgb());
                } else {
                    addChain(fill.points(), true, style, Shape.FILLED, 0);
                }
            }
        }
    }

    /** A filled rectangle thin as a line is a line. */
    private void addThin(Box b, int rgb) {
        boolean flat = b.width() >= b.height();
        double width = Math.min(b.width(), b.height());
        Point c = b.centre();
        Point from = flat ? new Point(b.x0(), c.y()) : new Point(c.x(), b.y0());
        Point to = flat ? new Point(b.x1(), c.y()) : new Point(c.x(), b.y1());
        int style = style(new Style(rgb, Math.round(width * 20), false));
        segments.add(new Segment(strokeCount++, style, from, to, Shape.LINE, width));
    }

    private void addChain(List<Point> points, boolean closed, int style, Shape shape, double width) {
        int id = strokeCount++;
        for (int i = 1; i < points.size(); i++) {
            addSegment(id, style, points.get(i - 1), points.get(i), shape, width);
        }
        if (closed) {
            addSegment(id, style, points.get(points.size() - 1), points.get(0), shape, width);
        }
    }

    private void addSegment(int id, int style, Point a, Point b, Shape shape, double width) {
        if (a.distance(b) > 1e-3 && !repeats.tooMany(a, b)) {
            segments.add(new Segment(id, style, a, b, shape, width));
        }
    }

    private int style(Style style) {
        return styles.computeIfAbsent(style, s -> {
            styleList.add(s);
            return styleList.size() - 1;
        });
    }

    /** Whether a filled spot lies under a rim. */
    private boolean coversDot(Box rim) {
        Point c = rim.centre();
        return spots.near(c, 0.25 * rim.width()).stream().anyMatch(d -> d.at().distance(c) < 0.25 * rim.width());
    }

    private static boolean isRound(List<Point> points, Box b) {
        if (points.size() < 6 || b.width() <= 0 || Math.abs(b.width() - b.height()) > 0.15 * b.width() + 0.1) {
            return false;
        }
        Point c = b.centre();
        double r = b.width() / 2;
        for (Point p : points) {
            double d = p.distance(c);
            if (Math.abs(d - r) > 0.2 * r + 0.05) {
                return false;
            }
        }
        return true;
    }

    /** Whether a fill is as good as white: a patch of paper, not ink. */
    private static boolean isPaper(int rgb) {
        return (rgb >> 16 & 255) > 235 && (rgb >> 8 & 255) > 235 && (rgb & 255) > 150;
    }
}
