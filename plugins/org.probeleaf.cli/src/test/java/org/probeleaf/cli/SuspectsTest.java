// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code suspects} on the example, as a netlist document, as a sheet and as a job. */
class SuspectsTest {

    @TempDir
    private Path folder;

    private static List<?> suspects(Map<String, Object> answer) {
        return (List<?>) answer.get("suspects");
    }

    private static Map<?, ?> first(Map<String, Object> answer) {
        return (Map<?, ?>) suspects(answer).get(0);
    }

    @Test
    void suspects_strobeBadInputsGood_blamesTheGate() throws IOException {
        Map<String, Object> answer = Shell.run("suspects", Shell.EXAMPLE_NETS, "--observe", "net:/INP=bad",
                "--observe", "IC5.9=good", "--observe", "IC5.10=good", "--json", "-").done().json();
        assertTrue(answer.keySet().containsAll(Set.of("suspects", "diagnoses", "next")), answer.toString());
        assertTrue(first(answer).keySet().containsAll(Set.of("ref", "pin", "fault", "weight", "why")));
        assertEquals("IC5", first(answer).get("ref"));
        assertEquals("8", first(answer).get("pin"));
        assertEquals(1, suspects(answer).stream().mapToDouble(s -> (double) ((Map<?, ?>) s).get("weight")).sum(), 1e-9);
        assertTrue(((List<?>) answer.get("diagnoses")).contains(List.of("IC5")), answer.toString());
    }

    @Test
    void suspects_inputsHeld_workOutWhatIsDue() {
        String out = Shell.run("suspects", Shell.EXAMPLE_NETS, "--inputs", "/RD=0,/IO0=0", "--observe", "net:/INP=1")
                .done().out();
        assertTrue(out.contains("IC5 drives /INP, which reads 1 where 0 is due"), out);
        assertTrue(out.contains("pin 8 stuck high"), out);
    }

    @Test
    void suspects_inputsHeldAndAllRight_blameNobody() throws IOException {
        Map<String, Object> answer = Shell.run("suspects", Shell.EXAMPLE_NETS, "--inputs", "/RD=0,/IO0=0", "--observe",
                "net:/INP=0", "--json", "-").done().json();
        assertEquals(List.of(), suspects(answer));
        assertEquals(null, answer.get("next"));
    }

    @Test
    void suspects_sheetAndDocument_sayTheSame() throws IOException {
        String[] more = {"--observe", "net:SYNC=bad", "--json", "-"};
        Map<String, Object> sheet = Shell.run("suspects", Shell.EXAMPLE, more[0], more[1], more[2], more[3]).done().json();
        Map<String, Object> document = Shell.run("suspects", Shell.EXAMPLE_NETS, more[0], more[1], more[2], more[3])
                .done().json();
        assertEquals(first(document).get("ref"), first(sheet).get("ref"));
        assertEquals(document.get("diagnoses"), sheet.get("diagnoses"));
    }

    @Test
    void suspects_job_countsItsReadingsAndFollowsItsBoard() throws IOException {
        Path job = folder.resolve("j.probeleaf");
        Shell.run("job", "new", job, Shell.EXAMPLE).done();
        Shell.run("reading", job, "IC5.8", "3.4V", "--expect", "0V±0.4V").done();
        Shell.run("reading", job, "IC5.9", "0.1V", "--expect", "0V±0.4V").done();
        Shell.run("reading", job, "IC5.10", "0.1V", "--expect", "0V±0.4V").done();
        Map<String, Object> before = Shell.run("suspects", job, "--json", "-").done().json();
        assertEquals("IC5", first(before).get("ref"));
        assertTrue(before.toString().contains("IC9"), before.toString());
        Shell.run("change", job, "remove", "IC9", "--temporary").done();
        Map<String, Object> after = Shell.run("suspects", job, "--observe", "IC5.8=bad", "--observe", "IC5.9=good",
                "--observe", "IC5.10=good", "--json", "-").done().json();
        assertEquals("IC5", first(after).get("ref"));
        assertTrue(suspects(after).stream().noneMatch(s -> "IC9".equals(((Map<?, ?>) s).get("ref"))), after.toString());
    }

    @Test
    void suspects_ownPriors_count() throws IOException {
        String[] seen = {"--observe", "net:/INP=bad"};
        Path own = Files.writeString(folder.resolve("own.txt"), "part ic 0\npart memory 0\n");
        Map<String, Object> answer = Shell.run("suspects", Shell.EXAMPLE_NETS, seen[0], seen[1], "--priors", own,
                "--json", "-").done().json();
        assertTrue(suspects(answer).stream().noneMatch(s -> ((Map<?, ?>) s).get("ref").toString().startsWith("IC")),
                answer.toString());
        String shown = Shell.run("suspects", Shell.EXAMPLE_NETS, "--priors", own, "--show-priors").done().out();
        assertTrue(shown.contains("part ic 0\n") && shown.contains("part electrolytic 10\n"), shown);
        Path wrong = Files.writeString(folder.resolve("wrong.txt"), "part ic many\n");
        Shell.run("suspects", Shell.EXAMPLE_NETS, seen[0], seen[1], "--priors", wrong).failed(3, "line 1", "many");
    }

    @ParameterizedTest
    @CsvSource({"IC77.1=bad, no part IC77", "IC1.99=bad, no pin 99", "net:NOPE=bad, no net NOPE",
        "IC5.8=odd, good bad 0 or 1", "IC5.8, what was seen", "=bad, what was seen", "IC1=bad, name one of its pins"})
    void suspects_wrongObservation_endsWithTwo(String seen, String why) {
        Shell.Result result = Shell.run("suspects", Shell.EXAMPLE_NETS, "--observe", seen);
        for (String word : why.split(" ")) {
            result.failed(2, word);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"/RD=2;holds no net", "NOPE=1;no net NOPE", "/RD;holds no net",
        "/RD=0,,=1;holds no net"})
    void suspects_wrongInputs_endWithTwo(String inputs, String why) {
        Shell.run("suspects", Shell.EXAMPLE_NETS, "--inputs", inputs, "--observe", "net:/INP=bad").failed(2, why);
    }
}
