// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/** A page of 100 by 100 points: what lies more than 100 points beside it is cut off. */
class LineClipperTest {

    private final LineClipper clipper = new LineClipper(new Box(0, 0, 100, 100));

    private static List<Point> points(double... xy) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < xy.length; i += 2) {
            points.add(new Point(xy[i], xy[i + 1]));
        }
        return points;
    }

    @Test
    void holds_lineOverTheEdge_isLeftWhole() {
        assertTrue(clipper.holds(new Box(-50, 20, 150, 20)));
        assertFalse(clipper.holds(new Box(50, 20, 1e7, 20)));
    }

    @Test
    void clipped_lineToFarAway_endsBesideThePage() {
        assertEquals(List.of(points(50, 50, 200, 50)), clipper.clipped(points(50, 50, 1e7, 50), false));
        assertEquals(List.of(points(-100, -100, 200, 200)), clipper.clipped(points(-1e6, -1e6, 1e6, 1e6), false));
    }

    @Test
    void clipped_lineFarOff_isGone() {
        assertEquals(List.of(), clipper.clipped(points(500, 0, 500, 100), false));
        assertEquals(List.of(), clipper.clipped(points(1000, 0, 0, 1000), false));
    }

    @Test
    void clipped_lineThatGoesOutAndComesBack_isTwo() {
        assertEquals(List.of(points(0, 0, 50, 0, 50, 200), points(60, 200, 60, 0)),
                clipper.clipped(points(0, 0, 50, 0, 50, 400, 60, 400, 60, 0), false));
    }

    @Test
    void clipped_closedLine_isOpenWhereItWasCut() {
        assertEquals(List.of(points(0, 0, 200, 0), points(200, 50, 0, 50, 0, 0)),
                clipper.clipped(points(0, 0, 300, 0, 300, 50, 0, 50), true));
    }
}
