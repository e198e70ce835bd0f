// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Readings with their circumstances, the person's verdict, and what was read at a place over time. */
class ReadingVerbsTest {

    private static final Path SHEET = Path.of("..", "..", "examples", "tern-tl8", "tern-tl8.pdf");

    @TempDir
    Path folder;
    private Path job;

    @BeforeEach
    void make() {
        job = job("logger");
    }

    private Path job(String name) {
        Path file = folder.resolve(name + ".probeleaf");
        Shell.run("job", "new", file, SHEET).done();
        return file;
    }

    private static String first(Shell.Result result) {
        return result.done().out().strip();
    }

    @Test
    void reading_circumstancesTypedOrSaid_bothKept() {
        assertEquals("IC5.8 (sheet 1)  1.3 V flat @ reset held [scope, 10:1]",
                first(Shell.run("reading", job, "IC5.8", "1.3V flat @ reset held [scope, 10:1]")));
        assertEquals("IC5.8 (sheet 1)  1.3 V @ warm [DMM]",
                first(Shell.run("reading", job, "IC5.8", "1.3V", "--conditions", "warm", "--instrument", "DMM")));
        assertEquals("IC5.8 (sheet 1)  1.2 V [DMM]", first(Shell.run("reading", job, "IC5.8", "1.2V []")));
    }

    @Test
    void reading_rail_heldAgainstWhatTheNetsNameSays() {
        assertEquals("IC5.14 (sheet 1)  4.2 V; expected 5 V\u00b15%: bad (4.2 V is below 4.75 V)\n"
                + "5 V\u00b15% is expected because the net is named +5V",
                first(Shell.run("reading", job, "IC5.14", "4.2V", "--expect", "rail")));
        Shell.Result none = Shell.run("reading", job, "IC5.8", "4.2V", "--expect", "rail");
        assertEquals(2, none.code());
        assertEquals("the net at IC5.8 is named /INP, which says no voltage; say what it should be, like --expect 5V\u00b15%",
                none.err().strip());
    }

    @Test
    void reading_family_takenFromThePartThere() {
        assertEquals("IC5.8 (sheet 1)  1.3 V; expected 74LS: bad (1.3 V is neither low nor high for 74LS (between 800 mV and 2 V))\n"
                + "74LS is expected because IC5 is a 74LS32", first(Shell.run("reading", job, "IC5.8", "1.3V", "--expect", "family")));
        Shell.Result none = Shell.run("reading", job, "net:+5V", "4.2V", "--expect", "family");
        assertEquals(2, none.code());
        assertTrue(none.err().strip().endsWith("name it, like --expect 74LS"), none.err());
    }

    @Test
    void reading_thatMoves_bothEndsJudged() throws IOException {
        assertEquals("IC5.14 (sheet 1)  4.7 V to 5.1 V hunting; expected 5V\u00b15%: bad (4.7 V is below 4.75 V)",
                first(Shell.run("reading", job, "IC5.14", "4.7-5.1V hunting", "--expect", "5V+-5%")));
        assertEquals(4.9, (double) readings().get(0).get("value"), 1e-12);
        assertEquals(4.7, (double) readings().get(0).get("low"), 1e-12);
        assertEquals(5.1, (double) readings().get(0).get("high"), 1e-12);
    }

    @Test
    void reading_likeAnotherJob_heldAgainstWhatWasReadThere() {
        Path good = job("good");
        Shell.run("reading", good, "IC5.8", "3.4V").done();
        assertEquals("net:/INP (sheet 1)  1.3 V; expected known good 3.4 V\u00b110%: bad (1.3 V is below 3.06 V)",
                first(Shell.run("reading", job, "net:/INP", "1.3V", "--like", good)));
        Shell.Result none = Shell.run("reading", job, "IC1.6", "1.3V", "--like", good);
        assertEquals(2, none.code());
        assertTrue(none.err().strip().endsWith("good.probeleaf: nothing was read at IC1.6 there"), none.err());
    }

    @Test
    void reading_mistyped_putRightAndUndone() throws IOException {
        Shell.run("reading", job, "IC5.14", "42V @ warm", "--expect", "5V+-5%").done();
        assertEquals("IC5.14 (sheet 1)  4.9 V @ warm; expected 5V\u00b15%: good (4.9 V is within 5V\u00b15%)",
                first(Shell.run("reading", job, "IC5.14", "4.9V", "--instead")));
        assertEquals(1, readings().size());
        Shell.run("undo", job).done();
        assertEquals(42.0, readings().get(0).get("value"));
        assertEquals(2, Shell.run("reading", job, "IC5.8", "1V", "--instead").code());
    }

    @Test
    void overrule_withReason_bothVerdictsAreTold() throws IOException {
        Shell.run("reading", job, "IC5.14", "4.2V", "--expect", "5V+-5%").done();
        assertEquals("IC5.14 (sheet 1)  4.2 V; expected 5V\u00b15%: good (said to be good: on battery (though 4.2 V is below 4.75 V))",
                first(Shell.run("overrule", job, "IC5.14", "good", "--why", "on battery")));
        Map<?, ?> judged = (Map<?, ?>) readings().get(0).get("judged");
        assertEquals("bad", judged.get("outcome"));
        assertEquals("good", ((Map<?, ?>) readings().get(0).get("verdict")).get("outcome"));
        assertEquals("IC5.14 (sheet 1)  4.2 V; expected 5V\u00b15%: bad (4.2 V is below 4.75 V)",
                first(Shell.run("overrule", job, "IC5.14", "judged")));
        assertEquals(2, Shell.run("overrule", job, "IC5.14", "good").code());
        assertEquals(2, Shell.run("overrule", job, "IC5.14", "perhaps", "--why", "x").code());
        assertEquals(2, Shell.run("overrule", job, "IC5.8", "good", "--why", "x").code());
    }

    @Test
    void history_readingsRoundALift_toldInOrder() throws IOException {
        Shell.run("reading", job, "IC5.8", "1.3V").done();
        Shell.run("change", job, "lift", "IC8.1", "--temporary").done();
        Shell.run("reading", job, "net:/INP", "0.2V").done();
        List<String> lines = Shell.run("history", job, "IC5.8").done().out().lines().map(l -> l.substring(18)).toList();
        assertEquals(List.of("IC5.8 (sheet 1)  1.3 V", "-- IC8.1 lifted",
                "net:/INP (sheet 1)  0.2 V; 1.1 V less since IC8.1 lifted"), lines.stream()
                        .map(l -> l.replace("200 mV", "0.2 V")).toList());
        Map<String, Object> json = Shell.run("history", job, "IC5.8", "--json", "-").done().json();
        assertEquals(List.of("reading", "board", "reading"), ((List<?>) json.get("steps")).stream()
                .map(s -> ((Map<?, ?>) s).get("what")).toList());
        assertEquals("Nothing has been read at IC1.6 yet.", first(Shell.run("history", job, "IC1.6")));
    }

    @SuppressWarnings("unchecked")
    private List<Map<String, Object>> readings() throws IOException {
        return (List<Map<String, Object>>) Shell.run("job", "show", job, "--json", "-").done().json().get("readings");
    }
}
