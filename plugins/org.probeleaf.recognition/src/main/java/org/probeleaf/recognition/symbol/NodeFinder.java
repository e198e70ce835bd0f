// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.symbol;

import java.util.Arrays;

import org.probeleaf.schematic.geometry.Point;

/** Numbers places so that places within reach of each other get the same number: of several, the lowest. */
final class NodeFinder {

    /** Cells of this many reaches: most places touch one or two of them. */
    private static final double CELL = 6;
    private static final int NONE = -1;

    private final double reach;
    private double[] x = new double[64];
    private double[] y = new double[64];
    /** The place before in the same chain. */
    private int[] before = new int[64];
    /** The last place of each chain; cells share chains. */
    private int[] chains = new int[128];
    private int count;

    /** @param reach in points */
    NodeFinder(double reach) {
        this.reach = reach;
        Arrays.fill(chains, NONE);
    }

    /** The number of the place, a new one where no known place is within reach. */
    int node(Point p) {
        int best = NONE;
        long lastX = cell(p.x() + reach);
        long lastY = cell(p.y() + reach);
        for (long cx = cell(p.x() - reach); cx <= lastX; cx++) {
            for (long cy = cell(p.y() - reach); cy <= lastY; cy++) {
                for (int i = chains[chain(cx, cy)]; i != NONE; i = before[i]) {
                    double dx = x[i] - p.x();
                    double dy = y[i] - p.y();
                    if ((best == NONE || i < best) && dx * dx + dy * dy <= reach * reach) {
                        best = i;
                    }
                }
            }
        }
        return best != NONE ? best : add(p);
    }

    int count() {
        return count;
    }

    private int add(Point p) {
        if (count == x.length) {
            grow();
        }
        x[count] = p.x();
        y[count] = p.y();
        link(count);
        return count++;
    }

    private void grow() {
        x = Arrays.copyOf(x, 2 * count);
        y = Arrays.copyOf(y, 2 * count);
        before = new int[2 * count];
        chains = new int[4 * count];
        Arrays.fill(chains, NONE);
        for (int i = 0; i < count; i++) {
            link(i);
        }
    }

    private void link(int i) {
        int chain = chain(cell(x[i]), cell(y[i]));
        before[i] = chains[chain];
        chains[chain] = i;
    }

    private long cell(double at) {
        return (long) Math.floor(at / (CELL * reach));
    }

    /** A chain for a cell; their number is a power of two. */
    private int chain(long cx, long cy) {
        long mixed = cx * 0x9E3779B97F4A7C15L + cy * 0xC2B2AE3D27D4EB4FL;
        return (int) (mixed >>> 40) & chains.length - 1;
    }
}
