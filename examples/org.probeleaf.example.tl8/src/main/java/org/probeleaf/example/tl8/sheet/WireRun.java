// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import java.util.List;

/**
 * A wire or a bus: straight pieces from spot to spot, upright, level, or at 45 degrees.
 *
 * @param spots its corners, two or more
 * @param bus   whether it is a bus
 */
public record WireRun(List<Spot> spots, boolean bus) {

    public WireRun {
        spots = List.copyOf(spots);
    }

    /** Its first spot. */
    public Spot first() {
        return spots.get(0);
    }

    /** Its last spot. */
    public Spot last() {
        return spots.get(spots.size() - 1);
    }

    /** Whether {@code spot} lies on it, ends included. */
    public boolean passes(Spot spot) {
        for (int i = 1; i < spots.size(); i++) {
            if (between(spots.get(i - 1), spots.get(i), spot)) {
                return true;
            }
        }
        return false;
    }

    static boolean between(Spot a, Spot b, Spot s) {
        long cross = (long) (b.x() - a.x()) * (s.y() - a.y()) - (long) (b.y() - a.y()) * (s.x() - a.x());
        return cross == 0 && s.x() >= Math.min(a.x(), b.x()) && s.x() <= Math.max(a.x(), b.x())
                && s.y() >= Math.min(a.y(), b.y()) && s.y() <= Math.max(a.y(), b.y());
    }
}
