// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.partbook.PartBook;

class PriorsTest {

    private static Part part(String ref, String value) {
        return new Part(ref, value, List.of(new PartUnit(null, 1, new Box(0, 0, 1, 1))), List.of());
    }

    @ParameterizedTest
    @CsvSource({"C1, 100n, capacitor", "C2, 10u 16V, electrolytic", "C3, 1000u 25V, electrolytic", "C4, 22p, capacitor",
        "C5, 4.7\u00b5F, electrolytic", "C6, 1u, electrolytic", "C7, odd, capacitor", "IC1, 7805, regulator",
        "U2, LM317T, regulator", "IC3, 79L05, regulator", "IC4, 62256, memory", "IC5, 27128, memory", "IC6, 74LS00, ic",
        "R1, 4k7, resistor", "J1, DIN, connector", "Q1, BC548, transistor", "SW1, RESET, switch"})
    void className_tellsFinerClassesByValue(String ref, String value, String expected) {
        assertEquals(expected, Priors.className(part(ref, value), PartBook.standard()));
    }

    /** What the head of the file says: what wears fails more often than what does not. */
    @Test
    void standard_wearingPartsAreLikelier() {
        Priors p = Priors.standard();
        double electrolytic = p.of(part("C1", "100u"), PartBook.standard());
        double ceramic = p.of(part("C1", "100n"), PartBook.standard());
        double connector = p.of(part("J1", null), PartBook.standard());
        double gate = p.of(part("IC1", "74LS00"), PartBook.standard());
        assertTrue(electrolytic > gate && connector > gate && gate > ceramic);
    }

    @Test
    void parse_overridesWhatItNamesAndKeepsTheRest() {
        Priors own = Priors.parse("# mine\npart ic 12.5 # sockets\n\nfault dead 0\n");
        assertEquals(12.5, own.of(part("IC1", "74LS00"), PartBook.standard()));
        assertEquals(0, own.of(FaultKind.DEAD));
        assertEquals(Priors.standard().of(FaultKind.OPEN), own.of(FaultKind.OPEN));
        assertEquals(Priors.standard().withPart("ic", 12.5).withFault(FaultKind.DEAD, 0), own);
    }

    @Property
    void format_isReadBack(@ForAll @DoubleRange(min = 0, max = 1e6) double weight,
            @ForAll @DoubleRange(min = 0, max = 10) double fault) {
        Priors own = Priors.standard().withPart("relay", weight).withFault(FaultKind.BRIDGED, fault);
        assertEquals(own, Priors.parse(own.format()));
        assertEquals(weight, own.parts().get("relay"));
    }

    @ParameterizedTest
    @CsvSource({"part ic, line 1: must be", "part ic many, line 1: needs a weight of 0 or more in place of many",
        "part ic -1, line 1: needs a weight", "part ic Infinity, line 1: needs a weight", "part teapot 3, not known: teapot",
        "fault wobbly 1, not known: wobbly", "weight ic 3, begins with neither part nor fault"})
    void parse_wrongLine_isNamed(String line, String why) {
        String said = assertThrows(IllegalArgumentException.class, () -> Priors.parse(line)).getMessage();
        assertTrue(said.contains(why.replace("line 1: ", "")) && said.contains("line 1"), said);
    }
}
