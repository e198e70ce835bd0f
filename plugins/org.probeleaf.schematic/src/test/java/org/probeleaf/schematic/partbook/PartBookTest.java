// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.schematic.partbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import com.fasterxml.jackson.jr.ob.JSON;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;

class PartBookTest {

    private final PartBook book = PartBook.standard();

    @ParameterizedTest
    @CsvSource({"7400, 7400", "74LS00, 7400", "SN74HCT00N, 7400", "DM74LS00, 7400", "74hc00, 7400", "74 LS 00, 7400",
        "MC74AC00DR2G, 7400", "SN74LS138N-3, 74138", "74ALS245A, 74245", "CD74HCT4040, ", "74LVC1G00, ", "74LS107, ",
        "SN7404, 7404", "Z80, Z80", "Z80A-CPU, Z80", "Z80 CPU, Z80", "Z84C0006PEC, Z80", "Z80A-PIO, ", "Z80PIO, ",
        "R6502AP, 6502", "W65C02S6TPG-14, 6502", "27C64-15, 2764", "M27C128A-20F1, 27128", "TMS2716, ",
        "D2716-1, 2716", "HM62256BLP-7, 62256", "6116-LP3, 6116", "100n, ", "4k7, ", "27, "})
    void find_commonSpelling_givesTheType(String value, String name) {
        assertEquals(name, book.find(value).map(PartType::name).orElse(null));
    }

    @ParameterizedTest
    @CsvSource({"R12, RESISTOR", "IC3, IC", "U7A, IC", "C1, CAPACITOR", "TP4, TESTPOINT", "q2, TRANSISTOR",
        "RN1, RESISTOR", "J2, CONNECTOR", "XYZ1, UNKNOWN", "5V_C4, CAPACITOR", "VR1, AMBIGUOUS"})
    void classOf_designator_goesByItsLetters(String ref, PartClass kind) {
        assertEquals(kind, book.classOf(ref));
    }

    @Test
    void direction_pinOfKnownType_isThatOfItsRole() {
        Part cpu = part("IC1", "Z80A");
        assertEquals(PinDirection.OUT, book.direction(cpu, pin("21", null)));
        assertEquals(PinDirection.OUT, book.direction(cpu, pin(null, "~RD")));
        assertEquals(PinDirection.BIDIR, book.direction(cpu, pin("8", "D3")));
        assertEquals(PinDirection.POWER, book.direction(cpu, pin("11", null)));
        assertEquals(PinDirection.IN, book.direction(cpu, pin("16", "INT#")));
    }

    @Test
    void direction_printedNameAgainstNumber_nameCounts() {
        assertEquals(PinDirection.IN, book.direction(part("IC1", "Z80A"), pin("21", "CLK")));
    }

    @Test
    void direction_unknownType_isThatOfTheClassOrUnknown() {
        assertEquals(PinDirection.PASSIVE, book.direction(part("R1", "4k7"), pin("1", null)));
        assertEquals(PinDirection.UNKNOWN, book.direction(part("IC9", "XR2206"), pin("1", "AM")));
        assertEquals(PinDirection.POWER, book.direction(part("IC9", "XR2206"), pin("4", "VCC")));
        assertEquals(PinDirection.IN, book.direction(part("Q1", "BC548"), pin(null, "B")));
        assertEquals(PinDirection.UNKNOWN, book.direction(part("Q1", "BC548"), pin(null, "C")));
    }

    @Test
    void passes_gateOfQuadNand_onlyWithinItsSection() {
        UnitType second = book.find("74LS00").orElseThrow().units().get(1);
        assertTrue(second.passes("4", "6"));
        assertFalse(second.passes("6", "4"));
        assertFalse(second.passes("1", "6"));
        UnitType line = book.find("74LS245").orElseThrow().units().get(0);
        assertTrue(line.passes("18", "2"));
        assertTrue(line.passes("2", "18"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"nonsense", "class R", "class R toaster", "  1 in A", "part X two Thing",
        "part X 2 Thing\n  1 in A", "part X 2 Thing\n  1 in A\n  1 in B", "part X 1 Thing\n  1 sideways A",
        "part X 1 Thing\n  1 in A\n  unit A NOT 1 > 2"})
    void read_wrongLine_namesIt(String text) {
        IOException e = assertThrows(IOException.class, () -> PartBook.read(new StringReader(text)));
        assertTrue(e.getMessage().contains("line "), e.getMessage());
    }

    /** The reference's pin lists: 29 of the 74 series and two memories agree with ChipDB (ODC-PDDL, d1545dc07a37). */
    @Test
    void standard_againstReferencePinLists_agrees() throws IOException {
        Path file = Path.of(System.getProperty("probeleaf.shared", "none"), "reference", "pinouts.json");
        assumeTrue(Files.isReadable(file), "the reference folder is absent: " + file);
        Map<?, ?> chips = (Map<?, ?>) JSON.std.mapFrom(Files.readString(file)).get("chips");
        assertFalse(chips.isEmpty());
        chips.forEach((name, chip) -> {
            PartType type = book.find((String) name).orElseThrow();
            Map<String, String> roles = type.pins().stream()
                    .collect(Collectors.toMap(PinType::number, p -> p.role().word()));
            List<?> pins = (List<?>) ((Map<?, ?>) chip).get("pins");
            assertEquals(pins.size(), roles.size(), type.name());
            for (Object pin : pins) {
                Map<?, ?> p = (Map<?, ?>) pin;
                assertEquals(word((String) p.get("dir")), roles.get(p.get("pin").toString()), name + "." + pin);
            }
        });
    }

    private static String word(String dir) {
        return switch (dir) {
            case "pwr" -> "power";
            case "gnd" -> "ground";
            case "ext" -> "timing";
            default -> dir;
        };
    }

    private static Part part(String ref, String value) {
        return new Part(ref, value, List.of(new PartUnit(null, 1, new Box(0, 0, 1, 1))), List.of());
    }

    private static Pin pin(String number, String name) {
        return Pin.drawn(number, name, null, 1, null, null);
    }
}
