// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CornersTest {

    @ParameterizedTest
    @ValueSource(strings = {"10,20;110,25;105,90;12,88", "105,90;10,20;12,88;110,25", "12,88 110,25 105,90 10,20"})
    void parse_anyOrder_isSortedClockwiseFromTheTopLeft(String text) {
        assertEquals("10.0,20.0;110.0,25.0;105.0,90.0;12.0,88.0", Corners.parse(text).text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"10,20;110,25;105,90", "10,20;110,25;105,x;1,2", "10,20;20,20;30,20;40,20",
        "10,20;110,25;105,90;60,40", "10,20,30;1,2;3,4;5,6", "NaN,1;1,1;1,2;3,4"})
    void parse_noFourCornersOfAScreen_oneSentence(String text) {
        String message = assertThrows(IllegalArgumentException.class, () -> Corners.parse(text)).getMessage();
        assertTrue(message.contains("corner") && !message.contains("\n"), message);
    }

    @Test
    void gridMap_ofCorners_putsThemAndTheMiddleWherePerspectiveDoes() {
        // A trapezium half as wide at the top as at the bottom: its diagonals meet at a third of its height from the top.
        Corners corners = Corners.parse("100,0;200,0;250,300;50,300");
        GridMap map = GridMap.of(new Divisions(10, 8), corners);
        for (int i = 0; i < 4; i++) {
            Spot asked = corners.list().get(i);
            Spot put = map.corners().list().get(i);
            assertEquals(asked.x(), put.x(), 1e-9);
            assertEquals(asked.y(), put.y(), 1e-9);
        }
        Spot middle = map.picture(5, 4);
        assertEquals(150, middle.x(), 1e-6);
        assertEquals(100, middle.y(), 1e-6);
    }

    @Test
    void divisions_parse() {
        assertEquals(new Divisions(12, 8), Divisions.parse("12x8"));
        assertEquals(new Divisions(10, 10), Divisions.parse(" 10 X 10 "));
        assertThrows(IllegalArgumentException.class, () -> Divisions.parse("10"));
        assertThrows(IllegalArgumentException.class, () -> Divisions.parse("1x8"));
    }
}
