// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.recognition.ink.Segment.Shape;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Finds lines of symbols on sheets that draw some of them in the style of wires: closed outlines, windings, what lies inside
 * a circle, and bars whose ends are free and whose middle is met by a line across.
 */
final class SymbolLines {

    /** The most that a rounded corner of a wire turns, in radians. */
    private static final double LARGEST_CORNER = 2.0;
    /** A piece of a curved line longer than this, in pitches, is straight. */
    private static final double STRAIGHT = 0.7;

    private final double pitch;
    private final double reach;
    private final SpatialIndex<Segment> all;
    private final Map<Integer, Double> turning = new HashMap<>();
    private final List<Box> circles = new ArrayList<>();

    SymbolLines(List<Segment> segments, double pitch, double reach) {
        this.pitch = pitch;
        this.reach = reach;
        this.all = SpatialIndex.ofSegments(segments);
        Map<Integer, Box> round = new HashMap<>();
        for (Segment s : segments) {
            if (s.shape() == Shape.ROUND) {
                round.merge(s.stroke(), s.box(), Box::union);
            }
        }
        measureTurning(segments);
        round.values().stream().filter(b -> b.width() > 1.5 * pitch && b.width() < 6 * pitch).forEach(circles::add);
    }

    /**
     * How far each curved line turns at the most between two straight pieces of it, sharp corners apart: at a rounded
     * corner a quarter, in a winding of a coil a half.
     */
    private void measureTurning(List<Segment> segments) {
        Segment last = null;
        double turned = 0;
        for (Segment s : segments) {
            if (s.shape() == Shape.CURVED && last != null && last.stroke() == s.stroke()) {
                double angle = Math.abs(direction(s) - direction(last));
                boolean corner = s.upright() && last.upright();
                turned = (isStraight(last) ? 0 : turned) + (corner ? 0 : Math.min(angle, 2 * Math.PI - angle));
                turning.merge(s.stroke(), turned, Math::max);
            } else {
                turned = 0;
            }
            last = s;
        }
    }

    /** Whether a piece is longer than the curve of a coil or a corner is cut into. */
    private boolean isStraight(Segment s) {
        return s.upright() && s.length() > STRAIGHT * pitch;
    }

    private static double direction(Segment s) {
        return Math.atan2(s.b().y() - s.a().y(), s.b().x() - s.a().x());
    }

    /** Whether a line in the style of wires is part of a symbol. */
    boolean isSymbol(Segment s) {
        if (s.shape() == Shape.CLOSED || s.shape() == Shape.ROUND || s.shape() == Shape.FILLED) {
            return true;
        }
        if (s.shape() == Shape.CURVED && turning.getOrDefault(s.stroke(), 0.0) > LARGEST_CORNER) {
            return true;
        }
        for (Box circle : circles) {
            if (circle.grow(Math.max(reach, 0.12 * circle.width())).contains(s.box())) {
                return true;
            }
        }
        return s.shape() == Shape.LINE && s.upright() && s.length() < 3 * pitch && isBar(s);
    }

    private boolean isBar(Segment s) {
        Point middle = new Point((s.a().x() + s.b().x()) / 2, (s.a().y() + s.b().y()) / 2);
        boolean met = all.near(middle, reach).stream().anyMatch(t -> t.upright() && t.horizontal() != s.horizontal()
                && t.nearerEnd(middle).distance(middle) <= reach && t.length() > reach);
        return met && isFree(s, s.a()) && isFree(s, s.b());
    }

    private boolean isFree(Segment s, Point end) {
        return all.near(end, reach).stream().allMatch(t -> t.equals(s) || t.distance(end) > reach);
    }
}
