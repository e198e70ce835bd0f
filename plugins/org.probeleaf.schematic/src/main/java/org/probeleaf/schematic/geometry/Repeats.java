// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.geometry;

import java.util.List;

/**
 * Counts how often the same is drawn at the very same place. Programs draw a line twice now and then; a damaged or
 * hostile file may draw it a hundred thousand times, and each would have to be compared with each. One thread at a
 * time may use an instance.
 */
public final class Repeats {

    /** As often as can have a reason. */
    private static final int MOST = 4;

    private long[] keys = new long[1 << 10];
    private int[] counts = new int[1 << 10];
    private int used;

    /** Counts a line between two places, in whichever direction; whether it came too often. */
    public boolean tooMany(Point a, Point b) {
        return tooMany(mix(a) + mix(b));
    }

    /**
     * Counts a shape; whether it came too often.
     *
     * @param corners its corners
     * @param look    what else must be alike
     */
    public boolean tooMany(List<Point> corners, int look) {
        long key = look * 0x94D049BB133111EBL + corners.size();
        for (Point p : corners) {
            key = key * 0x9E3779B97F4A7C15L + mix(p);
        }
        return tooMany(key);
    }

    private boolean tooMany(long hash) {
        // 0 marks a free slot.
        long key = hash | 1;
        int slot = slot(key);
        if (keys[slot] == 0) {
            if (2 * ++used > keys.length) {
                grow();
                slot = slot(key);
            }
            keys[slot] = key;
        }
        return ++counts[slot] > MOST;
    }

    private static long mix(Point p) {
        long h = Double.doubleToLongBits(p.x()) * 0x9E3779B97F4A7C15L + Double.doubleToLongBits(p.y());
        h = (h ^ h >>> 29) * 0xBF58476D1CE4E5B9L;
        return h ^ h >>> 32;
    }

    private int slot(long key) {
        int slot = (int) (key >>> 33) & keys.length - 1;
        while (keys[slot] != 0 && keys[slot] != key) {
            slot = slot + 1 & keys.length - 1;
        }
        return slot;
    }

    private void grow() {
        long[] oldKeys = keys;
        int[] oldCounts = counts;
        keys = new long[2 * oldKeys.length];
        counts = new int[2 * oldKeys.length];
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldKeys[i] != 0) {
                int slot = slot(oldKeys[i]);
                keys[slot] = oldKeys[i];
                counts[slot] = oldCounts[i];
            }
        }
    }
}
