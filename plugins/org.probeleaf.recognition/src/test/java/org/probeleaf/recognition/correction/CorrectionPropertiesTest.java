// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.correction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.probeleaf.recognition.correction.SmallSheet.netlist;
import static org.probeleaf.recognition.correction.SmallSheet.nets;
import static org.probeleaf.recognition.correction.SmallSheet.renamed;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.probeleaf.recognition.correction.Outcome.State;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;

class CorrectionPropertiesTest {

    /** Spots on and off the ink, and pins by name. */
    private static Arbitrary<Spot> spots() {
        Arbitrary<Spot> anywhere = Combinators.combine(Arbitraries.integers().between(0, 28),
                Arbitraries.integers().between(0, 18)).as((x, y) -> SmallSheet.at(10 * x, 10 * y));
        Arbitrary<Spot> pins = Arbitraries.of("U1.1", "U1.2", "U1.3", "U2.1", "U2.2", "U2.4", "U3.1", "U3.2", "U4.1",
                "IC5.1", "IC5.4", "IC5.14", "R1.1").map(SmallSheet::pin);
        return Arbitraries.oneOf(anywhere, pins);
    }

    private static Arbitrary<Box> boxes() {
        return Combinators.combine(spots(), spots()).as((a, b) -> Box.of(a.at().x(), a.at().y(), b.at().x(), b.at().y()));
    }

    @Provide
    Arbitrary<List<Correction>> sequences() {
        Arbitrary<String> refs = Arbitraries.of("U1", "U4", "IC5", "R1", "X9");
        Arbitrary<String> letters = Arbitraries.of("1", "2", "A", "VCC", "T").injectNull(0.2);
        Arbitrary<Correction> nets = Arbitraries.oneOf(
                spots().list().ofMinSize(2).ofMaxSize(3).map(Correction.Join::new),
                spots().map(Correction.Split::new),
                spots().list().ofMinSize(1).ofMaxSize(3).map(Correction.Detach::new),
                Combinators.combine(spots(), Arbitraries.of(true, false)).as(Correction.Junction::new),
                Combinators.combine(spots(), Arbitraries.of("A", "T", "VCC", "NEW")).as(Correction.Name::new),
                spots().map(Correction.Confirm::new));
        Arbitrary<Correction> parts = Arbitraries.oneOf(
                Combinators.combine(spots(), refs, letters, letters).as(Correction.AddPin::new),
                Combinators.combine(spots(), spots()).as(Correction.MovePin::new),
                Combinators.combine(spots(), Arbitraries.of("", "7"), letters).as(Correction.EditPin::new),
                spots().map(Correction.RemovePin::new),
                Combinators.combine(boxes(), refs, letters, letters).as((b, r, v, u) ->
                        new Correction.AddPart(1, b, r, v, u)),
                Combinators.combine(spots(), refs, letters).as(Correction.EditPart::new),
                spots().map(Correction.RemovePart::new),
                Combinators.combine(spots(), refs, letters).as(Correction.AssignUnit::new),
                boxes().map(b -> new Correction.Ignore(1, b)));
        return Arbitraries.oneOf(nets, nets, parts).list().ofMaxSize(9);
    }

    @Property(tries = 1500)
    void apply_anySequence_givesASoundNetlist(@ForAll("sequences") List<Correction> corrections) throws IOException {
        Corrected c = Corrections.apply(netlist(), corrections);
        assertEquals(corrections.size(), c.outcomes().size());
        Set<String> ids = new HashSet<>();
        for (Net net : c.netlist().nets()) {
            assertTrue(ids.add(net.id()), "twice: " + net.id());
            assertTrue(net.confidence() >= 0 && net.confidence() <= 1);
        }
        Set<String> refs = new HashSet<>();
        for (Part part : c.netlist().parts()) {
            assertTrue(refs.add(part.ref()), "twice: " + part.ref());
            assertFalse(part.units().isEmpty());
            for (Pin pin : part.pins()) {
                assertTrue(pin.net() == null || ids.contains(pin.net()), part.ref() + " on " + pin.net());
            }
        }
        long unsaid = c.outcomes().stream().filter(o -> !o.holds()).count();
        assertEquals(unsaid, c.netlist().doubts().stream().filter(d -> d.code().startsWith("correction-")).count());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        NetlistJson.write(c.netlist(), out);
        assertEquals(c.netlist(), NetlistJson.read(new ByteArrayInputStream(out.toByteArray())));
    }

