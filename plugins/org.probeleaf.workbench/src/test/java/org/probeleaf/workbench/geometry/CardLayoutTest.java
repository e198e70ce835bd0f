// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.drawing.Raster;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

class CardLayoutTest {

    private static final Box PAGE = new Box(0, 0, 400, 300);

    private static InkMap blank() {
        int[] white = new int[400 * 300];
        Arrays.fill(white, 0xFFFFFFFF);
        return new InkMap(new Raster(400, 300, white), 1);
    }

    /** Ink on the right half of the page. */
    private static InkMap rightHalf() {
        int[] pixels = new int[400 * 300];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = i % 400 >= 200 ? 0xFF000000 : 0xFFFFFFFF;
        }
        return new InkMap(new Raster(400, 300, pixels), 1);
    }

    private static CardLayout.Card card(double x, double y) {
        return new CardLayout.Card(new Point(x, y), 60, 24, null);
    }

    @Test
    void place_blankPaper_standsBesideItsAnchor() {
        Box box = CardLayout.place(List.of(card(200, 150)), PAGE, blank(), 1).get(0);
        assertFalse(box.contains(new Point(200, 150)), "the anchor stays free");
        assertTrue(box.distance(new Point(200, 150)) < 30, "near its anchor");
    }

    @Test
    void place_inkOnOneSide_takesTheOther() {
        Box box = CardLayout.place(List.of(card(200, 150)), PAGE, rightHalf(), 1).get(0);
        assertTrue(box.x1() <= 200, "left of the ink: " + box);
    }

    @Test
    void place_severalAtOneAnchor_doNotOverlap() {
        List<Box> boxes = CardLayout.place(Collections.nCopies(5, card(200, 150)), PAGE, blank(), 1);
        for (int i = 0; i < boxes.size(); i++) {
            for (int k = 0; k < i; k++) {
                assertFalse(boxes.get(i).intersects(boxes.get(k)), "cards " + i + " and " + k);
            }
        }
    }

    @Test
    void place_anchorInTheCorner_staysOnThePage() {
        assertTrue(PAGE.contains(CardLayout.place(List.of(card(398, 2)), PAGE, blank(), 1).get(0)));
    }

    @Test
    void place_movedCard_staysWhereItWasPut() {
        CardLayout.Card moved = new CardLayout.Card(new Point(10, 10), 60, 24, new Point(300, 200));
        assertEquals(new Box(300, 200, 360, 224), CardLayout.place(List.of(moved), PAGE, rightHalf(), 1).get(0));
    }

    @Test
    void leaderEnd_anchorBelow_isOnTheLowerEdge() {
        assertEquals(new Point(30, 20), CardLayout.leaderEnd(new Box(0, 0, 60, 20), new Point(30, 90)));
    }
}
