// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.probeleaf.drawing.PageSize;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

class PageStackTest {

    private static final List<PageSize> TWO = List.of(new PageSize(800, 600), new PageSize(400, 300));

    @Test
    void all_twoSizes_areCentredOneBelowAnother() {
        PageStack stack = PageStack.all(TWO);
        assertEquals(new Box(0, 0, 800, 600), stack.box(1));
        assertEquals(new Box(200, 600 + PageStack.GAP, 600, 900 + PageStack.GAP), stack.box(2));
    }

    @Test
    void single_secondPage_showsNoOther() {
        PageStack stack = PageStack.single(TWO, 2);
        assertFalse(stack.shows(1));
        assertTrue(stack.shows(2));
        assertEquals(new Box(0, 0, 400, 300), stack.bounds());
    }

    @Test
    void nearest_inTheGap_isTheCloserPage() {
        assertEquals(OptionalInt.of(2), PageStack.all(TWO).nearest(new Point(300, 620)));
        assertEquals(OptionalInt.empty(), PageStack.none().nearest(new Point(0, 0)));
    }

    @Test
    void toPage_ofToDocument_isTheSamePoint() {
        PageStack stack = PageStack.all(TWO);
        assertEquals(new Point(12, 34), stack.toPage(2, stack.toDocument(2, new Point(12, 34))));
    }

    @Test
    void touching_aStripAcrossTheGap_namesBothPages() {
        assertEquals(List.of(1, 2), PageStack.all(TWO).touching(new Box(0, 590, 800, 640)));
    }
}
