// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.probeleaf.recognition.correction.SmallSheet.at;
import static org.probeleaf.recognition.correction.SmallSheet.netlist;
import static org.probeleaf.recognition.correction.SmallSheet.nets;
import static org.probeleaf.recognition.correction.SmallSheet.pin;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.recognition.correction.Outcome.State;
import org.probeleaf.schematic.netlist.Doubt;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;

class NetCorrectionsTest {

    private static Corrected apply(Correction... corrections) {
        return Corrections.apply(netlist(), List.of(corrections));
    }

    private static Netlist done(Correction... corrections) {
        Corrected c = apply(corrections);
        c.outcomes().forEach(o -> assertEquals(State.DONE, o.state(), o.why()));
        return c.netlist();
    }

    private static Correction join(Spot... spots) {
        return new Correction.Join(List.of(spots));
    }

    private static Correction detach(Spot... spots) {
        return new Correction.Detach(List.of(spots));
    }

    @Test
    void apply_nothing_isTheVerySame() {
        Netlist n = netlist();
        assertSame(n, Corrections.apply(n, List.of()).netlist());
    }

    @Test
    void join_twoNets_keepsTheFirstIdAndAName() {
        Netlist n = done(join(at(50, 20), at(20, 50)));
        assertTrue(nets(n).contains("U1.1 U2.1 U3.1 U4.1"), nets(n).toString());
        assertEquals("A", n.net("N2").orElseThrow().name());
        assertTrue(n.net("N1").isEmpty());
        assertEquals(2, n.net("N2").get().wires().size());
    }

    @Test
    void join_lonePins_makesANet() {
        Netlist n = done(join(pin("IC5.1"), pin("R1.2")));
        assertTrue(nets(n).contains("IC5.1 R1.#2"), nets(n).toString());
    }

    @Test
    void join_lonePinAndNet_putsThePinOnIt() {
        assertTrue(nets(done(join(pin("IC5.1"), at("net:T", 20, 120)))).contains("IC5.1 U1.2 U2.2 U3.2"));
    }

    @Test
    void join_oneNet_isSoAlready() {
        Corrected c = apply(join(pin("U1.1"), pin("U2.1")));
        assertEquals(State.ALREADY, c.outcomes().get(0).state());
        assertEquals(netlist().doubts(), c.netlist().doubts());
    }

    @Test
    void join_spotWithoutInk_becomesADoubt() {
        Corrected c = apply(join(pin("U1.1"), at(290, 190)));
        assertEquals(State.NO_PLACE, c.outcomes().get(0).state());
        Doubt doubt = c.netlist().doubts().get(1);
        assertEquals(Corrections.NO_PLACE, doubt.code());
        assertTrue(doubt.text().contains("there is no net at 1@290,190"), doubt.text());
        assertEquals(nets(netlist()), nets(c.netlist()));
    }

    @Test
    void split_straightWire_fallsInTwo() {
        Netlist n = done(new Correction.Split(at(70, 51)));
        assertTrue(nets(n).containsAll(List.of("U1.1", "U2.1")), nets(n).toString());
        assertEquals("A", n.net("N1").orElseThrow().name());
        assertNull(n.net("N1b").orElseThrow().name());
        assertEquals(20, length(n.net("N1b").get()), 1e-9);
    }

    @Test
    void split_atAJoint_allComeApart() {
        assertTrue(nets(done(new Correction.Split(at(50, 120)))).containsAll(List.of("U1.2", "U2.2", "U3.2")));
    }

    @Test
    void split_aLoop_needsTwoCuts() {
        Corrected one = apply(new Correction.Split(at(130, 70)));
        assertEquals(State.WITHOUT_EFFECT, one.outcomes().get(0).state());
        assertTrue(one.netlist().doubts().stream().anyMatch(d -> d.code().equals(Corrections.WITHOUT_EFFECT)));
        Netlist two = done(new Correction.Split(at(130, 70)), new Correction.Split(at(130, 100)));
        assertTrue(nets(two).containsAll(List.of("U1.4", "U2.4")), nets(two).toString());
        assertEquals(1, two.doubts().size());
    }

    @Test
    void split_betweenNames_saysThatNamesJoin() {
        Corrected c = apply(new Correction.Name(at(85, 50), "A"), new Correction.Split(at(130, 10)));
        assertEquals(State.DONE, c.outcomes().get(1).state(), "the far end of VCC has no name of its own");
        Corrected both = apply(join(at(20, 50), at(20, 120)), new Correction.Name(at(80, 120), "A"),
                new Correction.Split(at(30, 120)));
        assertTrue(nets(both.netlist()).toString().contains("U1.1"));
    }

