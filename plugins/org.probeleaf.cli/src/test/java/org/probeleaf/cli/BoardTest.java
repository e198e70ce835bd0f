// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** {@code change}, {@code putback}, {@code boards} and what follows the board, on the example. */
class BoardTest {

    @TempDir
    private Path folder;
    private Path job;

    @BeforeEach
    void makeJob() {
        job = folder.resolve("j.probeleaf");
        Shell.run("job", "new", job, Shell.EXAMPLE).done();
    }

    private Shell.Result change(String words) {
        return Shell.run(Stream.concat(Stream.of("change", job), Arrays.stream(words.split(" "))).toArray());
    }

    private String pins(String at) throws IOException {
        return Shell.run("trace", job, "--from", at, "--json", "-").done().json().get("pins").toString();
    }

    private static List<?> open(Map<String, Object> answer) {
        return (List<?>) answer.get("open_changes");
    }

    @Test
    void lift_forNow_isFollowedByTheTraceListedAndPutBack() throws IOException {
        assertTrue(pins("IC1.21").contains("ref=IC5"));
        String said = change("lift IC5.9 --temporary --note strobe").done().out();
        assertTrue(said.contains("IC5.9 is lifted off /RD, for now (strobe)."), said);
        assertTrue(said.contains("1 thing to be put back."), said);
        assertFalse(pins("IC1.21").contains("ref=IC5"));
        assertTrue(Shell.run("putback", job).done().out().contains("1.  Put IC5.9 back on its pad (strobe)"));
        assertTrue(Shell.run("job", "show", job).done().out().contains("On the board\n  IC5.9 lifted, for now (strobe)"));

        Map<String, Object> answer = Shell.run("putback", job, "IC5.9", "--json", "-").done().json();
        assertEquals(List.of(), open(answer));
        assertEquals(1, ((List<?>) answer.get("put_back")).size());
        assertTrue(pins("IC1.21").contains("ref=IC5"));
        assertTrue(Shell.run("putback", job).done().out().contains("There is nothing to put back."));
        Shell.run("undo", job).done();
        assertFalse(pins("IC1.21").contains("ref=IC5"), "undo lifts it again");
        Shell.run("undo", job).done();
        assertTrue(pins("IC1.21").contains("ref=IC5"));
        assertTrue(Shell.run("job", "check", job).done().out().contains("sound"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"lift IC5.9 IC5.10", "remove R3 C1", "fit R99=10k:IC1.21,net:GND", "fit R99 IC1.21 1@610,400"
        + " --value 10k", "replace IC5", "replace IC5=74HCT32", "link IC6.8 IC7.4", "cut 1@610,400", "cut IC5.9",
        "value R3=10k R4=3k3", "value R3 10k", "value R3 --value 10k"})
    void everyKind_isDoneUndoneAndKept(String words) throws IOException {
        String start = Shell.run("nets", job, "--json", "-").done().out();
        Map<String, Object> answer = change(words + " --temporary --json -").done().json();
        List<?> changes = (List<?>) answer.get("changes");
        assertEquals(changes, changes.stream().filter(c -> !((Map<?, ?>) c).get("outcome").toString().isEmpty()).toList());
        assertEquals(changes.size(), open(answer).size());
        String after = Shell.run("nets", job, "--json", "-").done().out();
        assertEquals(words.equals("replace IC5"), start.equals(after), "only another specimen of a type changes nothing");
        Map<String, Object> kept = Shell.run("putback", job, "--all", "--keep", "--json", "-").done().json();
        assertEquals(changes.size(), ((List<?>) kept.get("to_stay")).size());
        assertEquals(after, Shell.run("nets", job, "--json", "-").done().out());
        for (int i = 0; i <= changes.size(); i++) {
            Shell.run("undo", job).done();
        }
        assertEquals(start, Shell.run("nets", job, "--json", "-").done().out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"lift IC5|no pin", "lift IC77.3|IC77", "lift IC5.77|77", "remove R3.1|no part",
        "fit R3|already", "fit R99|R99", "link IC6.8|link AT AT", "solder IC5|no change", "value R3|value of R3",
        "value R3 --value|--value", "cut 1@3,3|wire", "lift IC5.9 --value 3|takes no value",
        "remove R3 --known-good --temporary|known-good"})
    void wrong_isOneLineAndChangesNothing(String words, String says) throws IOException {
        change(words).failed(2, says);
        assertEquals(List.of(), Shell.run("job", "show", job, "--json", "-").done().json().get("board_changes"));
    }

    @Test
    void severalAtOnce_oneWrong_noneIsDone() throws IOException {
        change("lift IC5.9 IC5.77").failed(2, "77");
        assertEquals(List.of(), Shell.run("job", "show", job, "--json", "-").done().json().get("board_changes"));
        change("lift IC5.9").done();
        change("lift IC5.9").failed(2, "already");
    }

    /** A trace follows the board: with the gate's output lifted the port is not reached, put back it is again. */
    @Test
    void trace_liftedPinOfAGate_endsThereUntilItIsPutBack() throws IOException {
        String before = followed("IC1.21");
        assertTrue(before.contains("/INP through gate C of IC5"), before);
        assertTrue(before.contains("(/1G) of IC9"), before);
        change("lift IC5.8 --temporary").done();
        String lifted = followed("IC1.21");
        assertFalse(lifted.contains("/INP"), lifted);
        assertTrue(lifted.contains("through gate A of IC13"), lifted);
        Shell.run("putback", job, "1").done();
        assertEquals(before, followed("IC1.21"));
    }

    private String followed(String from) {
        return Shell.run("trace", job, "--from", from, "--series", "--gates").done().out();
    }

    @Test
    void handover_withSomethingOpen_isRefusedUntilPutBackOrAccepted() throws IOException {
        change("lift IC5.9 --temporary").done();
        change("remove C1").done();
        Path out = folder.resolve("out");
        Shell.Result refused = Shell.run("handover", job, "--out", out, "--sheet-only");
        refused.failed(1, "IC5.9 lifted", "putback", "--accept-open");
        assertFalse(out.toFile().exists());
        Shell.Result asJson = Shell.run("handover", job, "--out", out, "--sheet-only", "--json", "-");
        assertEquals(1, asJson.code());
        assertEquals(1, open(asJson.json()).size());
        Map<String, Object> accepted = Shell.run("handover", job, "--out", out, "--sheet-only", "--accept-open", "--json",
                "-").done().json();
        assertEquals(1, ((List<?>) accepted.get("files")).size());
        assertEquals(1, open(accepted).size());
        Shell.run("putback", job, "1").done();
        assertEquals(List.of(), open(Shell.run("handover", job, "--out", out, "--sheet-only", "--json", "-").done()
                .json()));
    }

    @Test
    void boards_sideBySide_showOnlyDifferences() throws IOException {
        assertTrue(Shell.run("boards", job).done().out().contains("as drawn"));
        change("remove C1").done();
        change("value R3=10k").done();
        change("value R3=10k --known-good").done();
        change("link IC6.8 IC7.4 --known-good").done();
        String text = Shell.run("boards", job).done().out();
        assertTrue(text.matches("(?s).*C1 +22n +not fitted +22n\\R.*"), text);
        assertTrue(text.matches("(?s).*R3 +47k +10k +10k\\R.*"), text);
        assertTrue(text.matches("(?s).*link IC6.8 to IC7.4 +no +no +yes\\R.*"), text);
        List<?> rows = (List<?>) Shell.run("boards", job, "--json", "-").done().json().get("differences");
        assertEquals(3, rows.size());
        assertTrue(pins("IC6.8").contains("ref=IC6"));
        assertFalse(pins("IC6.8").contains("ref=IC7"), "what a known-good board has is not on this one");
    }
}
