// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the example's own netlist, which its generator wrote. */
class TraceTest {

    @Test
    void trace_readStrobe_namesDriverAndEveryLoadOnBothPages() throws IOException {
        Map<String, Object> answer = Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "IC1.21", "--json", "-").done()
                .json();
        assertEquals("IC1.21", answer.get("from"));
        assertEquals("/RD", ((Map<?, ?>) answer.get("net")).get("name"));
        assertEquals(Set.of("IC1.21"), pins(answer, "drivers"));
        assertEquals(Set.of("IC2.22", "IC3.22", "IC5.9", "IC8.1", "IC13.1"), pins(answer, "loads"));
        assertEquals(Set.of("IC1.21", "IC2.22", "IC3.22", "IC5.9", "IC8.1", "IC13.1", "TP2.null"),
                pins(answer, "pins"));
        assertEquals(pins(answer, "pins"), pins(answer, "reached"));
        assertEquals(List.of(), answer.get("paths"));
        Map<?, ?> first = (Map<?, ?>) ((List<?>) answer.get("pins")).get(0);
        assertEquals(Set.of("ref", "number", "name", "direction", "page", "at"), first.keySet());
        assertEquals("out", first.get("direction"));
    }

    @Test
    void trace_to_givesTheWayThroughTheGate() throws IOException {
        Map<String, Object> answer = Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "IC1.21", "--to", "IC9.1",
                "--json", "-").done().json();
        assertEquals(List.of(List.of("IC1.21", "net:/RD", "IC5.9", "IC5.8", "net:/INP", "IC9.1")),
                answer.get("paths"));
    }

    @Test
    void trace_forPeople_tellsSidesApart() {
        String out = Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "net:/RD", "--to", "IC9.1").done().out();
        assertTrue(out.contains("drives it"), out);
        assertTrue(out.contains("listens to it"), out);
        assertTrue(out.contains("on sheets 1 and 2, 7 pins"), out);
        assertTrue(out.contains("net:/RD > IC5.9 > IC5.8 > net:/INP > IC9.1"), out);
    }

    /** By eye on both pages of the example: the gates behind the strobe and what their outputs reach. */
    @Test
    void trace_strobeThroughGates_namesTheLoadsOnBothPages() throws IOException {
        Map<String, Object> answer = Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "IC1.21", "--series", "--gates",
                "--json", "-").done().json();
        Set<String> reached = pins(answer, "reached");
        for (String load : List.of("IC2.22", "IC3.22", "IC5.9", "IC8.1", "IC13.1", "IC9.1", "IC9.19", "IC12.1", "IC9.13",
                "IC1.16", "IC11.11", "J4.1")) {
            assertTrue(reached.contains(load), load + " is not in " + reached);
        }
        assertTrue(!reached.contains("IC1.22"), reached.toString());
        Map<?, ?> enable = pin(answer, "IC9", "1");
        assertEquals(List.of("IC5"), enable.get("through"));
        assertEquals(1, enable.get("depth"));
        assertEquals("through gate C of IC5 (74LS32, OR): pin 9 drives pin 8", enable.get("reason"));
        assertEquals("pin 1 (/1G) of IC9 (74LS244) only switches outputs 18, 16, 14, 12 on and off", enable.get("stop"));
        assertEquals(List.of("IC13", "IC12"), pin(answer, "IC1", "16").get("through"));
        Map<?, ?> tree = (Map<?, ?>) answer.get("tree");
        assertEquals(List.of("function IC2.22", "function IC3.22", "enable IC8.1"), ((List<?>) tree.get("stops")).stream()
                .map(t -> ((Map<?, ?>) t).get("kind") + " " + ((Map<?, ?>) t).get("at")).toList());
        assertEquals(Set.of("IC5.8", "IC13.3"), ((List<?>) tree.get("next")).stream()
                .map(n -> (String) ((Map<?, ?>) ((Map<?, ?>) n).get("by")).get("out")).collect(Collectors.toSet()));
    }

    @Test
    void trace_seriesOnly_goesThroughResistorsAndNotThroughGates() throws IOException {
        Map<String, Object> answer = Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "IC11.13", "--series", "--json", "-")
                .done().json();
        assertTrue(pins(answer, "reached").contains("Q1.B"), answer.toString());
        assertTrue(!pins(answer, "reached").contains("J4.1"), answer.toString());
        assertEquals(List.of("R22"), pin(answer, "Q1", "B").get("through"));
    }

    @Test
    void trace_drive_saysWhatDrivesAndWhetherItCarries() throws IOException {
        Map<?, ?> drive = (Map<?, ?>) Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "IC5.8", "--json", "-").done()
                .json().get("drive");
        assertEquals("push-pull", drive.get("kind"));
        Map<?, ?> budget = (Map<?, ?>) ((List<?>) drive.get("budgets")).get(0);
        assertEquals("74LS", budget.get("family"));
        assertEquals(true, budget.get("carries"));
        assertEquals(0.0004, budget.get("low_A"));
        assertEquals(0.008, budget.get("can_low_A"));
        assertEquals(List.of(), budget.get("unknown"));
        assertEquals("three-state", ((Map<?, ?>) Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "net:D0", "--json", "-")
                .done().json().get("drive")).get("kind"));
    }

    @Test
    void trace_forPeople_isATreeWithReasons() {
        String out = Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "IC11.13", "--series", "--gates").done().out();
        assertTrue(out.contains("""
                Where it goes on, through series parts and gates:
                  PIXEL
                    N78 through R22 (470 \u03a9, series)
                      N79 through transistor Q1 (BC548), base to emitter, following
                        GND through R25 (470 \u03a9, series); GND is ground
                        N80 through R26 (75 \u03a9, series)
                          - leaves the sheet at pin 1 (VID) of connector J4 (DISPLAY)
                      SYNC through R23 (1 k\u03a9, series)
                        - ends where pin 19 (8Q) of IC10 (74LS374) drives SYNC
                """), out);
        assertTrue(Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "IC5.8").done().out()
                .contains("  IC5.8 (74LS) carries its loads: high 40 \u00b5A of 400 \u00b5A, low 400 \u00b5A of 8 mA.\n"));
    }

    @Test
    void trace_upstream_leadsBackToTheProcessor() {
        String out = Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "IC9.1", "--upstream", "--gates").done().out();
        assertTrue(out.contains("Where it comes from, back through gates:"), out);
        assertTrue(out.contains("- IC1 (Z80A), a Z80-class 8-bit CPU, gives it out at pin 21 (/RD)"), out);
        assertTrue(out.contains("through decoder IC4 (74LS138): pin 1 drives pin 15"), out);
    }

    /** By eye on the example: the port's enables hang on the gate alone, and the gate on both of its inputs. */
    @Test
    void trace_cuts_sayWhatALiftWouldCutOff() throws IOException {
        Map<String, Object> answer = Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "IC1.21", "--cuts", "--json", "-")
                .done().json();
        Map<?, ?> lift = ((List<?>) answer.get("cuts")).stream().map(c -> (Map<?, ?>) c)
                .filter(c -> "IC5.8".equals(c.get("at"))).findFirst().orElseThrow();
        assertEquals("lift", lift.get("change"));
        assertEquals(List.of("IC9.1", "IC9.19"), lift.get("pins"));
        String out = Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "IC1.21", "--cuts").done().out();
        assertTrue(out.contains("  IC5.8 lifted: IC9.1 IC9.19\n"), out);
        assertTrue(Shell.run("trace", Shell.EXAMPLE_NETS, "--from", "IC1.6", "--series", "--cuts").done().out()
                .contains("No single pin or part cuts anything off."));
    }

    @ParameterizedTest
    @CsvSource({"IC77.1, no part IC77", "IC1.99, no pin 99", "net:NOPE, no net NOPE", "IC1, name one of its pins",
        "'9@1,1', no net within"})
    void trace_placeThatIsNotOnTheDrawing_endsWithTwo(String at, String why) {
        Shell.run("trace", Shell.EXAMPLE_NETS, "--from", at).failed(2, why);
    }

    private static Map<?, ?> pin(Map<String, Object> answer, String ref, String number) {
        return ((List<?>) answer.get("reached")).stream().map(p -> (Map<?, ?>) p)
                .filter(p -> ref.equals(p.get("ref")) && number.equals(p.get("number"))).findFirst().orElseThrow();
    }

    private static Set<String> pins(Map<String, Object> answer, String key) {
        return ((List<?>) answer.get(key)).stream().map(p -> (Map<?, ?>) p)
                .map(p -> p.get("ref") + "." + p.get("number")).collect(Collectors.toCollection(TreeSet::new));
    }
}
