// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.symbol;

import org.probeleaf.schematic.geometry.Point;

/** How a symbol is turned before it is moved to its place. */
public enum Turn {
    /** As drawn. */
    NONE(1, 0, 0, 1),
    /** A quarter turn clockwise: what pointed right points down. */
    DOWN(0, -1, 1, 0),
    /** A half turn. */
    BACK(-1, 0, 0, -1),
    /** A quarter turn anticlockwise: what pointed right points up. */
    UP(0, 1, -1, 0),
    /** Left and right exchanged. */
    MIRROR(-1, 0, 0, 1);

    private final int xx;
    private final int xy;
    private final int yx;
    private final int yy;

    Turn(int xx, int xy, int yx, int yy) {
        this.xx = xx;
        this.xy = xy;
        this.yx = yx;
        this.yy = yy;
    }

    /** The point {@code p} turned round the origin. */
    public Point of(Point p) {
        return new Point(xx * p.x() + xy * p.y(), yx * p.x() + yy * p.y());
    }
}
