// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import org.probeleaf.example.tl8.symbol.Symbol;
import org.probeleaf.schematic.geometry.Point;

/**
 * A place on the grid of a page.
 *
 * @param x grid steps from the left
 * @param y grid steps from the top
 */
public record Spot(int x, int y) {

    /** This spot moved. */
    public Spot plus(int dx, int dy) {
        return new Spot(x + dx, y + dy);
    }

    /** The same place in points. */
    public Point point() {
        return new Point(x * Symbol.GRID, y * Symbol.GRID);
    }
}
