// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.follow.Followed.Node;
import org.probeleaf.trace.follow.SignalNetwork;
import org.probeleaf.workbench.session.Following.Reach;

/** Routes over the example, whose netlist its generator wrote: the read strobe, IC1.21, and its gate, IC5.9 to IC5.8. */
class RouteTest {

    private final Deque<Runnable> worker = new ArrayDeque<>();
    private Netlist netlist;
    private Facts facts;
    private int told;
    private final RouteFinder finder = new RouteFinder(worker::add, Runnable::run, () -> facts, () -> told++);

    @BeforeEach
    void read() throws IOException {
        try (InputStream in = Files.newInputStream(Path.of("../../examples/tern-tl8/tern-tl8.json"))) {
            netlist = NetlistJson.read(in);
        }
        facts = new Facts(null, SignalNetwork.of(netlist, PartBook.standard()), null, Map.of(), PartBook.standard());
    }

    private Selection strobe() {
        Part part = netlist.part("IC1").orElseThrow();
        Pin pin = part.pins().stream().filter(p -> "21".equals(p.number())).findFirst().orElseThrow();
        Net net = netlist.net(pin.net()).orElseThrow();
        return Selection.pin(part, pin, net);
    }

    private void work() {
        while (!worker.isEmpty()) {
            worker.poll().run();
        }
    }

    private Route route() {
        work();
        return finder.route().orElseThrow();
    }

    @Test
    void begin_onANet_showsTheNetAlone() {
        finder.begin(strobe());
        assertTrue(finder.route().isEmpty());
        Route route = route();
        assertEquals(1, route.nodes().size());
        assertEquals("/RD", route.root().net().name());
        assertNull(route.arrival(route.root()));
        assertEquals(1, told);
    }

    @Test
    void follow_gatesToo_reachesTheNetBehindTheGate() {
        finder.begin(strobe());
        finder.follow(Following.NET.with(Reach.GATES));
        Route route = route();
        Node behind = route.nodes().stream().filter(n -> "/INP".equals(n.net().name())).findFirst().orElseThrow();
        assertEquals("IC5.8", route.arrival(behind).place().text());
        assertEquals("IC5.9", route.departure(behind).place().text());
        for (int i = 0; i < route.nodes().size(); i++) {
            assertEquals(i, route.number(route.nodes().get(i)));
        }
    }

    @Test
    void follow_back_comesToTheGateFromItsInputs() {
        Part gate = netlist.part("IC5").orElseThrow();
        Pin out = gate.pins().stream().filter(p -> "8".equals(p.number())).findFirst().orElseThrow();
        finder.begin(Selection.pin(gate, out, netlist.net(out.net()).orElseThrow()));
        finder.follow(new Following(Reach.GATES, true));
        Route route = route();
        Node before = route.nodes().stream().filter(n -> "/RD".equals(n.net().name())).findFirst().orElseThrow();
        assertTrue(route.back());
        assertEquals("IC5.9", route.arrival(before).place().text());
        assertEquals("IC5.8", route.departure(before).place().text());
    }

    @Test
    void begin_twiceBeforeTheFirstIsFound_showsTheSecondOnly() {
        finder.begin(strobe());
        finder.begin(null);
        work();
        assertTrue(finder.route().isEmpty());
        assertEquals(0, told);
    }

    @Test
    void standAt_staysOnTheRoute_untilSomethingElseIsSelected() {
        finder.begin(strobe());
        finder.follow(Following.NET.with(Reach.GATES));
        Route route = route();
        finder.standAt(1);
        assertEquals(1, finder.at());
        assertEquals(route, finder.route().orElseThrow());
        finder.begin(strobe());
        work();
        assertEquals(0, finder.at());
        assertFalse(route.equals(finder.route().orElseThrow()));
    }

    @Test
    void wider_goesRound() {
        Following f = Following.NET;
        assertEquals(Reach.SERIES, f.wider().reach());
        assertEquals(Reach.GATES, f.wider().wider().reach());
        assertEquals(f, f.wider().wider().wider());
    }
}
