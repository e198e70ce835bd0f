// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;

import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Pin;

/**
 * The rules of drawing: a dot joins, a tee joins, a plain crossing does not (IEC 61082-1; ASME/IEEE Y14.15); the same
 * name is the same net; supply symbols are global.
 */
class RecogniserTest {

    private static void checkNets(String expected, Sketch sketch) {
        assertEquals(expected, Reading.nets(Reading.read(sketch.page(1))));
    }

    /** Two chips face to face; pins 3 and 4 of the first on its right side, pins 1 and 2 of the second on its left. */
    private static Sketch chips() {
        return new Sketch().chip("IC1", 100, 100, 2, 2).chip("IC2", 400, 100, 2, 2);
    }

    @Test
    void recognise_wireFromPinToPin_joinsThem() {
        checkNets("-: IC1.3 IC2.1", chips().wire(200, 100, 400, 100));
    }

    @Test
    void recognise_wireInPieces_isOneWire() {
        checkNets("-: IC1.3 IC2.1", chips().wire(200, 100, 250, 100, 250, 60, 350, 60, 350, 100, 400, 100));
    }

    @Test
    void recognise_wireDrawnTwice_isOneWire() {
        checkNets("-: IC1.3 IC2.1", chips().wire(200, 100, 250, 100, 250, 60, 350, 60, 350, 100, 400, 100)
                .wire(200, 100, 250, 100, 250, 60, 350, 60, 350, 100, 400, 100));
    }

    @Test
    void recognise_plainCrossing_doesNotJoin() {
        Sketch crossing = chips().wire(200, 100, 300, 100, 300, 110, 400, 110)
                .wire(200, 110, 280, 110, 280, 80, 320, 80, 320, 100, 400, 100);

        checkNets("-: IC1.3 IC2.2; -: IC1.4 IC2.1", crossing);
    }

    @Test
    void recognise_crossingWithADot_joins() {
        Sketch dotted = chips().wire(200, 100, 400, 100).wire(300, 60, 300, 200).wire(300, 200, 120, 200)
                .wire(120, 200, 120, 240).dot(300, 100).chip("IC3", 120, 240, 1, 1);

        checkNets("-: IC1.3 IC2.1 IC3.1", dotted);
    }

    @Test
    void recognise_teeWithoutADot_joins() {
        Sketch tee = chips().wire(200, 100, 400, 100).wire(300, 100, 300, 240).chip("IC3", 300, 240, 1, 1);

        checkNets("-: IC1.3 IC2.1 IC3.1", tee);
    }

    @Test
    void recognise_wiresThatEndOnEachOtherLikeACrossing_stayApart() {
        Sketch split = chips().wire(200, 100, 300, 100).wire(300, 100, 400, 100)
                .wire(300, 40, 300, 100).wire(300, 100, 300, 240).chip("IC3", 300, 240, 1, 1)
                .wire(300, 40, 90, 40).wire(90, 40, 90, 100).wire(90, 100, 100, 100)
                .wire(200, 110, 220, 110, 220, 150).wire(230, 150, 210, 150).dot(220, 150);

        Netlist netlist = Reading.read(split.page(1));

        assertEquals("-: IC1.1 IC3.1; -: IC1.3 IC2.1", pairsOnly(Reading.nets(netlist)));
        assertTrue(netlist.doubts().stream().anyMatch(d -> d.code().equals("open-crossing")), "it says it is unsure");
    }

    private static String pairsOnly(String nets) {
        return String.join("; ", List.of(nets.split("; ")).stream().filter(n -> n.split(" ").length > 2).toList());
    }

    @Test
    void recognise_seriesResistor_keepsItsTwoSidesApart() {
        Sketch series = chips().wire(200, 100, 280, 100).resistor("R1", 280, 100).wire(320, 100, 400, 100);

        checkNets("-: IC1.3 R1.?1; -: IC2.1 R1.?1", series);
    }

    @Test
    void recognise_sameLabel_isTheSameNetOnEveryPage() {
        Sketch first = new Sketch().chip("IC1", 100, 100, 1, 1).wire(200, 100, 260, 100).text("/RD", 210, 98, 6)
                .resistor("R1", 300, 300).wire(340, 300, 400, 300);
        Sketch second = new Sketch().chip("IC2", 100, 100, 1, 1).wire(40, 100, 100, 100).text("/RD", 50, 98, 6)
                .resistor("R2", 300, 300).wire(340, 300, 400, 300);

        Netlist netlist = Reading.read(first.page(1), second.page(2));

        assertTrue(Reading.nets(netlist).contains("/RD: IC1.2 IC2.1"), Reading.nets(netlist));
    }

    @Test
    void recognise_supplySymbols_areOneNet() {
        Sketch supplies = chips().wire(200, 100, 240, 100, 240, 60).supply("+5V", 240, 60)
                .wire(400, 100, 360, 100, 360, 60).supply("+5V", 360, 60);

        checkNets("+5V: IC1.3 IC2.1", supplies);
    }

    @Test
    void recognise_flags_nameTheirNets() {
        Sketch flags = chips().wire(200, 100, 240, 100).flag("CLK", 240, 100)
                .wire(500, 100, 540, 100).flag("CLK", 540, 100).wire(200, 110, 400, 110);

        checkNets("-: IC1.4 IC2.2; CLK: IC1.3 IC2.3", flags);
    }

    @Test
    void recognise_unitsOfAPart_areOnePart() {
        Sketch units = new Sketch().chip("IC5A", 100, 100, 1, 1).chip("IC5B", 300, 100, 1, 1)
                .wire(200, 100, 300, 100);

        Netlist netlist = Reading.read(units.page(1));

        assertEquals(1, netlist.parts().size());
        assertEquals(2, netlist.parts().get(0).units().size());
        assertEquals(List.of("A", "A", "B", "B"), netlist.parts().get(0).pins().stream().map(Pin::unit).sorted()
                .toList());
    }

    @Test
    void recognise_pinDrawnUnconnected_hasNoNet() {
        Netlist netlist = Reading.read(chips().wire(200, 100, 400, 100).page(1));

        Pin open = netlist.part("IC1").orElseThrow().pins().get(0);
        assertEquals("1", open.number());
        assertNull(open.net());
    }

    @Test
    void recognise_stoppedByThePerson_throws() {
        Progress stop = new Progress() {
            @Override
            public boolean cancelled() {
                return true;
            }
        };

        assertThrows(CancellationException.class,
                () -> new Recogniser().recognise("t", "", List.of(chips().page(1)), stop));
    }

    @Test
    void recognise_emptyPage_isAnEmptyNetlist() {
        Netlist netlist = Reading.read(new Sketch().page(1));

        assertTrue(netlist.parts().isEmpty());
        assertTrue(netlist.nets().isEmpty());
        assertEquals(1, netlist.sheets().size());
    }
}
