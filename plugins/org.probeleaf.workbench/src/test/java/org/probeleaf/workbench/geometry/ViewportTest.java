// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

class ViewportTest {

    @Property
    void zoomedAt_anyFactor_keepsThePointUnderThePointer(@ForAll @DoubleRange(min = 0, max = 1600) double x,
            @ForAll @DoubleRange(min = 0, max = 1000) double y, @ForAll @DoubleRange(min = 0.01, max = 100) double by) {
        Viewport before = new Viewport(0.8, -120, 340);
        Viewport after = before.zoomedAt(x, y, by);
        assertEquals(before.toDocument(x, y).x(), after.toDocument(x, y).x(), 1e-6);
        assertEquals(before.toDocument(x, y).y(), after.toDocument(x, y).y(), 1e-6);
        assertTrue(after.zoom() >= Viewport.LEAST && after.zoom() <= Viewport.MOST, "zoom stays within its bounds");
    }

    @Property
    void toScreen_ofToDocument_isTheSamePixel(@ForAll @DoubleRange(min = -500, max = 500) double x,
            @ForAll @DoubleRange(min = -500, max = 500) double y) {
        Viewport view = new Viewport(1.7, 33, -7);
        Point back = view.toScreen(view.toDocument(x, y));
        assertEquals(x, back.x(), 1e-9);
        assertEquals(y, back.y(), 1e-9);
    }

    @Test
    void fitting_wideCanvas_isBoundByHeight() {
        Viewport view = Viewport.fitting(new Box(0, 0, 200, 100), 1000, 240, 20);
        assertEquals(2, view.zoom(), 1e-9);
        assertEquals(new Point(300, 20), view.toScreen(new Point(0, 0)));
    }

    @Test
    void fittingWidth_page_startsAtItsTop() {
        Viewport view = Viewport.fittingWidth(new Box(10, 50, 210, 550), 440, 20);
        assertEquals(new Point(20, 20), view.toScreen(new Point(10, 50)));
    }

    @Test
    void dragged_toTheRight_showsWhatIsLeft() {
        assertEquals(new Viewport(2, -5, 0), new Viewport(2, 0, 0).dragged(10, 0));
    }

    @Test
    void within_draggedFarAway_keepsSomeOfThePageInSight() {
        Viewport view = new Viewport(1, 1e6, -1e6).within(new Box(0, 0, 800, 600), 400, 300);
        assertTrue(view.shown(400, 300).intersects(new Box(0, 0, 800, 600)), "page and canvas still meet");
    }
}
