// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Color;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.quantity.BenchValue;
import org.probeleaf.schematic.quantity.QuantityKind;

/** The photograph of a scope's screen is pinned and read otherwise, by keyboard; see {@link WindowCase} for what is needed. */
class PhotographWindowTest extends WindowCase {

    /** The strobe /RD where it leaves IC1.21. */
    private static final Point STROBE = new Point(450, 450);
    /** Three divisions of 500 mV, and a period of two and a half divisions of 20 us. */
    private static final double AMPLITUDE = 1.5;
    private static final double FREQUENCY = 20e3;
    private static final double WITHIN = 0.03;

    @Test
    void photograph_isPinnedMeasuredAndReadOtherwise() throws Exception {
        byte[] bytes = new ScreenPicture().square(2.3, -0.7, 2.5, new Color(250, 230, 30)).png();
        Path file = Files.write(folder.resolve("strobe.png"), bytes);
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        Job.create(job(), List.of(sheet), JobDetails.blank()).close();
        try (WindowDriver window = WindowDriver.start(HOME, folder, job())) {
            openDialog(window, file);
            scale(window);
            window.picture("photograph");
            window.key(KeyEvent.VK_ENTER);
            window.until("the capture in the job", () -> state().captures().size() == 1);
            assertEquals("photo volts=0.5 seconds=2.0E-5", pinned(bytes));
            press(window, "Measure");
            figures(window, AMPLITUDE);
            otherwise(window);
            window.until("the other reading in the job", () -> state().captures().get(0).readAs().contains("volts=1.0"));
            assertEquals("photo volts=1.0 seconds=2.0E-5", pinned(bytes));
            figures(window, 2 * AMPLITUDE);
            window.await("the verdict on what is read now", r -> r.shows("Clocking for 74LS"));
            window.picture("photograph-measured");
            assertEquals(0, window.closeWindow());
        }
    }

    private static void openDialog(WindowDriver window, Path file) {
        Report report = window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising")
                && r.onScreen(1, STROBE).isPresent());
        window.click(report.onScreen(1, STROBE).orElseThrow());
        window.await("the strobe to be selected", r -> !r.text("selected").isEmpty() && r.flag("focus"));
        window.key(KeyEvent.VK_C);
        window.await("the dialog that asks for a file", r -> r.place("Pin").isPresent() && r.flag("typing"));
        window.key(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        window.type(file.toString());
        window.await("a photograph to be known for one", r -> r.says("This is a photograph"));
        window.key(KeyEvent.VK_ENTER);
    }

    /** What is no scale is told in place; nothing can be pinned meanwhile. */
    private void scale(WindowDriver window) {
        window.await("the dialog of the photograph", r -> r.place("as 500mV").isPresent() && r.flag("typing")
                && r.says("Say volts and time per division."));
        window.type("500mV");
        window.key(KeyEvent.VK_TAB);
        window.type("20x");
        window.await("what is wrong with it", r -> r.says("20x"));
        window.key(KeyEvent.VK_ENTER);
        window.key(KeyEvent.VK_BACK_SPACE);
        window.type("us");
        window.await("the figures", r -> near(r, "Amplitude ", QuantityKind.VOLTAGE_DC, AMPLITUDE)
                && r.says("The graticule of 10x8 divisions"));
        assertEquals(0, state().captures().size());
    }

    /** By the menu of the list of captures; the field of volts has the keys first. */
    private static void otherwise(WindowDriver window) {
        Report report = window.await("the capture in its list", r -> r.shows("strobe.png | IC1.21"));
        window.rightClick(report.row("strobe.png | IC1.21").orElseThrow());
        window.await("the menu", r -> r.flag("menu"));
        window.key(KeyEvent.VK_DOWN);
        window.key(KeyEvent.VK_ENTER);
        window.await("the scale as it was said", r -> r.place("500 mV").isPresent() && r.place("20 \u00b5s").isPresent()
                && r.flag("typing") && r.place("Read so").isPresent() && r.says("was found at"));
        corner(window);
        press(window, "500 mV");
        window.await("the field to have the keys", r -> r.flag("typing"));
        window.key(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        window.type("1V");
        window.await("the other figures", r -> near(r, "Amplitude ", QuantityKind.VOLTAGE_DC, 2 * AMPLITUDE));
        window.key(KeyEvent.VK_ENTER);
    }

    /** A corner is moved by keys, and found again. */
    private static void corner(WindowDriver window) {
        press(window, "photograph");
        window.await("the picture to have the keys", r -> !r.flag("typing"));
        window.key(KeyEvent.VK_2);
        window.key(KeyEvent.VK_RIGHT);
        window.await("the graticule where it was marked", r -> r.says("as marked"));
        window.picture("photograph-corner");
        press(window, "&Find corners");
        window.await("the graticule found", r -> r.says("was found at"));
    }

    /** In the view of waveforms. */
    private static void figures(WindowDriver window, double amplitude) {
        window.await("amplitude and frequency", r -> near(r, "Amplitude | ", QuantityKind.VOLTAGE_DC, amplitude)
                && near(r, "Frequency | ", QuantityKind.FREQUENCY, FREQUENCY));
    }

    /** Whether a row or a label gives a value near another, as in {@code Amplitude | 1.5 V | ± 20 mV}. */
    private static boolean near(Report report, String name, QuantityKind kind, double value) {
        return report.rowsAfter(name).map(rest -> rest.split("[|\u00b1]")[0].strip()).filter(words -> words.matches("\\d.*"))
                .anyMatch(words -> Math.abs(BenchValue.parse(words, kind).quantity().value() / value - 1) < WITHIN);
    }

    /** Checks the only capture and tells how it is read. */
    private String pinned(byte[] bytes) throws JobException {
        try (Job open = Job.openToRead(job())) {
            assertEquals("IC1.21", open.state().captures().get(0).place().text());
            assertArrayEquals(bytes, open.captureBytes(open.state().captures().get(0)));
            return open.state().captures().get(0).readAs();
        }
    }
}
