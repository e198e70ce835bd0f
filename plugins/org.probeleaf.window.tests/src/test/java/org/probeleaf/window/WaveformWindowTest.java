// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.event.KeyEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;
import org.probeleaf.job.JobState;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.schematic.checksum.Sha256;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/** A capture in its view, with mouse and keyboard; see {@link WindowTest} for what is needed. */
class WaveformWindowTest {

    private static final Path HOME = Path.of(System.getProperty("probeleaf.workbench", "none"));
    private static final Path EXAMPLE = Path.of(System.getProperty("probeleaf.example", "none"));
    /** The strobe /RD where it leaves IC1.21; IC5, a 74LS32, listens to it. */
    private static final Point STROBE = new Point(450, 450);

    @TempDir
    Path folder;
    private Path job;

    @BeforeAll
    static void needsDisplay() {
        boolean required = "required".equals(System.getenv("PROBELEAF_WINDOW_TESTS"));
        boolean there = System.getenv("DISPLAY") != null && Files.isExecutable(HOME.resolve("launch"));
        assumeTrue(there || required, "there is no display, or the window is not assembled: ./probeleaf test has both");
    }

    /** A square wave of 1 MHz between two levels, 20 samples to a period. */
    private static byte[] square(double low, double high) {
        StringBuilder text = new StringBuilder("Time (s),CH1 (V)\n");
        for (int i = 0; i < 400; i++) {
            text.append(String.format(Locale.ROOT, "%.9e,%.3f%n", i * 50e-9, i % 20 < 10 ? low : high));
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    private void make() throws Exception {
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        job = folder.resolve("board.probeleaf");
        try (Job made = Job.create(job, List.of(sheet), JobDetails.blank())) {
            pin(made, "good.csv", square(0.1, 4.2));
            pin(made, "strobe.csv", square(0.2, 3.4));
        }
    }

    private static void pin(Job job, String name, byte[] bytes) throws JobException {
        job.addCapture(CaptureMark.of(Place.parse("IC1.21"), new Anchor(1, STROBE), name, Sha256.of(bytes), bytes.length, "",
                "", Instant.parse("2026-03-01T09:30:00Z")), bytes);
    }

    @Test
    void capture_isMeasuredJudgedAndCompared() throws Exception {
        make();
        try (WindowDriver window = WindowDriver.start(HOME, folder, job)) {
            window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising"));
            press(window, "Measure");
            window.await("its figures", r -> r.shows("Frequency | 1 MHz") && r.shows("Low | 200 mV")
                    && r.shows("High | 3.4 V"));
            window.await("the verdict, by the input that listens", r -> r.shows("Clocking for 74LS")
                    && r.shows("The next stage sees both states.") && r.shows("74LS is guessed: input IC"));
            cursors(window);
            threshold(window);
            compare(window);
            assertEquals(0, window.closeWindow());
        }
    }

    /** Both cursors go to edges; a period of 1 us lies between. */
    private static void cursors(WindowDriver window) {
        Point plot = window.await("the plot", r -> r.place("plot").isPresent()).place("plot").orElseThrow();
        window.click(plot);
        window.await("the first cursor", r -> r.shows("CH1 A ") && !r.shows("B\u2212A"));
        window.key(KeyEvent.VK_RIGHT, KeyEvent.VK_CONTROL);
        window.key(KeyEvent.VK_B);
        window.await("the second cursor", r -> r.shows("B\u2212A"));
        for (int i = 0; i < 3; i++) {
            window.key(KeyEvent.VK_RIGHT, KeyEvent.VK_CONTROL);
        }
        window.await("a period between the cursors", r -> r.shows("B\u2212A 1 \u00b5s") && r.shows("1/\u0394t 1 MHz"));
        window.picture("waveform-cursors");
    }

    /** The signal never gets to 4 V. */
    private void threshold(WindowDriver window) {
        press(window, "74LS (guessed)");
        window.await("the field to have the keys", r -> r.flag("typing"));
        window.key(KeyEvent.VK_END);
        window.key(KeyEvent.VK_HOME, KeyEvent.VK_SHIFT);
        window.type("4.0V");
        window.await("the threshold to stand there", r -> r.place("4.0V").isPresent());
        window.key(KeyEvent.VK_ENTER);
        window.until("the threshold in the job", () -> "4.0V".equals(state().captures().get(1).judgedBy()));
        window.await("the other verdict", r -> r.shows("Static low for a threshold of 4 V")
                && r.shows("The next stage sees one state only."));
        window.picture("waveform-threshold");
    }

    private static void compare(WindowDriver window) {
        window.openList(window.await("the list of references", r -> r.place("compare with nothing").isPresent())
                .place("compare with nothing").orElseThrow());
        window.key(KeyEvent.VK_DOWN);
        window.key(KeyEvent.VK_ENTER);
        Report report = window.await("the difference in words", r -> r.shows("Differs from good.csv")
                && r.shows("Its amplitude is 3.2 V, that of the reference 4.1 V."));
        assertTrue(report.place("good.csv at IC1.21, same net").isPresent(), report.toString());
        press(window, "Difference");
        window.picture("waveform-compared");
    }

    private static void press(WindowDriver window, String words) {
        Report report = window.await(words + " to be in sight", r -> r.place(words).isPresent());
        window.click(report.place(words).orElseThrow());
    }

    private JobState state() {
        try (Job open = Job.openToRead(job)) {
            return open.state();
        } catch (JobException e) {
            throw new AssertionError(e.getMessage(), e);
        }
    }
}
