// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.example.tl8.symbol.Passives;

class ConnectionsTest {
    private final Page page = new Page(1, 100, 100);

    @Test
    void junctions_wiresThatCross_none() {
        page.wire(10, 20).right(20).done();
        page.wire(20, 10).down(20).done();
        assertEquals(List.of(), Connections.junctions(page));
    }

    @Test
    void junctions_endOnAWire_oneThere() {
        page.wire(10, 20).right(20).done();
        page.wire(20, 20).down(20).done();
        assertEquals(List.of(new Spot(20, 20)), Connections.junctions(page));
    }

    @Test
    void junctions_twoEndsThatMeet_none() {
        page.wire(10, 20).right(20).done();
        page.wire(30, 20).down(20).done();
        assertEquals(List.of(), Connections.junctions(page));
    }

    @Test
    void clusters_partsWhoseWiresCross_stayApart() {
        resistors();
        page.wire(20, 10).right(20).done();
        page.wire(30, 5).down(35).toX(20).done();
        assertEquals(4, Connections.of(List.of(page)).size());
    }

    @Test
    void clusters_partsWhoseWireForks_areJoined() {
        resistors();
        page.wire(20, 10).right(10).done();
        page.wire(25, 10).toY(40).toX(20).done();
        assertEquals(3, Connections.of(List.of(page)).size());
    }

    @Test
    void clusters_sameNameOnTwoPages_areJoined() {
        Page other = new Page(2, 100, 100);
        page.part("R1", "1k", Passives.resistor(), 10, 10);
        other.part("R2", "1k", Passives.resistor(), 10, 10);
        page.power("+5V", new Spot(10, 10));
        other.offSheet("+5V", new Spot(20, 10), true, true);
        assertEquals(3, Connections.of(List.of(page, other)).size());
    }

    @Test
    void clusters_wiresThatEndOnABus_stayApart() {
        resistors();
        page.bus(30, 5).down(40).done();
        page.wire(20, 10).toX(30).done();
        page.wire(20, 40).toX(30).done();
        assertEquals(4, Connections.of(List.of(page)).size());
    }

    private void resistors() {
        page.part("R1", "1k", Passives.resistor(), 10, 10);
        page.part("R2", "1k", Passives.resistor(), 10, 40);
    }
}
