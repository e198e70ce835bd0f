// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;

/** A chain of inverters of which the last output is wrong: the next probe is always the middle of what is left. */
class ChainTest {

    private static Netlist chain(int stages) {
        List<String> lines = new ArrayList<>();
        for (int k = 1; k <= stages; k++) {
            lines.add("U" + k + " 74LS04 1=S" + (k - 1) + " 2=S" + k);
        }
        return Boards.of(lines.toArray(String[]::new));
    }

    private static Diagnosis sound(int stages) {
        return Diagnosis.of(chain(stages), PartBook.standard(), Priors.standard());
    }

    private static Observation seen(int net, Seen what) {
        return new Observation(new Place.OfNet("S" + net), what);
    }

    /** Probes until nothing more can be told; the stage whose output is the first bad one is found. */
    private static int hunt(Diagnosis start, int faulty, boolean levels) {
        Diagnosis diagnosis = start;
        int probes = 0;
        double expected = start.finding().next().expectedProbes();
        for (Finding finding = diagnosis.finding();; finding = diagnosis.finding()) {
            if (finding.next() == null) {
                assertEquals("U" + faulty, finding.suspects().get(0).ref());
                assertEquals(probes, Math.round(expected), "expected " + expected);
                return probes;
            }
            int net = Integer.parseInt(finding.next().net().id().substring(1));
            boolean bad = net >= faulty;
            boolean due = net % 2 == 0;
            Seen what = levels ? due != bad ? Seen.HIGH : Seen.LOW : bad ? Seen.BAD : Seen.GOOD;
            diagnosis = diagnosis.with(List.of(seen(net, what)));
            probes++;
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void hunt_64Stages_takes6ProbesWhereverTheFaultIs(boolean levels) {
        Diagnosis diagnosis = sound(64);
        if (levels) {
            diagnosis = diagnosis.given(List.of(new Given(new Place.OfNet("S0"), true))).with(List.of(seen(64, Seen.LOW)));
        } else {
            diagnosis = diagnosis.with(List.of(seen(0, Seen.GOOD), seen(64, Seen.BAD)));
        }
        assertEquals("S32", diagnosis.finding().next().net().id());
        for (int faulty = 1; faulty <= 64; faulty++) {
            assertEquals(6, hunt(diagnosis, faulty, levels), "stage " + faulty);
        }
    }

    /** 8 equal stages take 3 probes (US Army subcourse IT0338, 1996: bracket, test the middle). */
    @Test
    void hunt_8Stages_takes3Probes() {
        Diagnosis diagnosis = sound(8).with(List.of(seen(0, Seen.GOOD), seen(8, Seen.BAD)));
        for (int faulty = 1; faulty <= 8; faulty++) {
            assertEquals(3, hunt(diagnosis, faulty, false));
        }
    }
}
