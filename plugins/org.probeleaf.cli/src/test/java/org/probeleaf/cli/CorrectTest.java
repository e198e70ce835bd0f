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

class CorrectTest {

    @TempDir
    private Path folder;
    private Path job;

    @BeforeEach
    void makeJob() {
        job = folder.resolve("j.probeleaf");
        Shell.run("job", "new", job, Shell.EXAMPLE).done();
    }

    private Shell.Result correct(String words) {
        return Shell.run(Stream.concat(Stream.of("correct", job),
                Arrays.stream(words.split(" "))).toArray());
    }

    private String pins(String at) throws IOException {
        return Shell.run("trace", job, "--from", at, "--json", "-").done().json().get("pins").toString();
    }

    @Test
    void join_twoNets_isFollowedByTheTraceAndUndone() throws IOException {
        assertTrue(correct("join IC6.8 IC7.4").done().out().contains("Corrected: join of IC6.8 and IC7.4."));
        assertTrue(pins("IC6.8").contains("ref=IC7"));
        assertTrue(Shell.run("undo", job).done().out().contains("Undid: join of IC6.8 and IC7.4."));
        assertFalse(pins("IC6.8").contains("ref=IC7"));
    }

    @Test
    void noJunction_atATee_takesItsBranchOff() throws IOException {
        correct("no-junction 1@830,450").done();
        assertFalse(pins("IC1.21").contains("ref=IC5"));
        assertTrue(Shell.run("nets", job).done().out().matches("(?s).*N\\d+b  .*"));
        correct("junction 1@830,450").done();
        assertTrue(pins("IC1.21").contains("ref=IC5"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"split 1@610,400", "detach IC2.22 IC3.22", "name IC6.8 SQUARE", "add-pin 1@700,450 IC1.99",
        "move-pin IC5.9 1@700,452", "edit-pin IC5.9 --number 19", "remove-pin IC5.9",
        "add-part R99 1@600,440 1@620,460 --value 4k7", "edit-part R3 --ref R4 --value 10k", "remove-part R3",
        "unit IC6 IC7 --unit B", "ignore 2@0,0 2@300,300"})
    void everyKind_isDoneListedAndWithdrawn(String words) throws IOException {
        Object start = Shell.run("nets", job, "--json", "-").done().out();
        Map<String, Object> answer = correct(words + " --json -").done().json();
        assertEquals("done", answer.get("state"), answer.toString());
        assertFalse(start.equals(Shell.run("nets", job, "--json", "-").done().out()));
        Map<String, Object> listed = Shell.run("correct", job, "--json", "-").done().json();
        assertEquals(answer.get("correction"),
                ((Map<?, ?>) ((List<?>) listed.get("corrections")).get(0)).get("correction"));
        assertTrue(Shell.run("job", "show", job).done().out().contains("1.  " + answer.get("correction")));
        assertTrue(correct("withdraw 1").done().out().contains("Withdrawn: " + answer.get("correction") + "."));
        assertEquals(start, Shell.run("nets", job, "--json", "-").done().out());
        assertTrue(Shell.run("correct", job).done().out().contains("There are no corrections."));
        assertTrue(Shell.run("job", "check", job).done().out().contains("sound"));
    }

    @Test
    void split_thatNamesHoldTogether_isKeptAndDoubted() {
        assertTrue(correct("split 1@700,450").done().out().contains("by the names on them"));
        assertTrue(Shell.run("nets", job).done().out().contains("unsure at 1@700,450: The correction"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"join IC1.21 IC2.22|on one net, /RD", "split 2@5,5|no wire at 2@5,5",
        "junction 1@5,5|no wires meet", "join IC1.21|join AT AT", "bogus|known are join", "name IC1.21|name AT NAME",
        "detach IC77.1|IC77", "add-pin 1@700,450 net:X|is no pin", "withdraw 7|number of a correction",
        "ignore 1@5,5 2@9,9|on different pages", "edit-part R3|neither a designator nor a value",
        "add-part R3 1@5,5 1@9,9|there is a part R3 elsewhere", "confirm 1@500,500|nothing is doubted",
        "split 3@5,5|no page 3", "join IC1 IC2|is a part; name one of its pins"})
    void badWords_areOneLine(String words, String why) throws IOException {
        correct(words).failed(2, why);
        assertEquals(List.of(), Shell.run("job", "show", job, "--json", "-").done().json().get("log"));
    }

    /** A label stays on its wire when the wire comes off the net by whose name it was pinned. */
    @Test
    void label_onAWireThatComesOff_staysOnTheWire() throws IOException {
        Shell.run("label", job, "1@830,520", "to the port").done();
        correct("no-junction 1@830,450").done();
        Map<String, Object> answer = Shell.run("trace", job, "--from", "net:to the port", "--json", "-").done().json();
        assertTrue(answer.get("pins").toString().contains("ref=IC5"), answer.toString());
        assertFalse(answer.get("pins").toString().contains("ref=IC1,"), answer.toString());
        Path out = folder.resolve("out");
        Shell.run("handover", job, "--out", out, "--sheet-only").done();
    }
}
