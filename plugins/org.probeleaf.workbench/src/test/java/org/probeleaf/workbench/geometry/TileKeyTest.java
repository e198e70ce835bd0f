// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

class TileKeyTest {

    private static final Box CANVAS = new Box(0, 0, 1000, 700);

    @Property
    void covering_anyPlace_leavesNoHole(@ForAll @IntRange(min = -3000, max = 900) int x,
            @ForAll @IntRange(min = -3000, max = 600) int y, @ForAll @DoubleRange(min = 0.1, max = 8) double zoom,
            @ForAll @DoubleRange(min = 0, max = 1) double u, @ForAll @DoubleRange(min = 0, max = 1) double v) {
        PageFrame frame = new PageFrame(1, x, y, zoom, 1190, 842);
        List<TileKey> keys = TileKey.covering(frame, 1, CANVAS);
        Point pixel = new Point(CANVAS.width() * u, CANVAS.height() * v);
        boolean onPage = frame.outline().grow(-1).contains(pixel);
        assertTrue(!onPage || keys.stream().anyMatch(k -> frame.toScreen(k.region()).grow(1e-6).contains(pixel)),
                "each pixel of the page has its tile");
        assertEquals(keys.size(), new HashSet<>(keys).size(), "no tile twice");
    }

    @Test
    void covering_pageOutOfSight_needsNothing() {
        assertTrue(TileKey.covering(new PageFrame(1, 2000, 0, 1, 595, 842), 1, CANVAS).isEmpty());
    }

    @Test
    void covering_denseScreen_hasTilesOfHalfTheSize() {
        TileKey first = TileKey.covering(new PageFrame(3, 0, 0, 1, 595, 842), 2, CANVAS).get(0);
        assertEquals(2, first.scale());
        assertEquals(256, first.region().width(), 1e-9);
    }
}
