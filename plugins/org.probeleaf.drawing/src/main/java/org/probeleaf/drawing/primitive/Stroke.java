// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.primitive;

import java.util.List;

import org.probeleaf.schematic.geometry.Point;

/**
 * A stroked line: one sub-path of the page's content.
 *
 * @param points two or more corners; curves come flattened
 * @param closed whether the last point is joined to the first
 * @param curved whether a part of it was a curve before it was flattened
 * @param width  line width in points as displayed, 0 for the thinnest line
 * @param rgb    colour, 0xRRGGBB
 * @param dashed whether it is drawn with a dash pattern
 * @param round  whether its ends are round
 */
public record Stroke(List<Point> points, boolean closed, boolean curved, double width, int rgb, boolean dashed,
        boolean round) {

    public Stroke {
        points = List.copyOf(points);
    }
}
