// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.probeleaf.schematic.geometry.Box;

/**
 * A tile of a page.
 *
 * @param page  1-based
 * @param scale device pixels per point
 * @param col   from the left, 0-based
 * @param row   from the top, 0-based
 */
public record TileKey(int page, double scale, int col, int row) {

    /** Side of a tile in device pixels. */
    public static final int SIDE = 512;

    /** The piece of the page that the tile covers, in points; it may reach over the page's edge. */
    public Box region() {
        double side = SIDE / scale;
        return new Box(col * side, row * side, (col + 1) * side, (row + 1) * side);
    }

    /**
     * The tiles that cover what is shown of a page, the middle ones first.
     *
     * @param frame  the page on the screen
     * @param device device pixels per logical pixel
     * @param canvas the canvas on the screen
     */
    public static List<TileKey> covering(PageFrame frame, double device, Box canvas) {
        double scale = frame.zoom() * device;
        double side = SIDE / device;
        Box outline = frame.outline();
        double x0 = Math.max(canvas.x0(), outline.x0()) - frame.x();
        double y0 = Math.max(canvas.y0(), outline.y0()) - frame.y();
        double x1 = Math.min(canvas.x1(), outline.x1()) - frame.x();
        double y1 = Math.min(canvas.y1(), outline.y1()) - frame.y();
        List<TileKey> keys = new ArrayList<>();
        if (x1 <= x0 || y1 <= y0) {
            return keys;
        }
        for (int row = (int) (y0 / side); row * side < y1; row++) {
            for (int col = (int) (x0 / side); col * side < x1; col++) {
                keys.add(new TileKey(frame.page(), scale, col, row));
            }
        }
        double mx = canvas.centre().x() - frame.x();
        double my = canvas.centre().y() - frame.y();
        keys.sort(Comparator.comparingDouble(k -> Math.hypot((k.col + 0.5) * side - mx, (k.row + 0.5) * side - my)));
        return keys;
    }
}
