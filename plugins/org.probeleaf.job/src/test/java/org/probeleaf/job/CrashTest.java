// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.recognition.correction.Correction;

/**
 * A process applies 200 changes, saying so after each, and is killed at a random moment; 25 times on one and the same
 * job. Whatever it said is in the file, in order, and the file is sound.
 */
class CrashTest {

    private static final int KILLS = 25;
    private static final int CHANGES = 200;
    private static final long SEED = 20260301;

    @TempDir
    Path folder;

    @Test
    void kill_atRandomMoments_everyAcknowledgedChangeIsThere() throws Exception {
        Path file = folder.resolve("crash.probeleaf");
        Job.create(file, List.of(TestSheets.plain(folder, "board.pdf", 1)), JobDetails.blank()).close();
        Random random = new Random(SEED);
        int there = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            int acknowledged = runAndKill(file, there, random.nextInt(CHANGES), random.nextInt(3_000_000));
            if (kill % 2 == 0) {
                try (Job reader = Job.openToRead(file)) {
                    assertEquals(List.of(), reader.check());
                }
            }
            int now = checkedChanges(file);
            assertTrue(now >= there + acknowledged, "acknowledged " + (there + acknowledged) + ", in the file " + now);
            assertTrue(now <= there + acknowledged + 1, "more in the file than was begun");
            there = now;
        }
        assertTrue(there > KILLS, "the kills came too early to show anything");
    }

    /** Kills the child the given time after it acknowledged the given number; returns how many it acknowledged. */
    private static int runAndKill(Path file, int first, int killAfter, long nanoseconds) throws Exception {
        Process child = new ProcessBuilder(java(), "-XX:TieredStopAtLevel=1", "-Xshare:auto", "-cp",
                System.getProperty("java.class.path"), CrashChild.class.getName(), file.toString(),
                Integer.toString(first), Integer.toString(CHANGES)).redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        int acknowledged = 0;
        try (BufferedReader lines = new BufferedReader(
                new InputStreamReader(child.getInputStream(), StandardCharsets.US_ASCII))) {
            assertEquals("open", lines.readLine());
            while (acknowledged < killAfter && !"end".equals(lines.readLine())) {
                acknowledged++;
            }
            long until = System.nanoTime() + nanoseconds;
            while (System.nanoTime() < until) {
                Thread.onSpinWait();
            }
            // Not Process.destroyForcibly, which closes the stream with what was said last.
            child.toHandle().destroyForcibly();
            for (String line = lines.readLine(); line != null && !line.equals("end"); line = lines.readLine()) {
                acknowledged += line.equals(Integer.toString(first + acknowledged)) ? 1 : 0;
            }
        }
        assertTrue(child.waitFor(30, TimeUnit.SECONDS));
        return acknowledged;
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    /** How many notes and corrections the job has, after a look that they are the right ones and the file is sound. */
    private static int checkedChanges(Path file) throws IOException {
        try (Job job = Job.open(file)) {
            assertEquals(List.of(), job.check());
            List<NoteMark> notes = job.state().notes();
            List<KeptCorrection> corrections = job.state().sheetReading().corrections();
            int all = notes.size() + corrections.size();
            for (int i = 0; i < all; i++) {
                if (i % 4 == 3) {
                    assertEquals("net " + i, ((Correction.Name) corrections.get(i / 4).correction()).name());
                } else {
                    assertEquals("note " + i, notes.get(i - (i + 1) / 4).text());
                }
            }
            return all;
        }
    }
}
