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

    @ParameterizedTest
    @CsvSource({"IC77.1, no part IC77", "IC1.99, no pin 99", "net:NOPE, no net NOPE", "IC1, name one of its pins",
        "'9@1,1', no net within"})
    void trace_placeThatIsNotOnTheDrawing_endsWithTwo(String at, String why) {
        Shell.run("trace", Shell.EXAMPLE_NETS, "--from", at).failed(2, why);
    }

    private static Set<String> pins(Map<String, Object> answer, String key) {
        return ((List<?>) answer.get(key)).stream().map(p -> (Map<?, ?>) p)
                .map(p -> p.get("ref") + "." + p.get("number")).collect(Collectors.toCollection(TreeSet::new));
    }
}
