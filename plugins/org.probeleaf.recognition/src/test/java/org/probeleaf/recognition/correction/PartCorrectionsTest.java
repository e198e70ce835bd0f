// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.probeleaf.recognition.correction.SmallSheet.at;
import static org.probeleaf.recognition.correction.SmallSheet.netlist;
import static org.probeleaf.recognition.correction.SmallSheet.nets;
import static org.probeleaf.recognition.correction.SmallSheet.pin;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.recognition.correction.Outcome.State;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

class PartCorrectionsTest {

    private static Outcome outcome(Correction... corrections) {
        List<Outcome> all = Corrections.apply(netlist(), List.of(corrections)).outcomes();
        return all.get(all.size() - 1);
    }

    private static Netlist done(Correction... corrections) {
        assertEquals(State.DONE, outcome(corrections).state(), outcome(corrections).why());
        return Corrections.apply(netlist(), List.of(corrections)).netlist();
    }

    @Test
    void addPin_onAWire_isOnItsNet() {
        Netlist n = done(new Correction.AddPin(at(70, 51), "U4", "2", "EN"));
        assertTrue(nets(n).contains("U1.1 U2.1 U4.2"), nets(n).toString());
        Pin pin = n.part("U4").orElseThrow().pins().get(1);
        assertEquals(new Point(70, 50), pin.at());
        assertEquals("EN", pin.name());
    }

    @Test
    void addPin_onBarePaper_isOnNoNet() {
        assertNull(done(new Correction.AddPin(at(280, 180), "U4", "2", null)).part("U4").get().pins().get(1).net());
    }

    @Test
    void addPin_thatIsThere_isSoAlready() {
        assertEquals(State.ALREADY, outcome(new Correction.AddPin(at(50, 90), "U4", "1", null)).state());
        Outcome elsewhere = outcome(new Correction.AddPin(at(70, 50), "U4", "1", null));
        assertEquals(State.NO_PLACE, elsewhere.state());
        assertTrue(elsewhere.why().contains("1@50,90"), elsewhere.why());
        assertEquals(State.NO_PLACE, outcome(new Correction.AddPin(at(70, 50), "U9", "1", null)).state());
    }

    @Test
    void addPin_thatWasImplied_takesItsPlace() {
        Netlist n = done(new Correction.AddPin(at(130, 40), "IC5", "14", null));
        assertEquals(1, n.part("IC5").orElseThrow().pins().stream().filter(p -> "14".equals(p.number())).count());
        assertEquals("N4", n.part("IC5").get().pins().get(3).net());
    }

    @Test
    void movePin_toAnotherWire_changesNet() {
        Netlist n = done(new Correction.MovePin(pin("U4.1"), at(88, 121)));
        assertTrue(nets(n).containsAll(List.of("U1.2 U2.2 U3.2 U4.1", "U3.1")), nets(n).toString());
        assertEquals(State.ALREADY, outcome(new Correction.MovePin(pin("U4.1"), at(50, 90))).state());
    }

    @Test
    void editPin_lettersIt() {
        Pin pin = done(new Correction.EditPin(pin("U4.1"), "9", "Q")).part("U4").orElseThrow().pins().get(0);
        assertEquals("9", pin.number());
        assertEquals("Q", pin.name());
        assertNull(done(new Correction.EditPin(pin("U4.1"), "", null)).part("U4").get().pins().get(0).number());
    }

    @Test
    void removePin_goes_andWhatIsGoneIsSoAlready() {
        assertTrue(nets(done(new Correction.RemovePin(pin("U4.1")))).contains("U3.1"));
        assertEquals(State.ALREADY, outcome(new Correction.RemovePin(at("U4.7", 280, 180))).state());
        assertEquals(3, done(new Correction.RemovePin(pin("IC5.14"))).part("IC5").orElseThrow().pins().size());
    }

