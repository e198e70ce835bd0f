// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

class FindHitTest {

    private static Text text(String words, double angle, Box box) {
        return new Text(words, new Point(box.x0(), box.y1()), angle, 10, box, "", 0, true);
    }

    @Test
    void in_otherLetterCaseTwice_findsBoth() {
        List<FindHit> hits = FindHit.in(2, List.of(text("GND gnd", 0, new Box(0, 0, 70, 10))), " Gnd ");
        assertEquals(List.of(new FindHit(2, new Box(0, 0, 30, 10)), new FindHit(2, new Box(40, 0, 70, 10))), hits);
    }

    @Test
    void in_textWrittenUpwards_marksItsLowerEndFirst() {
        List<FindHit> hits = FindHit.in(1, List.of(text("A0A1", 270, new Box(0, 0, 10, 40))), "A0");
        assertEquals(new Box(0, 20, 10, 40), hits.get(0).box());
    }

    @Test
    void in_blankWanted_findsNothing() {
        assertTrue(FindHit.in(1, List.of(text("R1", 0, new Box(0, 0, 9, 9))), "  ").isEmpty());
    }
}
