// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.drawing.primitive;

import java.util.List;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * A filled outline: one sub-path of a filled shape.
 *
 * @param points three or more corners; curves come flattened
 * @param curved whether a part of it was a curve before it was flattened
 * @param rgb    colour, 0xRRGGBB
 * @param box    round its points
 */
public record Fill(List<Point> points, boolean curved, int rgb, Box box) {

    public Fill {
        points = List.copyOf(points);
    }
}