    @Test
    void addPart_takesTheLooseEndsOfWires() {
        Netlist n = done(new Correction.RemovePart(at(95, 80)), new Correction.AddPart(1, new Box(92, 45, 110, 125),
                "U7", "LM358", null));
        assertTrue(nets(n).containsAll(List.of("U1.1 U7.#1", "U1.2 U3.2 U7.#2")), nets(n).toString());
        assertEquals("LM358", n.part("U7").orElseThrow().value());
        assertEquals(State.ALREADY, outcome(new Correction.AddPart(1, new Box(0, 70, 9, 90), "U1", null, null)).state());
        assertEquals(State.NO_PLACE,
                outcome(new Correction.AddPart(1, new Box(250, 150, 260, 160), "U1", null, null)).state());
    }

    @Test
    void editPart_lettersIt() {
        Netlist n = done(new Correction.EditPart(at(240, 40), "R2", "10k"));
        assertEquals("10k", n.part("R2").orElseThrow().value());
        assertTrue(n.part("R1").isEmpty());
    }

    @Test
    void editPart_asAnother_makesThemOne() {
        Netlist n = done(new Correction.EditPart(at("U4", 50, 95), "U3", null));
        assertEquals(2, n.part("U3").orElseThrow().units().size());
        assertEquals(3, n.part("U3").get().pins().size());
        assertEquals(State.NO_PLACE, outcome(new Correction.EditPart(at(280, 180), "U9", null)).state());
    }

    @Test
    void removePart_leavesTheWires() {
        Netlist n = done(new Correction.RemovePart(at(5, 80)));
        assertTrue(n.part("U1").isEmpty());
        assertEquals(netlist().nets().size(), n.nets().size());
        assertEquals(State.ALREADY, outcome(new Correction.RemovePart(at("U1", 280, 180))).state());
    }

    @Test
    void assignUnit_toAnotherPart_takesItsPins() {
        Netlist n = done(new Correction.AssignUnit(at(210, 60), "IC6", "A"));
        Part off = n.part("IC6").orElseThrow();
        assertEquals(List.of("4"), off.pins().stream().map(Pin::number).toList());
        assertEquals("A", off.pins().get(0).unit());
        assertEquals(List.of("1", "2", "14"), n.part("IC5").orElseThrow().pins().stream().map(Pin::number).toList());
    }

    @Test
    void assignUnit_byOneOfItsPins_isThePieceOfThePin() {
        Netlist n = done(new Correction.AssignUnit(pin("IC5.4"), "IC6", "A"));
        assertEquals(List.of("4"), n.part("IC6").orElseThrow().pins().stream().map(Pin::number).toList());
    }

    @Test
    void assignUnit_there_merges() {
        Netlist n = done(new Correction.AssignUnit(at(240, 40), "IC5", "C"));
        assertTrue(n.part("R1").isEmpty());
        assertEquals(3, n.part("IC5").orElseThrow().units().size());
        assertEquals(6, n.part("IC5").get().pins().size());
    }

    @Test
    void ignore_acrossAWire_cutsItThere() {
        Netlist n = done(new Correction.Ignore(1, new Box(45, 45, 55, 55)));
        assertTrue(nets(n).containsAll(List.of("U1.1", "U2.1", "U3.1", "U4.1")), nets(n).toString());
        assertEquals(List.of(), n.doubts());
    }

    @Test
    void ignore_aPart_goesWithItsPins() {
        Netlist n = done(new Correction.Ignore(1, new Box(195, 5, 230, 75)));
        assertTrue(n.part("IC5").isEmpty());
        assertEquals(State.ALREADY, outcome(new Correction.Ignore(1, new Box(250, 150, 260, 160))).state());
    }

    @Test
    void ignore_theNameThatJoins_letsTheNetFallApart() {
        Netlist n = done(new Correction.Ignore(1, new Box(105, 35, 115, 45)));
        assertTrue(nets(n).containsAll(List.of("IC5.14 U1.3", "U2.3")), nets(n).toString());
    }
}
