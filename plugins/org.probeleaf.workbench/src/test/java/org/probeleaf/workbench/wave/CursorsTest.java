// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.wave;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CursorsTest {

    private static final double[] EDGES = {1, 2, 5};
    private final Cursors cursors = new Cursors();

    @ParameterizedTest
    @CsvSource({"0, true, 1", "1, true, 2", "3, true, 5", "5, true, NaN", "9, false, 5", "5, false, 2", "1, false, NaN",
        "1.5, false, 1"})
    void edge_isTheNextOne(double from, boolean later, double next) {
        assertEquals(next, Cursors.edge(EDGES, from, later));
    }

    @ParameterizedTest
    @CsvSource({"1.1, 0.2, 1", "1.5, 0.2, 1.5", "1.9, 0.2, 2", "3.4, 2, 2", "3.6, 2, 5", "0.9, 0.2, 1", "5.1, 0.2, 5", "2, 0.2, 2"})
    void snapped_goesToTheNearestEdgeWithinReach(double at, double within, double to) {
        assertEquals(to, Cursors.snapped(EDGES, at, within));
    }

    @Test
    void snapped_withoutEdges_staysWhereItIs() {
        assertEquals(3, Cursors.snapped(new double[0], 3, 9));
    }

    @Test
    void step_ofACursorThatIsNotPut_beginsWhereItIsTold() {
        cursors.activate(1);
        cursors.step(0.5, 2);
        assertEquals(2.5, cursors.at(1));
        assertEquals(Double.NaN, cursors.at(0));
        cursors.step(0.5, 9);
        assertEquals(3, cursors.at(1));
        assertEquals("B", cursors.put().get(0).name());
    }

    @Test
    void near_findsTheNearerOfBoth() {
        cursors.put(0, 1);
        cursors.put(1, 1.3);
        assertEquals(1, cursors.near(1.2, 0.5));
        assertEquals(0, cursors.near(1.1, 0.5));
        assertEquals(-1, cursors.near(2, 0.5));
        cursors.clear();
        assertEquals(-1, cursors.near(1, 0.5));
    }
}
