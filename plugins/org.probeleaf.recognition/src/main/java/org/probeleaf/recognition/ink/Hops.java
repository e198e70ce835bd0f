// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.recognition.ink.Segment.Shape;
import org.probeleaf.schematic.geometry.Point;

/**
 * Straightens wires that hop over others in a half circle: the wire goes straight on there, and what it hops over is
 * plainly crossed.
 */
final class Hops {

    /** The widest hop, in pitches. */
    private static final double WIDEST = 1.7;
    private static final int FEWEST_PIECES = 3;
    private static final int MOST_PIECES = 64;
    /** How far a corner may lie off the half circle, as a share of its radius. */
    private static final double OFF = 0.2;

    private final List<Segment> segments;
    private final double pitch;
    private final double reach;
    private final SpatialIndex<Segment> upright;

    private Hops(List<Segment> segments, double pitch, double reach) {
        this.segments = segments;
        this.pitch = pitch;
        this.reach = reach;
        this.upright = SpatialIndex.ofSegments(segments.stream()
                .filter(s -> s.upright() && s.length() > reach
                        && (s.shape() == Shape.LINE || s.shape() == Shape.CURVED)).toList());
    }

    /** The same lines with each hop replaced by one straight line. */
    static List<Segment> straightened(List<Segment> segments, double pitch, double reach) {
        return new Hops(segments, pitch, reach).straighten();
    }

    private List<Segment> straighten() {
        List<Segment> result = new ArrayList<>(segments.size());
        for (int i = 0; i < segments.size();) {
            int end = mayBegin(i) ? endOfHop(i) : i;
            if (end == i) {
                result.add(segments.get(i));
                i++;
            } else {
                Segment first = segments.get(i);
                Point to = segments.get(end - 1).b();
                result.add(new Segment(first.stroke(), lineAway(first.a(), to).style(), first.a(), to, Shape.LINE,
                        first.width()));
                i = end;
            }
        }
        return result;
    }

    /** Whether a short piece of an open line is the first of its stroke or comes after a longer one. */
    private boolean mayBegin(int i) {
        Segment s = segments.get(i);
        boolean open = s.shape() == Shape.LINE || s.shape() == Shape.CURVED;
        return open && s.length() < pitch && (i == 0 || segments.get(i - 1).stroke() != s.stroke()
                || segments.get(i - 1).upright());
    }

    /** The index behind the pieces of the hop that begins at a piece, or the index of that piece where none does. */
    private int endOfHop(int from) {
        Point p = segments.get(from).a();
        int most = Math.min(segments.size(), from + MOST_PIECES);
        for (int i = from; i < most; i++) {
            Segment s = segments.get(i);
            boolean goesOn = i == from || s.stroke() == segments.get(from).stroke()
                    && s.a().distance(segments.get(i - 1).b()) < 1e-6;
            if (!goesOn || s.length() > pitch || s.b().distance(p) > 1.1 * WIDEST * pitch) {
                return from;
            }
            if (i - from + 1 >= FEWEST_PIECES && isHop(from, i + 1)) {
                return i + 1;
            }
        }
        return from;
    }

    private boolean isHop(int from, int to) {
        Point p = segments.get(from).a();
        Point q = segments.get(to - 1).b();
        double width = p.distance(q);
        boolean level = Math.abs(p.y() - q.y()) <= 0.05 * width;
        boolean standing = Math.abs(p.x() - q.x()) <= 0.05 * width;
        if (width < 2 * reach || width > WIDEST * pitch || !level && !standing) {
            return false;
        }
        Point middle = new Point((p.x() + q.x()) / 2, (p.y() + q.y()) / 2);
        double radius = width / 2;
        double side = 0;
        for (int i = from; i < to - 1; i++) {
            Point c = segments.get(i).b();
            double off = level ? c.y() - middle.y() : c.x() - middle.x();
            if (Math.abs(c.distance(middle) - radius) > OFF * radius || side * off < 0) {
                return false;
            }
            side = Math.abs(off) > Math.abs(side) ? off : side;
        }
        return Math.abs(side) > 0.8 * radius && lineAway(p, q) != null && lineAway(q, p) != null
                && crosses(middle, level, 1.3 * radius);
    }

    /** A line that ends at a place and leads straight away from another one, or null. */
    private Segment lineAway(Point at, Point from) {
        boolean level = Math.abs(at.x() - from.x()) > Math.abs(at.y() - from.y());
        for (Segment s : upright.near(at, reach)) {
            Point far = s.fartherEnd(at);
            boolean away = level ? (far.x() - at.x()) * (at.x() - from.x()) > 0
                    : (far.y() - at.y()) * (at.y() - from.y()) > 0;
            if (s.horizontal() == level && away && s.nearerEnd(at).distance(at) <= reach) {
                return s;
            }
        }
        return null;
    }

    /** Whether lines run across under a hop, on both sides of it. */
    private boolean crosses(Point middle, boolean level, double apart) {
        for (int side = -1; side <= 1; side += 2) {
            Point beyond = level ? middle.plus(0, side * apart) : middle.plus(side * apart, 0);
            boolean any = upright.near(beyond, reach).stream()
                    .anyMatch(s -> s.horizontal() != level && s.distance(beyond) <= reach);
            if (!any) {
                return false;
            }
        }
        return true;
    }
}
