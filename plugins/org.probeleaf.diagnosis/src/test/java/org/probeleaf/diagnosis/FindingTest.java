// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import org.probeleaf.diagnosis.fault.FaultKind;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.UnknownPlaceException;

/** Small boards, one question each. */
class FindingTest {

    private static Diagnosis on(Netlist board, String given, String... seen) {
        return Diagnosis.of(board, PartBook.standard(), Priors.standard())
                .given(given.isEmpty() ? List.of() : Given.parseAll(given))
                .with(Arrays.stream(seen).map(Observation::parse).toList());
    }

    private static double weight(Finding finding, String ref) {
        return finding.suspects().stream().filter(s -> s.ref().equals(ref)).mapToDouble(Suspect::weight).sum();
    }

    private static Set<Set<String>> sets(List<List<String>> lists) {
        return lists.stream().map(Set::copyOf).collect(Collectors.toSet());
    }

    /** The full adder of R. Reiter, Artificial Intelligence 32 (1987) 57-95, drawn with a chip for each gate. */
    @Test
    void fullAdder_asABoard_hasReitersDiagnosesAndConflicts() {
        Netlist board = Boards.of("UX1 74LS86 1=in1 2=in2 3=x1", "UX2 74LS86 1=x1 2=in3 3=sum", "UA1 74LS08 1=in1 2=in2 3=a1",
                "UA2 74LS08 1=in3 2=x1 3=a2", "UO1 74LS32 1=a1 2=a2 3=carry");
        Finding finding = on(board, "in1=1,in2=0,in3=1", "net:sum=1", "net:carry=0").finding();
        assertEquals(Set.of(Set.of("UX1"), Set.of("UX2", "UO1"), Set.of("UX2", "UA2")), sets(finding.diagnoses()));
        assertEquals(Set.of(Set.of("UX1", "UX2"), Set.of("UX1", "UA2", "UO1")), sets(finding.conflicts()));
        assertEquals("UX1", finding.suspects().get(0).ref());
    }

    @Test
    void twoFaults_areFoundTogether() {
        Netlist board = Boards.of("U1 74LS04 1=A 2=B", "U2 74LS04 1=C 2=D");
        Finding finding = on(board, "A=0,C=0", "net:B=0", "net:D=0").finding();
        assertEquals(Set.of(Set.of("U1", "U2")), sets(finding.diagnoses()));
        assertEquals(1, finding.suspects().stream().mapToDouble(Suspect::weight).sum(), 1e-9);
        assertEquals(Set.of("U1", "U2"), finding.suspects().stream().map(Suspect::ref).collect(Collectors.toSet()));
        assertTrue(finding.notes().get(0).contains("No single fault"), finding.notes().toString());
        assertEquals(FaultKind.WRONG, finding.suspects().get(0).kind());
    }

    /** Two buffers of one signal disagree: nothing says which is right, but one is wrong. */
    @Test
    void branchesThatDisagree_areBothSuspected() {
        Finding finding = on(Boards.of("U1 74LS04 1=A 2=B", "U2 74LS04 1=A 2=C"), "", "net:B=1", "net:C=0").finding();
        assertEquals(Set.of(Set.of("U1"), Set.of("U2")), sets(finding.diagnoses()));
        assertTrue(weight(finding, "U1") > 0.3 && weight(finding, "U2") > 0.3, finding.toString());
    }

    @Test
    void neighbouringPins_joined_explainTwoOutputsAtOnce() {
        // Pins 2 and 3 of U2 lie side by side: C, which should be high, is low like D.
        Netlist board = Boards.of("U1 74LS04 1=A 2=B", "U2 74LS04 1=B 2=C 3=D 4=E", "U3 74LS04 1=F 2=D");
        assertEquals(List.of(), on(board, "A=0,F=1", "net:B=1", "net:D=0", "net:C=0").finding().suspects());
        Finding wrong = on(board, "A=1,F=1", "net:B=0", "net:C=0", "net:D=0").finding();
        assertTrue(wrong.suspects().get(0).faults().stream().anyMatch(f -> f.kind() == FaultKind.BRIDGED
                && f.fault().equals("pin 2 joined to pin 3 (D)")), wrong.toString());
        Finding other = on(board, "A=1,F=0", "net:B=0", "net:C=0", "net:D=1").finding();
        assertTrue(other.suspects().stream().flatMap(s -> s.faults().stream())
                .noneMatch(f -> f.fault().equals("pin 2 joined to pin 3 (D)")), other.toString());
    }

    @Test
    void supplyBad_isLookedForOnTheSupply() {
        Netlist board = Boards.of("U9 7805 1:IN=RAW 2:GND=GND 3:OUT=+5V", "C1 100u 1=+5V 2=GND", "C2 100n 1=+5V 2=GND",
                "U1 74LS04 14=+5V 7=GND 1=A 2=B");
        Finding finding = on(board, "", "net:+5V=bad").finding();
        assertTrue(weight(finding, "U9") > 0.2, finding.toString());
        assertTrue(weight(finding, "C1") > weight(finding, "C2"), finding.toString());
        assertTrue(finding.diagnoses().contains(List.of("U9")), finding.toString());
        assertFalse(finding.notes().stream().anyMatch(n -> n.contains("supplies are taken")), finding.notes().toString());
    }

    @Test
    void supplySeenGood_isNoSuspect() {
        Netlist board = Boards.of("U9 7805 1:IN=RAW 2:GND=GND 3:OUT=+5V", "U1 74LS04 14=+5V 7=GND 1=A 2=B");
        Finding finding = on(board, "", "net:+5V=good", "net:B=bad", "net:A=good").finding();
        assertEquals(0, weight(finding, "U9"), finding.toString());
        assertEquals("U1", finding.suspects().get(0).ref());
    }

