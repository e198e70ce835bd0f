// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Lines drawn over lines. Many programs draw a line twice, or one over a piece of another; the second adds nothing to
 * see, but two lines between the same two points would look like an outline to whatever follows.
 */
final class Doubles {

    /** Lines nearer to each other than this, in points, are one. */
    private static final double SAME = 0.05;

    private Doubles() {
    }

    /** Upright straight lines of one style that lie on one line of the page. */
    private record Track(int style, boolean horizontal, long across) {
    }

    /** The same segments without those that lie within another of their style. */
    static List<Segment> without(List<Segment> segments) {
        Map<Track, List<Segment>> tracks = new HashMap<>();
        for (Segment s : segments) {
            if (s.shape() == Segment.Shape.LINE && s.upright()) {
                double across = s.horizontal() ? s.a().y() : s.a().x();
                tracks.computeIfAbsent(new Track(s.style(), s.horizontal(), Math.round(across / SAME)),
                        k -> new ArrayList<>()).add(s);
            }
        }
        Set<Segment> hidden = new HashSet<>();
        tracks.values().forEach(track -> hide(track, hidden));
        return hidden.isEmpty() ? segments : segments.stream().filter(s -> !hidden.contains(s)).toList();
    }

    private static void hide(List<Segment> track, Set<Segment> hidden) {
        track.sort(Comparator.comparingDouble(Doubles::from).thenComparing(s -> -to(s)));
        double reached = Double.NEGATIVE_INFINITY;
        for (Segment s : track) {
            if (to(s) <= reached + SAME) {
                hidden.add(s);
            } else {
                reached = to(s);
            }
        }
    }

    private static double from(Segment s) {
        return s.horizontal() ? Math.min(s.a().x(), s.b().x()) : Math.min(s.a().y(), s.b().y());
    }

    private static double to(Segment s) {
        return s.horizontal() ? Math.max(s.a().x(), s.b().x()) : Math.max(s.a().y(), s.b().y());
    }
}