    @Property(tries = 700)
    void apply_otherIdsAndOrder_givesTheSameNets(@ForAll("sequences") List<Correction> corrections) {
        Netlist again = renamed(netlist(), id -> "Z" + (100 - Integer.parseInt(id.substring(1))));
        assertEquals(nets(Corrections.apply(netlist(), corrections).netlist()),
                nets(Corrections.apply(again, corrections).netlist()));
    }

    /** Wires of two nets end at one spot in the new part: found by the property above. */
    @Example
    void apply_partOverEndsThatMeet_pinsInTheSameOrder() {
        apply_otherIdsAndOrder_givesTheSameNets(List.of(new Correction.Ignore(1, Box.of(10, 10, 50, 50)),
                new Correction.AddPart(1, Box.of(0, 0, 90, 50), "U1", null, "1")));
    }

    @Property(tries = 300)
    void apply_toItsOwnResult_changesNoNet(@ForAll("sequences") List<Correction> corrections) {
        assertEquals(Corrections.apply(netlist(), corrections).netlist(),
                Corrections.apply(netlist(), corrections).netlist());
    }

    @Property(tries = 300)
    void join_afterASplit_givesBackTheNets(@ForAll("onWires") Spot cut, @ForAll("pinNames") String one,
            @ForAll("pinNames") String other) {
        Netlist start = netlist();
        Correction split = new Correction.Split(cut);
        Correction join = new Correction.Join(List.of(SmallSheet.pin(one), SmallSheet.pin(other)));
        boolean oneNet = Corrections.apply(start, List.of(join)).outcomes().get(0).state() == State.ALREADY;
        Netlist cutNet = Corrections.apply(start, List.of(split)).netlist();
        boolean apart = Corrections.apply(cutNet, List.of(join)).outcomes().get(0).state() == State.DONE;
        if (oneNet && apart && nets(cutNet).size() == nets(start).size() + 1) {
            assertEquals(nets(start), nets(Corrections.apply(start, List.of(split, join)).netlist()));
        }
    }

    @Property(tries = 300)
    void detach_afterAJoin_givesBackTheNets(@ForAll("wires") Spot a, @ForAll("wires") Spot b) {
        Correction join = new Correction.Join(List.of(a, b));
        if (Corrections.apply(netlist(), List.of(join)).outcomes().get(0).state() == State.DONE) {
            assertEquals(nets(netlist()), nets(Corrections.apply(netlist(),
                    List.of(join, new Correction.Detach(List.of(b)))).netlist()));
        }
    }

    @Provide
    Arbitrary<Spot> onWires() {
        return Arbitraries.of(SmallSheet.at(30, 50), SmallSheet.at(70, 50), SmallSheet.at(50, 30),
                SmallSheet.at(50, 135), SmallSheet.at(30, 120), SmallSheet.at(70, 120), SmallSheet.at(50, 70));
    }

    @Provide
    Arbitrary<String> pinNames() {
        return Arbitraries.of("U1.1", "U2.1", "U3.1", "U4.1", "U1.2", "U2.2", "U3.2");
    }

    /** Spots on nets of a single run, away from pins. */
    @Provide
    Arbitrary<Spot> wires() {
        return Arbitraries.of(SmallSheet.at(30, 50), SmallSheet.at(50, 30), SmallSheet.at(70, 120),
                SmallSheet.at(130, 70), SmallSheet.at(110, 85), SmallSheet.at(50, 140));
    }
}
