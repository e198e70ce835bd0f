// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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
import org.probeleaf.job.JobException;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.schematic.geometry.Point;

/** A capture is pinned from the sheet and its reading put right, by keyboard; see {@link WindowCase} for what is needed. */
class CapturePinWindowTest extends WindowCase {

    /** The strobe /RD where it leaves IC1.21. */
    private static final Point STROBE = new Point(450, 450);

    /** Two columns of volts with a decimal comma; nothing tells how far apart the samples are. */
    private static byte[] recording() {
        StringBuilder text = new StringBuilder("Tern bench recorder;\n/RD (mV);R&D (V)\n");
        for (int i = 0; i < 400; i++) {
            text.append(String.format(Locale.ROOT, "%.1f;%.3f%n", i % 20 < 14 ? 3300.0 : 200.0, i % 7 * 0.5).replace('.', ','));
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void capture_isSeenPutRightAndPinned() throws Exception {
        byte[] bytes = recording();
        Path file = Files.write(folder.resolve("strobe.csv"), bytes);
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        Job.create(job(), List.of(sheet), JobDetails.blank()).close();
        try (WindowDriver window = WindowDriver.start(HOME, folder, job())) {
            Report report = window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising")
                    && r.onScreen(1, STROBE).isPresent());
            window.click(report.onScreen(1, STROBE).orElseThrow());
            window.await("the strobe to be selected", r -> !r.text("selected").isEmpty() && r.flag("focus"));
            window.key(KeyEvent.VK_C);
            window.await("the dialog with the newest capture beside the job", r -> r.place(file.toString()).isPresent()
                    && r.place("Pin").isPresent());
            wrongName(window);
            window.key(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
            window.type(file.toString());
            window.await("what was understood", r -> r.shows("It is delimited text. 2 traces: /RD, R&&D; 400 samples in 399 s.")
                    && r.shows("2 | names | /RD (mV) | R&D (V)") && r.shows("3 | data | 3300,0 | 0,000")
                    && r.place("as found: semicolon").isPresent() && r.place("as found: no column").isPresent());
            window.key(KeyEvent.VK_I, KeyEvent.VK_ALT);
            window.type("abc");
            window.await("what is wrong with it", r -> r.place("The distance of samples is a time or a rate, as 2us or 500kHz.")
                    .isPresent());
            window.key(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
            window.type("50ns");
            window.await("the times put right", r -> r.shows("400 samples in 19.95 \u00b5s."));
            window.picture("capture-pin");
            window.key(KeyEvent.VK_ENTER);
            window.until("the capture in the job", () -> state().captures().size() == 1);
            pinned(bytes);
            window.await("the window without the dialog", r -> r.place("Pin").isEmpty());
            assertEquals(0, window.closeWindow());
        }
    }

    /** A name that is none is told in place; nothing can be pinned meanwhile. */
    private void wrongName(WindowDriver window) {
        window.key(KeyEvent.VK_END);
        window.type("x");
        window.await("the name to be refused", r -> r.place("There is no such file.").isPresent());
        window.key(KeyEvent.VK_ENTER);
        assertTrue(state().captures().isEmpty());
    }

    private void pinned(byte[] bytes) throws JobException {
        try (Job open = Job.openToRead(job())) {
            assertEquals("interval=5.0E-8", open.state().captures().get(0).readAs());
            assertEquals("IC1.21", open.state().captures().get(0).place().text());
            assertArrayEquals(bytes, open.captureBytes(open.state().captures().get(0)));
        }
    }
}
