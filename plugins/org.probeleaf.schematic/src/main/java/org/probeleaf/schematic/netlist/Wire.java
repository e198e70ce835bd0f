// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.netlist;

import java.util.List;

import org.probeleaf.schematic.geometry.Point;

/**
 * A drawn line of a net.
 *
 * @param page   1-based page
 * @param points two or more corners, in points
 */
public record Wire(int page, List<Point> points) {

    public Wire {
        points = List.copyOf(points);
    }
}
