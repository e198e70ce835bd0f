// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Wire;

/** The point on a net's drawn lines that is nearest to a spot. */
final class WirePoint {

    private WirePoint() {
    }

    /** The nearest point of the net on a page; the spot itself where the net has no line there. */
    static Point nearest(Net net, int page, Point spot) {
        Point best = spot;
        double least = Double.MAX_VALUE;
        for (Wire wire : net.wires()) {
            for (int i = 1; wire.page() == page && i < wire.points().size(); i++) {
                Point p = spot.nearestOn(wire.points().get(i - 1), wire.points().get(i));
                if (p.distance(spot) < least) {
                    least = p.distance(spot);
                    best = p;
                }
            }
        }
        return best;
    }
}
