// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.probeleaf.job.Job;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.schematic.geometry.Point;

/** A capture in its view, with mouse and keyboard; see {@link WindowCase} for what is needed. */
class WaveformWindowTest extends WindowCase {

    /** The strobe /RD where it leaves IC1.21; IC5, a 74LS32, listens to it. */
    private static final Point STROBE = new Point(450, 450);

    /** A square wave of 1 MHz between two levels, 20 samples to a period. */
    private static byte[] square(double low, double high) {
        StringBuilder text = new StringBuilder("Time (s),CH1 (V)\n");
        for (int i = 0; i < 400; i++) {
            text.append(String.format(Locale.ROOT, "%.9e,%.3f%n", i * 50e-9, i % 20 < 10 ? low : high));
        }
        return text.toString().getBytes(StandardCharsets.US_ASCII);
    }

    /** From the sheet: the strobe is selected, C asks for the file, Enter pins it. */
    private void pin(WindowDriver window, String name, byte[] bytes, int count) throws Exception {
        Path file = Files.write(folder.resolve(name), bytes);
        Report report = window.await("the sheet", r -> r.onScreen(1, STROBE).isPresent());
        window.click(report.onScreen(1, STROBE).orElseThrow());
        window.await("the strobe to be selected", r -> !r.text("selected").isEmpty() && r.flag("focus"));
        window.key(KeyEvent.VK_C);
        window.await("the dialog", r -> r.place("Pin").isPresent() && r.flag("typing"));
        window.key(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        window.type(file.toString());
        window.await("the file to be understood", r -> r.place(file.toString()).isPresent() && r.shows("400 samples in 19.95 \u00b5s."));
        window.key(KeyEvent.VK_ENTER);
        window.until("the capture in the job", () -> state().captures().size() == count);
        window.await("the window without the dialog", r -> r.place("Pin").isEmpty());
    }

    @Test
    void capture_pinnedFromTheSheet_isMeasuredJudgedAndCompared() throws Exception {
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        Job.create(job(), List.of(sheet), JobDetails.blank()).close();
        try (WindowDriver window = WindowDriver.start(HOME, folder, job())) {
            window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising"));
            pin(window, "good.csv", square(0.1, 4.2), 1);
            pin(window, "strobe.csv", square(0.2, 3.4), 2);
            assertEquals("IC1.21", state().captures().get(1).place().text());
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
}
