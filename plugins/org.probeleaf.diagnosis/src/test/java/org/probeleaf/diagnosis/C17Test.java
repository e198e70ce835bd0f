// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

import com.fasterxml.jackson.jr.ob.JSON;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;

/**
 * ISCAS-85 c17 (F. Brglez, H. Fujiwara, ISCAS 1985) as a board of six 7400 of which one gate each is used, with a
 * contact for each input. Facts by exhaustive simulation by another program: {@code c17.json}.
 */
class C17Test {

    private static final List<String> INPUTS = List.of("1", "2", "3", "6", "7");
    private static final List<String> OUTPUTS = List.of("22", "23");
    private static Map<String, Object> facts;
    private static Map<String, List<String>> gates;
    private static Diagnosis diagnosis;

    @BeforeAll
    @SuppressWarnings("unchecked")
    static void build() throws IOException {
        try (InputStream in = C17Test.class.getResourceAsStream("c17.json")) {
            facts = JSON.std.mapFrom(in);
        }
        gates = (Map<String, List<String>>) facts.get("gates");
        diagnosis = Diagnosis.of(board(), PartBook.standard(), Priors.standard());
    }

    /** Each input comes over a buffer of its own, so that a stuck input has a part to blame. */
    private static Netlist board() {
        List<String> lines = new ArrayList<>();
        INPUTS.forEach(i -> lines.add("B" + i + "U 74LS125 1=GND 2=in" + i + " 3=n" + i));
        gates.forEach((out, in) -> lines.add("U" + out + " 74LS00 1=n" + in.get(0) + " 2=n" + in.get(1) + " 3=n" + out));
        return Boards.of(lines.toArray(String[]::new));
    }

    /** Levels of all lines; a fault is a line, or a branch of it to a gate, stuck at a level; null for none. */
    private static Map<String, Integer> simulate(String vector, String fault) {
        Map<String, Integer> level = new TreeMap<>();
        for (int i = 0; i < INPUTS.size(); i++) {
            level.put(INPUTS.get(i), stuck(INPUTS.get(i), vector.charAt(i) - '0', fault));
        }
        for (String out : List.of("10", "11", "16", "19", "22", "23")) {
            int and = 1;
            for (String in : gates.get(out)) {
                and &= stuck(in + "->" + out, level.get(in), fault);
            }
            level.put(out, stuck(out, 1 - and, fault));
        }
        return level;
    }

    private static int stuck(String line, int level, String fault) {
        return fault != null && fault.startsWith(line + "/sa") ? fault.charAt(fault.length() - 1) - '0' : level;
    }

    private static String outputs(Map<String, Integer> levels) {
        return OUTPUTS.stream().map(o -> String.valueOf(levels.get(o))).collect(Collectors.joining());
    }

    /** The part that has a fault: the gate, of a branch the gate it goes into, of an input its buffer. */
    private static String culprit(String fault) {
        String line = fault.substring(0, fault.indexOf('/')).replaceFirst(".*->", "");
        return INPUTS.contains(line) ? "B" + line + "U" : "U" + line;
    }

    private static Finding find(String vector, Map<String, Integer> seen) {
        List<Given> given = new ArrayList<>();
        for (int i = 0; i < INPUTS.size(); i++) {
            given.add(new Given(new Place.OfNet("in" + INPUTS.get(i)), vector.charAt(i) == '1'));
        }
        List<Observation> observed = OUTPUTS.stream().map(o -> new Observation(new Place.OfNet("n" + o),
                seen.get(o) == 1 ? Seen.HIGH : Seen.LOW)).toList();
        return diagnosis.given(given).with(observed).finding();
    }

    @Test
    @SuppressWarnings("unchecked")
    void simulate_everyVector_agreesWithTheTruthTable() {
        Map<String, String> truth = (Map<String, String>) facts.get("truth");
        assertEquals(32, truth.size());
        truth.forEach((vector, out) -> assertEquals(out, outputs(simulate(vector, null)), vector));
    }

    @Test
    void finding_soundCircuit_blamesNobody() {
        for (String vector : vectors()) {
            assertEquals(List.of(), find(vector, simulate(vector, null)).suspects(), vector);
        }
    }

    @Test
    void finding_everyFaultUnderEveryVectorThatShowsIt_hasTheTrueGateAmongDiagnosesAndSuspects() {
        assertEquals(22, classes().size());
        int asked = 0;
        for (Map<String, List<String>> one : classes()) {
            for (String fault : one.get("members")) {
                Set<String> showing = new TreeSet<>();
                for (String vector : vectors()) {
                    Map<String, Integer> seen = simulate(vector, fault);
                    if (!outputs(seen).equals(outputs(simulate(vector, null)))) {
                        showing.add(vector);
                        Finding finding = find(vector, seen);
                        String wanted = culprit(fault);
                        assertTrue(finding.diagnoses().contains(List.of(wanted)), fault + " " + vector + " " + finding);
                        assertTrue(finding.suspects().stream().anyMatch(s -> s.ref().equals(wanted)),
                                fault + " " + vector + " " + finding.suspects());
                        assertEquals(1, finding.suspects().stream().mapToDouble(Suspect::weight).sum(), 1e-9);
                        asked++;
                    }
                }
                assertEquals(new TreeSet<>(one.get("tests")), showing, fault);
            }
        }
        assertTrue(asked > 300, "only " + asked);
    }

    @Test
    @SuppressWarnings("unchecked")
    void leastTestSets_showEveryClass() {
        List<List<String>> sets = (List<List<String>>) facts.get("minimum_test_sets");
        assertEquals(10, sets.size());
        for (List<String> set : sets) {
            assertEquals(4, set.size());
            for (Map<String, List<String>> one : classes()) {
                String fault = one.get("members").get(0);
                assertTrue(set.stream().anyMatch(v -> !outputs(simulate(v, fault)).equals(outputs(simulate(v, null)))),
                        set + " " + fault);
            }
        }
        assertFalse(sets.get(0).equals(sets.get(1)));
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, List<String>>> classes() {
        return (List<Map<String, List<String>>>) facts.get("collapsed_classes");
    }

    private static List<String> vectors() {
        List<String> all = new ArrayList<>();
        for (int v = 0; v < 32; v++) {
            all.add(String.format("%5s", Integer.toBinaryString(v)).replace(' ', '0'));
        }
        return all;
    }
}
