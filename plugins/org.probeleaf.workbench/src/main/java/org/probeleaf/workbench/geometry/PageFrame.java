// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * A page as it stands on the screen. Its corner is on a whole pixel so that its tiles are sharp.
 *
 * @param page 1-based
 * @param x    screen x of its left edge
 * @param y    screen y of its top edge
 * @param zoom logical pixels per point
 * @param width of the page in points
 * @param height of the page in points
 */
public record PageFrame(int page, int x, int y, double zoom, double width, double height) {

    /** The frame of a page that the stack shows. */
    public static PageFrame of(int page, PageStack stack, Viewport view) {
        Box box = stack.box(page);
        Point corner = view.toScreen(new Point(box.x0(), box.y0()));
        return new PageFrame(page, (int) Math.round(corner.x()), (int) Math.round(corner.y()), view.zoom(),
                box.width(), box.height());
    }

    /** Page to screen. */
    public Point toScreen(Point onPage) {
        return new Point(x + onPage.x() * zoom, y + onPage.y() * zoom);
    }

    /** Screen to page. */
    public Point toPage(double sx, double sy) {
        return new Point((sx - x) / zoom, (sy - y) / zoom);
    }

    /** Page to screen. */
    public Box toScreen(Box onPage) {
        return new Box(x + onPage.x0() * zoom, y + onPage.y0() * zoom, x + onPage.x1() * zoom, y + onPage.y1() * zoom);
    }

    /** The page's outline on the screen. */
    public Box outline() {
        return new Box(x, y, x + width * zoom, y + height * zoom);
    }
}
