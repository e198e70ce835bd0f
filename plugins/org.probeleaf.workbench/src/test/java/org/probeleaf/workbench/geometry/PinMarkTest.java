// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PinDirection;

class PinMarkTest {

    @ParameterizedTest
    @CsvSource({"70,20,1,0", "-10,20,-1,0", "30,-8,0,-1", "30,48,0,1"})
    void outwards_pinAtASide_pointsAwayFromTheBody(double x, double y, double outX, double outY) {
        Pin pin = Pin.drawn("1", null, null, 1, new Point(x, y), "N1");
        Part part = new Part("IC1", null, List.of(new PartUnit(null, 1, new Box(0, 0, 60, 40))), List.of(pin));
        assertEquals(new Point(outX, outY), PinMark.outwards(part, pin));
    }

    @Test
    void of_driverAndLoad_differInFillAndPointOppositeWays() {
        PinMark driver = PinMark.of(PinDirection.OUT, 1, 0);
        PinMark load = PinMark.of(PinDirection.IN, 1, 0);
        assertTrue(driver.filled());
        assertFalse(load.filled());
        assertTrue(driver.outlines().get(0)[2] > 0, "a driver's tip points out");
        assertTrue(load.outlines().get(0)[2] < 0, "a load's tip points in");
    }

    @Test
    void of_allDirections_supplyAndPassiveShareTheRing() {
        assertEquals(2, PinMark.of(PinDirection.BIDIR, 1, 0).outlines().size());
        assertTrue(PinMark.of(PinDirection.PASSIVE, 1, 0).outlines().isEmpty());
        assertEquals(8, PinMark.of(PinDirection.UNKNOWN, 1, 0).outlines().get(0).length);
    }
}
