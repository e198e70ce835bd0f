// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FuzzTallyTest {

    private final Mutator mutator = mutator();
    private final StringWriter told = new StringWriter();

    private static Mutator mutator() {
        try {
            return new Mutator(List.of(Files.readAllBytes(
                    Path.of(System.getProperty("probeleaf.root"), "examples", "tern-tl8", "tern-tl8.pdf"))), 1);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private String print(FuzzTally tally) {
        StringWriter out = new StringWriter();
        tally.print(new PrintWriter(out), 7);
        return out.toString().replace(System.lineSeparator(), "\n");
    }

    @Test
    void print_readAndRefused_countsThemAndTellsTheSlowestFirst() {
        FuzzTally tally = new FuzzTally(mutator, 1, null, new PrintWriter(told, true));
        tally.heard(3, new Outcome(Outcome.Kind.READ, ""), 0.5);
        tally.heard(4, new Outcome(Outcome.Kind.REFUSED, ""), 2.25);

        assertTrue(tally.isGood());
        assertEquals("slowest: 4 (2.3 s), 3 (0.5 s)\n2 files of seed 1 in 7 s: 1 read, 1 refused, 0 failed,"
                + " 0 out of memory, 0 hung, 0 died\n", print(tally));
        assertEquals("", told.toString());
    }

    @Test
    void heard_fileThatHangs_isToldAndKept(@TempDir Path keep) throws IOException {
        FuzzTally tally = new FuzzTally(mutator, 1, keep, new PrintWriter(told, true));
        tally.heard(5, new Outcome(Outcome.Kind.HUNG, ""), 20);

        assertFalse(tally.isGood());
        assertTrue(told.toString().contains("5 HUNG"), told.toString());
        assertTrue(print(tally).contains("1 hung"), print(tally));
        assertEquals(-1, Files.mismatch(keep.resolve("1-5.pdf"),
                Files.write(keep.resolve("again"), mutator.mutant(5).bytes())));
    }
}
