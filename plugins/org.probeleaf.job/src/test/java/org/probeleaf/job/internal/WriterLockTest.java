// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WriterLockTest {

    @TempDir
    Path folder;

    /** Takes the lock, says so, and waits to be killed. */
    public static final class Holder {
        public static void main(String[] args) throws Exception {
            Optional<WriterLock> lock = WriterLock.take(Path.of(args[0]));
            new PrintStream(new FileOutputStream(FileDescriptor.out), true)
                    .println(lock.isPresent());
            System.in.read();
        }
    }

    @Test
    void take_twiceHere_secondRefusedUntilTheFirstIsClosed() throws Exception {
        Path job = folder.resolve("a.probeleaf");
        WriterLock first = WriterLock.take(job).orElseThrow();
        assertTrue(WriterLock.take(job).isEmpty());
        assertTrue(WriterLock.take(folder.resolve("./a.probeleaf")).isEmpty());
        assertEquals(Optional.of("this program"), WriterLock.holder(job));
        first.close();
        first.close();
        assertFalse(Files.exists(folder.resolve("a.probeleaf.lock")));
        WriterLock.take(job).orElseThrow().close();
    }

    @Test
    void take_otherProcessHasIt_refusedUntilItIsKilled() throws Exception {
        Path job = folder.resolve("a.probeleaf");
        Process holder = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-cp",
                System.getProperty("java.class.path"), Holder.class.getName(), job.toString()).start();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(holder.getInputStream()))) {
            assertEquals("true", lines.readLine());
            assertTrue(WriterLock.take(job).isEmpty());
            assertEquals(Optional.of("process " + holder.pid()), WriterLock.holder(job));
            assertTrue(WriterLock.take(job).isEmpty());
        } finally {
            holder.destroyForcibly();
        }
        assertTrue(holder.waitFor(30, TimeUnit.SECONDS));
        assertTrue(Files.exists(folder.resolve("a.probeleaf.lock")));
        WriterLock.take(job).orElseThrow().close();
        assertFalse(Files.exists(folder.resolve("a.probeleaf.lock")));
    }
}
