// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;
import org.probeleaf.job.JobState;

/**
 * A test of the window as a whole. Needs a display with a window manager; {@code ./probeleaf test} starts one and says with
 * {@code PROBELEAF_WINDOW_TESTS=required} that these tests must run.
 */
abstract class WindowCase {

    /** Where the window is assembled, and the example's sheet. */
    static final Path HOME = Path.of(System.getProperty("probeleaf.workbench", "none"));
    static final Path EXAMPLE = Path.of(System.getProperty("probeleaf.example", "none"));

    @TempDir
    Path folder;

    @BeforeAll
    static void needsDisplay() {
        boolean required = "required".equals(System.getenv("PROBELEAF_WINDOW_TESTS"));
        boolean there = System.getenv("DISPLAY") != null && Files.isExecutable(HOME.resolve("launch"));
        assumeTrue(there || required, "there is no display, or the window is not assembled: ./probeleaf test has both");
        assertTrue(Files.isExecutable(HOME.resolve("launch")), "the window is assembled in " + HOME);
    }

    /** The job that the window makes beside {@code board.pdf}. */
    final Path job() {
        return folder.resolve("board.probeleaf");
    }

    /** What the job holds on disk now. */
    final JobState state() {
        try (Job open = Job.openToRead(job())) {
            return open.state();
        } catch (JobException e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }

    /** Clicks a tab, a button or a field by its words, once it is in sight. */
    static void press(WindowDriver window, String words) {
        Report report = window.await(words + " to be in sight", r -> r.place(words).isPresent());
        window.click(report.place(words).orElseThrow());
    }
}