    @Test
    void pullUpMissing_explainsAnOpenCollectorThatStaysLow() {
        Netlist board = Boards.of("U1 74LS05 1=A 2=Y", "R1 4k7 1=+5V 2=Y", "U2 74LS04 1=Y 2=Z");
        Finding finding = on(board, "A=0", "net:Y=0").finding();
        assertTrue(weight(finding, "R1") > 0.01, finding.toString());
        assertEquals("U1", finding.suspects().get(0).ref());
    }

    @Test
    void seriesResistor_goodBeforeBadAfter_isOpen() {
        Netlist board = Boards.of("U1 74LS04 1=A 2=B", "R1 470 1=B 2=C", "Q1 BC548 :B=C :C=D :E=GND", "R2 1k 1=+5V 2=D");
        Finding finding = on(board, "", "net:B=good", "net:C=bad").finding();
        assertTrue(weight(finding, "R1") > 0.1, finding.toString());
        assertEquals(0, weight(finding, "U1"), finding.toString());
        assertTrue(finding.suspects().stream().filter(s -> s.ref().equals("R1")).allMatch(s -> s.kind() == FaultKind.OPEN));
    }

    @Test
    void parts_whoseFunctionNobodyKnows_areRankedByWhatTheyDrive() {
        Netlist board = Boards.of("U1 SECRET1 1:IN=A 2:OUT=B", "U2 SECRET2 1:IN=B 2:OUT=C", "U3 SECRET3 1:IN=C 2:OUT=D");
        Finding all = on(board, "", "net:A=good", "net:D=bad").finding();
        assertEquals(Set.of("U1", "U2", "U3"), all.suspects().stream().map(Suspect::ref).collect(Collectors.toSet()));
        Finding half = on(board, "", "net:A=good", "net:D=bad", "net:B=good").finding();
        assertEquals(0, weight(half, "U1"), half.toString());
        Finding last = on(board, "", "net:C=good", "net:D=bad").finding();
        assertEquals("U3", last.suspects().get(0).ref());
        assertEquals(List.of(List.of("U3")), last.diagnoses());
        assertTrue(last.suspects().get(0).why().contains("its input C reads good"), last.suspects().get(0).why());
    }

    @Test
    void goodAfterBad_throughAnInverter_isAConflict() {
        Finding finding = on(Boards.of("U1 74LS04 1=A 2=B", "U2 74LS04 1=B 2=C"), "", "net:B=bad", "net:C=good").finding();
        assertTrue(sets(finding.conflicts()).contains(Set.of("U2")), finding.toString());
    }

    @Test
    void given_unknownPlace_isRefused() {
        Netlist board = Boards.of("U1 74LS04 1=A 2=B");
        assertThrows(UnknownPlaceException.class, () -> on(board, "NOPE=1"));
        assertThrows(UnknownPlaceException.class, () -> on(board, "", "U7.1=bad"));
        assertThrows(UnknownPlaceException.class, () -> on(board, "", "U1.9=bad"));
    }

    @Test
    void emptyBoard_hasNoSuspects() {
        Finding finding = Diagnosis.of(Netlist.empty(), PartBook.standard(), Priors.standard()).finding();
        assertEquals(List.of(), finding.suspects());
        assertEquals(List.of(), finding.diagnoses());
    }

    @Test
    void lastWordOfOnePlace_counts() {
        Netlist board = Boards.of("U1 74LS04 1=A 2=B");
        assertEquals(List.of(), on(board, "", "net:B=bad", "net:B=good").finding().suspects());
        assertEquals("U1", on(board, "", "net:A=good", "net:B=good", "net:B=bad").finding().suspects().get(0).ref());
    }

    @Test
    void finding_manyThreadsAtOnce_isTheSame() throws Exception {
        Diagnosis diagnosis = on(StructuralRankingTest.example(), "", "net:/INP=bad");
        Finding alone = diagnosis.finding();
        ExecutorService pool = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Finding>> tasks = Stream.<Callable<Finding>>generate(() -> diagnosis::finding).limit(12).toList();
            for (Future<Finding> one : pool.invokeAll(tasks)) {
                assertEquals(alone, one.get());
            }
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void everyNetOfTheExample_bad_hasAnAnswerThatAddsUp() throws Exception {
        Netlist board = StructuralRankingTest.example();
        Diagnosis sound = Diagnosis.of(board, PartBook.standard(), Priors.standard());
        for (var net : board.nets()) {
            Finding finding = sound.with(List.of(Observation.parse("net:" + net.id() + "=bad"))).finding();
            assertFalse(finding.suspects().isEmpty(), net.title());
            assertEquals(1, finding.suspects().stream().mapToDouble(Suspect::weight).sum(), 1e-9, net.title());
            for (int i = 1; i < finding.suspects().size(); i++) {
                assertTrue(finding.suspects().get(i - 1).weight() >= finding.suspects().get(i).weight());
            }
            for (Suspect s : finding.suspects()) {
                assertEquals(s.weight(), s.faults().stream().mapToDouble(PossibleFault::weight).sum(), 1e-9);
                assertTrue(board.part(s.ref()).isPresent() && !s.why().isBlank() && !s.fault().isBlank(), s.toString());
            }
            assertTrue(finding.next() == null || finding.next().net() != net, net.title());
        }
    }
}
