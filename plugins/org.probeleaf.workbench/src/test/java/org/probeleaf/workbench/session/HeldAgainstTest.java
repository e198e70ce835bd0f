// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.NetLocator;
import org.probeleaf.trace.follow.SignalNetwork;

/** On the example: /INP leaves IC5.8 and ends at the enables of IC9, a 74LS244 (Schmitt inputs: see the book of levels). */
class HeldAgainstTest {

    private Facts facts;

    @BeforeEach
    void read() throws IOException {
        try (InputStream in = Files.newInputStream(Path.of("../../examples/tern-tl8/tern-tl8.json"))) {
            Netlist netlist = NetlistJson.read(in);
            facts = new Facts(null, SignalNetwork.of(netlist, PartBook.standard()), NetLocator.of(netlist), Map.of(),
                    PartBook.standard());
        }
    }

    private static CaptureMark at(Point spot, String by) {
        return CaptureMark.of(Place.parse("IC5.8"), new Anchor(1, spot), "a.csv", "", 0, "", "", Instant.EPOCH)
                .withJudgedBy(by);
    }

    private static final Point INP = new Point(985, 580);

    @Test
    void of_nothingSaid_isWhatTheNetsInputNeeds_andSaysSo() {
        HeldAgainst by = HeldAgainst.of(facts, at(INP, ""));
        assertEquals(2.0, by.thresholds().high());
        assertEquals(0.8, by.thresholds().low());
        assertTrue(by.why().contains("guessed") && by.why().contains("IC9.1") && by.why().contains("74LS244"), by.why());
    }

    @Test
    void of_whatThePersonSaid_countsBeforeTheGuess() {
        HeldAgainst by = HeldAgainst.of(facts, at(INP, "1.4V"));
        assertEquals(1.4, by.thresholds().high());
        assertEquals("", by.why());
        assertNull(HeldAgainst.of(facts, at(INP, "nothing")).thresholds());
    }

    @Test
    void of_wordsThatMeanNothing_isAProblemInASentence() {
        HeldAgainst by = HeldAgainst.of(facts, at(INP, "cuckoo"));
        assertNull(by.thresholds());
        assertTrue(by.problem().startsWith("There is no family \"cuckoo\"") && by.problem().endsWith("."), by.problem());
    }
}
