// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.List;
import java.util.regex.Pattern;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Point;

/**
 * Tells styles that the leads of symbols are drawn in: pin numbers stand on their short lines. Where wires are of the
 * same style, as on sheets printed in one colour, it is no style of wires alone.
 */
final class LeadStyles {

    private static final Pattern NUMBER = Pattern.compile("\\d{1,3}");
    /** The longest lead, in pitches. */
    private static final double LONGEST = 4;
    /** How far from its line a number stands at most, in pitches. */
    private static final double ASIDE = 0.8;
    private static final int FEWEST = 4;
    private static final double SHARE = 0.4;

    private LeadStyles() {
    }

    /**
     * For each style whether leads are drawn in it.
     *
     * @param segments the page's lines
     * @param texts    its texts
     * @param styles   how many styles there are
     */
    static boolean[] find(List<Segment> segments, List<Text> texts, double pitch, int styles) {
        SpatialIndex<Segment> lines = SpatialIndex.ofSegments(segments.stream()
                .filter(s -> s.shape() == Segment.Shape.LINE && s.upright()).toList());
        int[] numbers = new int[styles];
        int all = 0;
        for (Text t : texts) {
            Segment line = NUMBER.matcher(t.text()).matches() ? lineOf(t, lines, ASIDE * pitch) : null;
            if (line != null) {
                all++;
                numbers[line.style()] += line.length() < LONGEST * pitch ? 1 : 0;
            }
        }
        boolean[] found = new boolean[styles];
        for (int i = 0; i < styles; i++) {
            found[i] = numbers[i] >= FEWEST && numbers[i] > SHARE * all;
        }
        return found;
    }

    /** The nearest line along a text, or null. */
    private static Segment lineOf(Text t, SpatialIndex<Segment> lines, double most) {
        boolean flat = Math.abs(Math.sin(Math.toRadians(t.angle()))) < 0.5;
        Point centre = t.box().centre();
        Segment best = null;
        double least = most;
        for (Segment s : lines.near(centre, most)) {
            double distance = s.distance(centre);
            if (s.horizontal() == flat && distance < least) {
                best = s;
                least = distance;
            }
        }
        return best;
    }
}
