// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.drawing.Raster;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

class PageLayoutTest {

    private static final int WIDTH = 400;
    private static final int HEIGHT = 300;

    /** Paper with the given boxes of ink. */
    private static InkMap paper(Box... ink) {
        int[] argb = new int[WIDTH * HEIGHT];
        Arrays.fill(argb, 0xFFFFFFFF);
        for (Box b : ink) {
            for (int y = (int) b.y0(); y < b.y1(); y++) {
                for (int x = (int) b.x0(); x < b.x1(); x++) {
                    argb[y * WIDTH + x] = 0xFF000000;
                }
            }
        }
        return InkMap.of(new Raster(WIDTH, HEIGHT, argb), 1);
    }

    @Test
    void share_boxes_countsInk() {
        InkMap ink = paper(new Box(10, 10, 20, 20));
        assertEquals(1, ink.share(new Box(10, 10, 20, 20)));
        assertEquals(0.5, ink.share(new Box(10, 10, 30, 20)));
        assertEquals(0, ink.share(new Box(100, 100, 120, 120)));
        assertEquals(0, ink.share(new Box(-50, -50, -10, -10)));
    }

    @Test
    void card_halfThePageInked_standsOnPaper() {
        InkMap ink = paper(new Box(0, 0, 200, HEIGHT));
        PageLayout layout = new PageLayout(ink, WIDTH, HEIGHT, 1);
        Box card = layout.card(new Point(150, 150), 80, 40);
        assertEquals(0, ink.share(card));
        assertTrue(card.x0() < 230, card.toString());
    }

    @Test
    void card_many_overlapNothingAndStayOnThePage() {
        PageLayout layout = new PageLayout(paper(), WIDTH, HEIGHT, 1);
        List<Box> cards = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            Box card = layout.card(new Point(200, 150), 60, 30);
            assertTrue(new Box(0, 0, WIDTH, HEIGHT).contains(card));
            assertTrue(cards.stream().noneMatch(card::intersects));
            cards.add(card);
        }
    }

    @Test
    void tag_wireAcrossInk_standsBesideItsFreePart() {
        InkMap ink = paper(new Box(50, 80, 250, 120));
        PageLayout layout = new PageLayout(ink, WIDTH, HEIGHT, 1);
        Box tag = layout.tag(new Segment(new Point(60, 100), new Point(380, 100)), 0.2, 30, 10).orElseThrow();
        assertEquals(0, ink.share(tag));
        assertTrue(tag.y1() < 100 && tag.x0() >= 250, tag.toString());
    }

    @Test
    void legend_emptyCorner_foundThere() {
        List<Box> lines = new ArrayList<>();
        for (int y = 0; y < HEIGHT; y += 15) {
            lines.add(new Box(0, y, y < 160 ? WIDTH : 240, y + 2));
        }
        InkMap ink = paper(lines.toArray(Box[]::new));
        Box legend = new PageLayout(ink, WIDTH, HEIGHT, 1).legend(100, 80);
        assertEquals(0, ink.share(legend));
        assertTrue(legend.x0() >= 240 && legend.y0() >= 160);
    }

    @Test
    void enters_segmentThroughBox_true() {
        Box box = new Box(10, 10, 20, 20);
        assertTrue(new Segment(new Point(0, 15), new Point(30, 15)).enters(box));
        assertTrue(new Segment(new Point(12, 12), new Point(13, 13)).enters(box));
        assertFalse(new Segment(new Point(0, 0), new Point(30, 5)).enters(box));
    }
}
