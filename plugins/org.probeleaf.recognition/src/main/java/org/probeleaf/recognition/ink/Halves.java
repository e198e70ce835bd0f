// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.probeleaf.recognition.ink.Segment.Shape;
import org.probeleaf.schematic.geometry.Point;

/** Puts bars together that are drawn in two halves, one on either side of the lead that meets them. */
final class Halves {

    private static final double LONGEST = 1.5;

    private Halves() {
    }

    /** The lines with every pair of halves replaced by one line. */
    static List<Segment> joined(List<Segment> lines, double pitch, double reach) {
        SpatialIndex<Segment> index = SpatialIndex.ofSegments(lines);
        Set<Segment> gone = new HashSet<>();
        List<Segment> result = new ArrayList<>();
        for (Segment s : lines) {
            if (gone.contains(s)) {
                continue;
            }
            Segment other = isShort(s, pitch) ? otherHalf(s, index, gone, reach) : null;
            if (other == null) {
                result.add(s);
            } else {
                gone.add(other);
                Point meet = meeting(s, other, reach);
                result.add(new Segment(s.stroke(), s.style(), s.fartherEnd(meet), other.fartherEnd(meet), s.shape(),
                        s.width()));
            }
        }
        return result;
    }

    private static boolean isShort(Segment s, double pitch) {
        return s.shape() == Shape.LINE && s.upright() && s.length() < LONGEST * pitch;
    }

    private static Segment otherHalf(Segment s, SpatialIndex<Segment> index, Set<Segment> gone, double reach) {
        for (Segment t : index.touching(s.box().grow(reach))) {
            boolean alike = t != s && t.shape() == Shape.LINE && t.upright() && t.style() == s.style()
                    && t.horizontal() == s.horizontal() && Math.abs(t.length() - s.length()) < 0.1 * s.length();
            if (alike && !gone.contains(t)) {
                Point p = meeting(s, t, reach);
                if (p != null && isMetAcross(p, s, index, reach)) {
                    return t;
                }
            }
        }
        return null;
    }

    /** Where two lines meet end to end and go on in one direction, or null. */
    private static Point meeting(Segment s, Segment t, double reach) {
        for (Point p : List.of(s.a(), s.b())) {
            boolean ends = t.nearerEnd(p).distance(p) <= reach;
            if (ends && s.fartherEnd(p).distance(t.fartherEnd(p)) > 1.8 * s.length()) {
                return p;
            }
        }
        return null;
    }

    private static boolean isMetAcross(Point p, Segment s, SpatialIndex<Segment> index, double reach) {
        return index.near(p, reach).stream().anyMatch(t -> t.upright() && t.horizontal() != s.horizontal()
                && t.nearerEnd(p).distance(p) <= reach);
    }
}
