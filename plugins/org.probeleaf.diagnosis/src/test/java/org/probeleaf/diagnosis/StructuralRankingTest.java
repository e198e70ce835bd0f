// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;

import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;

class StructuralRankingTest {

    private static final Path EXAMPLE = Path.of("../../examples/tern-tl8/tern-tl8.json");

    private static Finding find(Netlist board, String... seen) {
        return Diagnosis.of(board, PartBook.standard(), Priors.standard())
                .with(List.of(seen).stream().map(Observation::parse).toList()).finding();
    }

    static Netlist example() throws Exception {
        try (var in = Files.newInputStream(EXAMPLE)) {
            return NetlistJson.read(in);
        }
    }

    @Test
    void finding_nothingBad_saysSo() throws Exception {
        Finding finding = find(example(), "net:/RD=good");
        assertEquals(List.of(), finding.suspects());
        assertNull(finding.next());
        assertTrue(finding.notes().get(0).contains("bad"), finding.notes().toString());
    }

    @Test
    void finding_strobeBadAndItsInputsGood_blamesTheGate() throws Exception {
        Finding finding = find(example(), "net:/INP=bad", "IC5.9=good", "IC5.10=good");
        assertEquals("IC5", finding.suspects().get(0).ref(), finding.toString());
        assertEquals("8", finding.suspects().get(0).pin());
        assertEquals(1, finding.suspects().stream().mapToDouble(Suspect::weight).sum(), 1e-9);
    }

    @Test
    void finding_inputOfBadGateUnseen_asksForIt() throws Exception {
        Finding finding = find(example(), "net:/INP=bad");
        assertTrue(List.of("/RD", "/IO0").contains(finding.next().net().title()), finding.next().toString());
    }
}
