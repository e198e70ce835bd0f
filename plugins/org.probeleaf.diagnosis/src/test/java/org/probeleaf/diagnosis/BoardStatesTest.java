// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;

import org.probeleaf.diagnosis.fault.FaultKind;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.board.BoardState;

/** Driver or load: a pin is lifted, and both sides are measured again. */
class BoardStatesTest {

    /** An OR gate drives a net that two other chips listen to. */
    private static final Netlist DRAWN = Boards.of("IC1 74LS32 1=A 2=B 3=N1", "IC2 74LS04 1=N1 2=C", "IC3 74LS04 1=N1 2=D",
            "J1 - 1=A 2=B");
    private static final Netlist LIFTED = BoardState.of(DRAWN, List.of(new BoardChange.Lift(new Place.OfPin("IC1", "3"))))
            .netlist();

    private static Diagnosis on(Netlist board, String... seen) {
        return Diagnosis.of(board, PartBook.standard(), Priors.standard())
                .with(Arrays.stream(seen).map(Observation::parse).toList());
    }

    private static double weight(Finding finding, String ref) {
        return finding.suspects().stream().filter(s -> s.ref().equals(ref)).mapToDouble(Suspect::weight).sum();
    }

    private static Diagnosis before() {
        return on(DRAWN, "IC1.3=bad", "net:A=good", "net:B=good");
    }

    @Test
    void before_driverIsLikelierThanLoads() {
        Finding finding = before().finding();
        assertEquals("IC1", finding.suspects().get(0).ref());
        assertTrue(weight(finding, "IC2") > 0.01 && weight(finding, "IC3") > 0.01, finding.toString());
        assertTrue(finding.suspects().get(1).faults().stream().anyMatch(f -> f.kind() == FaultKind.LOADS_LOW));
    }

    @Test
    void lifted_pinAloneStillBad_blamesTheDriver() {
        Finding finding = on(LIFTED, "IC1.3=bad").after(before()).finding();
        assertEquals("IC1", finding.suspects().get(0).ref());
        assertTrue(weight(finding, "IC1") > 0.99, finding.toString());
        assertEquals(List.of(List.of("IC1")), finding.diagnoses());
    }

    @Test
    void lifted_pinAloneGood_blamesTheLoads() {
        Finding finding = on(LIFTED, "IC1.3=good").after(before()).finding();
        assertTrue(weight(finding, "IC1") < 0.15, finding.toString());
        assertTrue(weight(finding, "IC2") > 0.4 && weight(finding, "IC3") > 0.4, finding.toString());
        assertTrue(finding.suspects().get(0).why().startsWith("as the board was: "), finding.suspects().get(0).why());
    }

    @Test
    void liftedLoad_isNoSuspectForItsNet() {
        Netlist board = BoardState.of(DRAWN, List.of(new BoardChange.Lift(new Place.OfPin("IC2", "1")))).netlist();
        Finding finding = on(board, "IC1.3=bad", "net:A=good", "net:B=good").finding();
        assertEquals(0, weight(finding, "IC2"), finding.toString());
        assertTrue(weight(finding, "IC3") > 0.01);
    }

    @Test
    void removedLoad_netRecovers_wasTheLoad() {
        Netlist board = BoardState.of(DRAWN, List.of(new BoardChange.Remove("IC3"))).netlist();
        Finding finding = on(board, "IC1.3=good").after(before()).finding();
        assertEquals("IC3", finding.suspects().get(0).ref(), finding.toString());
        assertTrue(weight(finding, "IC3") > 0.8, finding.toString());
    }

    @Test
    void pinsOfOneNetReadDifferently_theWayBetweenIsBroken() {
        Finding finding = on(DRAWN, "IC1.3=good", "IC2.1=bad").finding();
        assertEquals("IC2", finding.suspects().get(0).ref(), finding.toString());
        assertEquals("1", finding.suspects().get(0).pin());
        assertEquals(FaultKind.OPEN, finding.suspects().get(0).kind());
        assertTrue(weight(finding, "IC2") > 0.99, finding.toString());
    }

    @Test
    void stuckLevels_lifted_tellDriverFromLoad() {
        Diagnosis before = on(DRAWN, "IC1.3=0", "net:A=1", "net:B=0");
        assertEquals("IC1", before.finding().suspects().get(0).ref());
        Finding load = on(LIFTED, "IC1.3=1", "net:A=1", "net:B=0").after(before).finding();
        assertTrue(weight(load, "IC1") < 0.15, load.toString());
        Finding driver = on(LIFTED, "IC1.3=0", "net:A=1", "net:B=0").after(before).finding();
        assertTrue(weight(driver, "IC1") > 0.99, driver.toString());
    }
}
