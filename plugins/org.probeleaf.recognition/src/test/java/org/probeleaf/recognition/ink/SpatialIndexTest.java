// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.schematic.geometry.Point;

/** Of lines, all that are near are found, in their order and once each; of long slanting ones only those. */
class SpatialIndexTest {

    private static final double REACH = 2;

    private static Segment segment(int number, Point a, Point b) {
        return new Segment(number, 0, a, b, Segment.Shape.LINE, 1);
    }

    private static List<Segment> segments(Random random) {
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            double size = Math.pow(10, random.nextInt(5) - 1);
            Point a = new Point(400 * random.nextDouble(), 400 * random.nextDouble());
            Point b = switch (random.nextInt(3)) {
                case 0 -> a.plus(size * random.nextDouble(), 0);
                case 1 -> a.plus(0, -size * random.nextDouble());
                default -> a.plus(size * (random.nextDouble() - 0.5), size * (random.nextDouble() - 0.5));
            };
            segments.add(segment(i, a, b));
        }
        return segments;
    }

    @Property(tries = 200)
    void near_anySegments_findsAllThatAreNearOnceAndInOrder(@ForAll long seed) {
        Random random = new Random(seed);
        List<Segment> segments = segments(random);
        SpatialIndex<Segment> index = SpatialIndex.ofSegments(segments);
        for (int i = 0; i < 50; i++) {
            Point p = new Point(400 * random.nextDouble(), 400 * random.nextDouble());
            List<Segment> found = index.near(p, REACH);

            assertEquals(segments.stream().filter(s -> s.distance(p) <= REACH).toList(),
                    found.stream().filter(s -> s.distance(p) <= REACH).toList());
            assertEquals(found.stream().map(Segment::stroke).sorted().distinct().toList(),
                    found.stream().map(Segment::stroke).toList());
        }
    }

    @Test
    void near_linesSlantingOverThePage_findsThoseBesideOnly() {
        List<Segment> fan = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            fan.add(segment(i, new Point(0, 3 * i), new Point(800, 3 * i + 600)));
        }

        int found = SpatialIndex.ofSegments(fan).near(new Point(400, 600), REACH).size();

        assertTrue(found > 0 && found < 20, "of 200 lines whose boxes hold the place it finds " + found);
    }

    @Test
    void near_strokeWithManyCorners_isFoundAtEachAndNotBetween() {
        List<Point> corners = List.of(new Point(0, 0), new Point(300, 0), new Point(300, 300), new Point(0, 290));
        Stroke closed = new Stroke(corners, true, false, 1, 0, false, false);
        Stroke open = new Stroke(corners, false, false, 1, 0, false, false);
        SpatialIndex<Integer> index = SpatialIndex.ofStrokes(List.of(0, 1), List.of(closed, open));

        corners.forEach(c -> assertEquals(List.of(0, 1), index.near(c, REACH), c.toString()));
        assertEquals(List.of(0), index.near(new Point(0, 150), REACH), "only the closed one has this side");
        assertEquals(List.of(), index.near(new Point(150, 150), REACH));
    }
}
