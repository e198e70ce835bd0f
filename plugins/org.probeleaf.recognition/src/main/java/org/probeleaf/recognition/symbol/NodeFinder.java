// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.symbol;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.schematic.geometry.Point;

/** Numbers places so that places within reach of each other get the same number. */
final class NodeFinder {

    private final double reach;
    private final Map<Long, List<Integer>> cells = new HashMap<>();
    private final List<Point> places = new ArrayList<>();

    /** @param reach in points */
    NodeFinder(double reach) {
        this.reach = reach;
    }

    /** The number of the place, a new one where no known place is within reach. */
    int node(Point p) {
        long cx = (long) Math.floor(p.x() / reach);
        long cy = (long) Math.floor(p.y() / reach);
        for (long x = cx - 1; x <= cx + 1; x++) {
            for (long y = cy - 1; y <= cy + 1; y++) {
                for (int i : cells.getOrDefault(key(x, y), List.of())) {
                    if (places.get(i).distance(p) <= reach) {
                        return i;
                    }
                }
            }
        }
        places.add(p);
        cells.computeIfAbsent(key(cx, cy), k -> new ArrayList<>(2)).add(places.size() - 1);
        return places.size() - 1;
    }

    int count() {
        return places.size();
    }

    private static long key(long x, long y) {
        return x << 32 ^ y & 0xFFFFFFFFL;
    }
}
