// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.Test;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.schematic.netlist.SheetKind;

class PageFeedTest {

    @Test
    void feed_readOnce_drawsEachPageOnceAndInOrder() {
        List<Integer> drawn = Collections.synchronizedList(new ArrayList<>());
        try (PageFeed feed = new PageFeed(4, i -> {
            drawn.add(i);
            return page(i + 1);
        })) {
            assertEquals(List.of(1, 2, 3, 4), feed.stream().map(Drawing::page).toList());
        }
        assertEquals(List.of(0, 1, 2, 3), drawn);
    }

    @Test
    void feed_pageThatCannotBeDrawn_throwsWhenItIsItsTurn() {
        SheetException bad = new SheetException(SheetException.Problem.DAMAGED, "page 2 is damaged", null);
        try (PageFeed feed = new PageFeed(3, i -> {
            if (i == 1) {
                throw bad;
            }
            return page(i + 1);
        })) {
            assertEquals(1, feed.get(0).page());
            assertSame(bad, assertThrows(PageFeed.Failed.class, () -> feed.get(1)).sheetException());
        }
    }

    private static Drawing page(int number) {
        return new Drawing(number, 100, 100, SheetKind.VECTOR, List.of(), List.of(), List.of(), List.of());
    }
}
