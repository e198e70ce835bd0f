// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.diagnosis.Boards;
import org.probeleaf.diagnosis.simulation.Evidence;
import org.probeleaf.diagnosis.simulation.Simulator;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.partbook.PartType;
import org.probeleaf.schematic.partbook.PinRole;

/** Steady levels of chips of the 74 series, against the truth tables of their data sheets. */
class LogicTest {

    /** One chip, each pin on a net of its own; pins held at levels, and what another pin then has (X: not known). */
    @ParameterizedTest
    @CsvSource({
        "7400, 1=1 2=1, 3, 0", "7400, 1=0, 3, 1", "7400, 1=1, 3, X",
        "7402, 2=0 3=0, 1, 1", "7402, 2=1, 1, 0",
        "7404, 1=1, 2, 0", "7408, 1=1 2=1, 3, 1", "7408, 2=0, 3, 0", "7410, 1=1 2=1 13=0, 12, 1",
        "7420, 1=1 2=1 4=1 5=1, 6, 0", "7432, 1=0 2=1, 3, 1", "7432, 1=0 2=0, 3, 0",
        "7486, 1=1 2=1, 3, 0", "7486, 1=1 2=0, 3, 1", "7486, 1=1, 3, X",
        "74138, 1=1 2=0 3=1 4=0 5=0 6=1, 10, 0", "74138, 1=1 2=0 3=1 4=0 5=0 6=1, 15, 1",
        "74138, 4=1, 10, 1", "74138, 6=0, 15, 1", "74138, 1=1 2=0 3=1, 10, X",
        "74139, 1=0 2=1 3=1, 7, 0", "74139, 1=0 2=1 3=1, 4, 1", "74139, 1=1, 7, 1",
        "74157, 1=0 2=1 3=0 15=0, 4, 1", "74157, 1=1 2=1 3=0 15=0, 4, 0", "74157, 15=1, 4, 0",
        "74157, 2=1 3=1 15=0, 4, 1",
        "74244, 1=0 2=1, 18, 1", "74244, 1=1 2=1, 18, X", "74240, 1=0 2=1, 18, 0",
        "74245, 1=1 19=0 2=1, 18, 1", "74245, 1=0 19=0 18=1, 2, 1", "74245, 1=1 19=1 2=1, 18, X",
        "74373, 1=0 11=1 3=1, 2, 1", "74373, 1=0 11=0 3=1, 2, X", "74374, 1=0 11=1 3=1, 2, X",
        "7474, 1=0 4=1, 5, 0", "7474, 1=0 4=1, 6, 1", "7474, 1=1 4=0, 5, 1", "7474, 1=1 4=0, 6, 0",
        "7474, 1=1 4=1 2=1, 5, X", "7474, 1=0 4=0, 6, 1",
        "74273, 1=0, 2, 0", "74273, 1=1, 2, X", "7493, 2=1 3=1, 12, 0", "7493, 2=0 3=1, 12, X",
        "74367, 1=0 2=1, 3, 1", "74125, 1=0 2=0, 3, 0", "7407, 1=0, 2, 0"})
    void expected_heldInputs_followTheDataSheet(String chip, String held, String pin, String level) {
        Circuit circuit = Circuit.of(alone(chip), PartBook.standard());
        Evidence evidence = Evidence.none(circuit);
        for (String one : held.split(" ")) {
            String[] is = one.split("=");
            evidence = evidence.given(circuit.nodeOf("P" + is[0]).orElseThrow().index(), Integer.parseInt(is[1]));
        }
        int found = new Simulator(circuit, evidence).expected(circuit.nodeOf("P" + pin).orElseThrow().index());
        assertEquals(level, Level.known(found) ? String.valueOf(found) : "X");
    }

    private static Netlist alone(String chip) {
        PartType type = PartBook.standard().find(chip).orElseThrow();
        List<String> words = new ArrayList<>(List.of("U1", chip));
        type.pins().stream().filter(p -> p.role() != PinRole.NOT_CONNECTED).forEach(p -> words.add(p.number() + "="
                + (p.role() == PinRole.GROUND ? "GND" : p.role() == PinRole.SUPPLY ? "+5V" : "P" + p.number())));
        return Boards.of(String.join(" ", words));
    }

    private static int level(String net, String held, String... lines) {
        Circuit circuit = Circuit.of(Boards.of(lines), PartBook.standard());
        Evidence evidence = Evidence.none(circuit);
        for (String one : held.split(" ")) {
            String[] is = one.split("=");
            evidence = evidence.given(circuit.nodeOf(is[0]).orElseThrow().index(), Integer.parseInt(is[1]));
        }
        return new Simulator(circuit, evidence).expected(circuit.nodeOf(net).orElseThrow().index());
    }

    @Test
    void openCollectors_pullTogetherAgainstTheResistor() {
        String[] board = {"U1 7406 1=A 2=Y", "U2 7406 1=B 2=Y", "R1 4k7 1=+5V 2=Y"};
        assertEquals(Level.HIGH, level("Y", "A=0 B=0", board));
        assertEquals(Level.LOW, level("Y", "A=1 B=0", board));
        assertEquals(Level.LOW, level("Y", "A=1 B=1", board));
    }

    @Test
    void threeStateOutputs_onlyTheEnabledOneCounts() {
        String[] board = {"U1 74125 1=EA 2=A 3=Y", "U2 74125 1=EB 2=B 3=Y", "R1 10k 1=Y 2=GND"};
        assertEquals(Level.HIGH, level("Y", "EA=0 EB=1 A=1 B=0", board));
        assertEquals(Level.LOW, level("Y", "EA=1 EB=0 A=1 B=0", board));
        assertEquals(Level.LOW, level("Y", "EA=1 EB=1 A=1 B=1", board));
        assertEquals(Level.UNKNOWN, level("Y", "EA=0 EB=0 A=1 B=0", board));
    }

    @Test
    void seriesResistor_passesTheLevelOn() {
        assertEquals(Level.LOW, level("Y", "A=1", "U1 7404 1=A 2=M", "R1 100 1=N 2=M", "U2 7404 1=N 2=O", "U3 7404 1=O 2=Y"));
        assertEquals(Level.HIGH, level("Z", "A=1", "U1 7404 1=A 2=M", "R1 100 1=N 2=M", "U2 7404 1=N 2=Z"));
    }

    @Test
    void crossedGates_holdWhatTheirInputsForce() {
        String[] latch = {"U1 7400 1=S 2=QN 3=Q", "U2 7400 1=R 2=Q 3=QN"};
        assertEquals(Level.HIGH, level("Q", "S=0 R=1", latch));
        assertEquals(Level.LOW, level("QN", "S=0 R=1", latch));
        assertEquals(Level.UNKNOWN, level("Q", "S=1 R=1", latch));
    }

    @Test
    void everyUnitOfTheBook_hasACellForEachOutput() {
        for (PartType type : PartBook.standard().types()) {
            Circuit circuit = Circuit.of(alone(type.name()), PartBook.standard());
            long outputs = type.pins().stream().filter(p -> p.role() == PinRole.OUT || p.role() == PinRole.THREE_STATE
                    || p.role() == PinRole.OPEN_COLLECTOR || p.role() == PinRole.BIDIR).count();
            long driven = circuit.cells().stream().map(Cell::out).distinct().count();
            assertTrue(driven >= outputs, type.name() + ": " + driven + " of " + outputs);
        }
    }
}
