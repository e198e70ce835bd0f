// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.probes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.probeleaf.benchmark.probes.GateNetwork.Stuck;
import org.probeleaf.diagnosis.Diagnosis;
import org.probeleaf.diagnosis.Finding;
import org.probeleaf.diagnosis.Given;
import org.probeleaf.diagnosis.Observation;
import org.probeleaf.diagnosis.Seen;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;

class ProbesTest {

    private static Diagnosis diagnosis(GateNetwork network) {
        return Diagnosis.of(network.board(), PartBook.standard(), Priors.standard());
    }

    @Test
    void made_sameSeed_givesTheSameNetwork() {
        assertEquals(GateNetwork.made(6, 40, 7).board(), GateNetwork.made(6, 40, 7).board());
        assertFalse(GateNetwork.made(6, 40, 7).board().equals(GateNetwork.made(6, 40, 8).board()));
    }

    /** What the product works out for a sound network, and what the network itself says, are two programs. */
    @Test
    void finding_soundNetworks_blamesNobody() {
        Random random = new Random(3);
        for (int i = 0; i < 20; i++) {
            GateNetwork network = GateNetwork.made(8, 40, i);
            boolean[] given = levels(network.inputs(), random);
            Finding finding = all(network, diagnosis(network), given, network.levels(given, null)).finding();
            assertEquals(List.of(), finding.suspects(), "network " + i);
            assertEquals(List.of(), finding.diagnoses());
        }
    }

    @Test
    void hunt_smallNetworks_findsEachFaultWithFewProbes() {
        Random random = new Random(11);
        double probes = 0;
        double bound = 0;
        double backward = 0;
        int hunts = 0;
        for (int i = 0; i < 40; i++) {
            GateNetwork network = GateNetwork.made(10, 30, i);
            Hunt hunt = Hunt.of(network, diagnosis(network), random);
            if (hunt == null) {
                // No inputs show that fault.
                continue;
            }
            hunts++;
            assertTrue(hunt.found() && hunt.settled(), hunt.toString());
            probes += hunt.probes();
            bound += Math.log(hunt.classes()) / Math.log(2);
            backward += hunt.backward();
        }
        assertTrue(hunts >= 25, hunts + " hunts");
        assertTrue(probes <= 1.25 * bound, probes + " probes, bound " + bound);
        assertTrue(probes <= 0.6 * backward, probes + " probes, backward " + backward);
    }

    /**
     * Networks of the size of ISCAS-85 c432 (36 inputs, 160 gates, 18 of them EXOR) and c499 (41 inputs, 202 gates, 104
     * of them EXOR), sizes as D. Bryan's description of the ISCAS-85 circuits (MCNC 1988) has them; made here, since the
     * circuits themselves are not at hand.
     */
    @ParameterizedTest
    @CsvSource({"c432, 36, 160, 18", "c499, 41, 202, 104"})
    void finding_networksOfPublishedSize_haveTheTrueGateAmongTheDiagnoses(String name, int inputs, int gates, int exors) {
        GateNetwork network = GateNetwork.made(inputs, gates, exors, 85);
        assertEquals(gates, network.gates().size());
        assertEquals(exors, network.gates().stream().filter(g -> g.kind() == GateKind.XOR2).count());
        Diagnosis sound = diagnosis(network);
        Random random = new Random(name.hashCode());
        List<Stuck> faults = network.faults();
        int asked = 0;
        while (asked < 40) {
            Stuck fault = faults.get(random.nextInt(faults.size()));
            boolean[] given = levels(inputs, random);
            boolean[] is = network.levels(given, fault);
            boolean[] due = network.levels(given, null);
            if (network.outputs().stream().anyMatch(o -> is[o] != due[o])) {
                Diagnosis diagnosis = outputs(network, sound, given, is);
                // A generous bound: an answer takes some tens of milliseconds on a machine with nothing else to do.
                Finding finding = Assertions.assertTimeout(Duration.ofSeconds(10), diagnosis::finding);
                String gate = GateNetwork.ref(fault.gate());
                assertTrue(finding.diagnoses().contains(List.of(gate)), name + " " + fault);
                assertTrue(finding.suspects().stream().anyMatch(s -> s.ref().equals(gate)), name + " " + fault);
                asked++;
            }
        }
    }

    private static boolean[] levels(int count, Random random) {
        boolean[] levels = new boolean[count];
        for (int i = 0; i < count; i++) {
            levels[i] = random.nextBoolean();
        }
        return levels;
    }

    private static Diagnosis outputs(GateNetwork network, Diagnosis sound, boolean[] given, boolean[] is) {
        return seen(network, sound, given, is, network.outputs());
    }

    private static Diagnosis all(GateNetwork network, Diagnosis sound, boolean[] given, boolean[] is) {
        List<Integer> signals = new ArrayList<>();
        for (int s = network.inputs(); s < network.signals(); s++) {
            signals.add(s);
        }
        return seen(network, sound, given, is, signals);
    }

    private static Diagnosis seen(GateNetwork network, Diagnosis sound, boolean[] given, boolean[] is,
            List<Integer> signals) {
        List<Given> held = new ArrayList<>();
        for (int i = 0; i < given.length; i++) {
            held.add(new Given(new Place.OfNet(network.net(i)), given[i]));
        }
        Observation[] seen = signals.stream().map(s -> new Observation(new Place.OfNet(network.net(s)),
                is[s] ? Seen.HIGH : Seen.LOW)).toArray(Observation[]::new);
        return sound.given(held).with(Arrays.asList(seen));
    }
}