    @Test
    void split_atAPin_takesThePinOff() {
        Netlist n = done(new Correction.Split(pin("U1.1")));
        assertNull(n.part("U1").orElseThrow().pins().get(0).net());
    }

    @Test
    void detach_onePin_isOnNoNet() {
        Netlist n = done(detach(pin("U3.2")));
        assertTrue(nets(n).contains("U1.2 U2.2"));
        assertNull(n.part("U3").orElseThrow().pins().get(1).net());
    }

    @Test
    void detach_twoPins_areANetOfTheirOwn() {
        assertTrue(nets(done(detach(pin("U2.2"), pin("U3.2")))).containsAll(List.of("U1.2", "U2.2 U3.2")));
    }

    @Test
    void detach_aRunOfWire_comesOffWithoutTheNameThatJoinedIt() {
        Netlist n = done(detach(at(130, 40)));
        assertTrue(nets(n).containsAll(List.of("IC5.14 U1.3", "U2.3")), nets(n).toString());
        assertEquals(List.of(), n.net("N4b").orElseThrow().labels());
    }

    @Test
    void detach_allOfANet_isSoAlready() {
        assertEquals(State.ALREADY, apply(detach(at(20, 50))).outcomes().get(0).state());
        assertEquals(State.ALREADY, apply(detach(pin("IC5.1"))).outcomes().get(0).state());
    }

    @Test
    void junction_onACrossing_joinsAndAnswersTheDoubt() {
        Netlist n = done(new Correction.Junction(at(51, 49), true));
        assertTrue(nets(n).contains("U1.1 U2.1 U3.1 U4.1"));
        assertEquals(List.of(), n.doubts());
        assertEquals(0.98, n.net("N1").orElseThrow().confidence());
        assertEquals(1, n.net("N1").get().junctions().size());
    }

    @Test
    void noJunction_atACrossingThatIsNone_answersTheDoubt() {
        Netlist n = done(new Correction.Junction(at(50, 50), false));
        assertEquals(nets(netlist()), nets(n));
        assertEquals(List.of(), n.doubts());
    }

    @Test
    void noJunction_atATee_leavesTheStraightRun() {
        Netlist n = done(new Correction.Junction(at(50, 119), false));
        assertTrue(nets(n).containsAll(List.of("U1.2 U2.2", "U3.2")), nets(n).toString());
        assertEquals(List.of(), n.net("N3").orElseThrow().junctions());
    }

    @Test
    void junction_offAndOn_givesBackTheNets() {
        Corrected c = apply(new Correction.Junction(at(50, 120), false), new Correction.Junction(at(50, 120), true));
        assertEquals(nets(netlist()), nets(c.netlist()));
        Corrected d = apply(new Correction.Junction(at(50, 50), true), new Correction.Junction(at(50, 50), false));
        assertEquals(nets(netlist()), nets(d.netlist()));
    }

    @Test
    void junction_whereNothingMeets_becomesADoubt() {
        assertEquals(State.NO_PLACE, apply(new Correction.Junction(at(80, 50), true)).outcomes().get(0).state());
    }

    @Test
    void name_aNet_bearsIt() {
        Netlist n = done(new Correction.Name(at(50, 30), "CLK"));
        assertEquals("CLK", n.net("N2").orElseThrow().name());
        assertEquals("CLK", n.net("N2").get().labels().get(0).text());
    }

    @Test
    void name_thatAnotherNetBears_joins() {
        Netlist n = done(new Correction.Name(at(50, 30), "T"));
        assertTrue(nets(n).contains("U1.2 U2.2 U3.1 U3.2 U4.1"), nets(n).toString());
        assertEquals("T", n.net("N3").orElseThrow().name());
    }

    @Test
    void name_misread_replacesTheLabel() {
        Netlist n = done(new Correction.Name(at(22, 52), "B"));
        assertEquals(List.of("B"), n.net("N1").orElseThrow().labels().stream().map(l -> l.text()).toList());
    }

    @Test
    void confirm_aDoubt_raisesTheConfidence() {
        Netlist n = done(new Correction.Confirm(at(50, 50)));
        assertEquals(List.of(), n.doubts());
        assertEquals(0.98, n.net("N1").orElseThrow().confidence());
        assertEquals(State.ALREADY, apply(new Correction.Confirm(at(80, 50))).outcomes().get(0).state());
    }

    private static double length(Net net) {
        return net.wires().stream().mapToDouble(w -> w.points().get(0).distance(w.points().get(1))).sum();
    }
}
