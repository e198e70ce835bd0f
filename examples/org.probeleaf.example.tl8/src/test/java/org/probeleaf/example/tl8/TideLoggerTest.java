// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

class TideLoggerTest {
    private static final Path COMMITTED = Path.of("..", "tern-tl8");

    @Test
    void pdf_drawnAgain_givesTheCommittedBytes() throws IOException {
        assertArrayEquals(Files.readAllBytes(COMMITTED.resolve(TideLogger.PDF)), new TideLogger().pdf(),
                "the committed sheet is not what the generator draws; see DEVELOPERS.md on how to draw it anew");
    }

    @Test
    void json_writtenAgain_givesTheCommittedBytes() throws IOException {
        assertArrayEquals(Files.readAllBytes(COMMITTED.resolve(TideLogger.JSON)), new TideLogger().json());
    }

    @Test
    void faults_ofTheDrawing_none() {
        assertEquals(List.of(), new TideLogger().faults());
    }

    @Test
    void netlist_readStrobe_reachesEveryLoadOnBothPages() throws IOException {
        Netlist netlist = new TideLogger().netlist();
        Net strobe = named(netlist, "/RD");
        assertEquals(List.of(1, 2), strobe.pages());
        assertEquals(Set.of("IC1.21", "IC2.22", "IC3.22", "IC5.9", "IC8.1", "IC13.1", "TP2.?"), pins(netlist, strobe));
    }

    @Test
    void netlist_dataLine_joinsBothPagesThroughTheBusByName() throws IOException {
        Netlist netlist = new TideLogger().netlist();
        assertEquals(Set.of("IC1.14", "IC2.11", "IC3.11", "IC8.2"), pins(netlist, named(netlist, "D0")));
        assertEquals(Set.of("IC8.18", "IC9.18", "IC10.3", "IC11.2"), pins(netlist, named(netlist, "BD0")));
    }

    @Test
    void netlist_mixer_isDrawnFromTwoResistorsAndATransistor() throws IOException {
        Netlist netlist = new TideLogger().netlist();
        Pin base = netlist.part("Q1").orElseThrow().pins().stream().filter(p -> "B".equals(p.number())).findFirst()
                .orElseThrow();
        assertEquals(Set.of("Q1.B", "R22.?", "R23.?", "R24.?", "R28.?"), pins(netlist, netlist.net(base.net()).orElseThrow()));
    }

    @Test
    void netlist_everyNet_hasTwoPinsOrMore() throws IOException {
        Netlist netlist = new TideLogger().netlist();
        for (Net net : netlist.nets()) {
            long count = netlist.parts().stream().flatMap(p -> p.pins().stream())
                    .filter(p -> net.id().equals(p.net())).count();
            assertTrue(count >= 2, net.title() + " has " + count + " pins");
        }
    }

    private static Net named(Netlist netlist, String name) {
        return netlist.nets().stream().filter(n -> name.equals(n.name())).findFirst().orElseThrow();
    }

    private static Set<String> pins(Netlist netlist, Net net) {
        Set<String> result = new TreeSet<>();
        for (Part part : netlist.parts()) {
            for (Pin pin : part.pins()) {
                if (net.id().equals(pin.net())) {
                    result.add(part.ref() + "." + (pin.number() == null ? "?" : pin.number()));
                }
            }
        }
        return result;
    }
}
