// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.Circumstances;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.geometry.Point;

/** Readings with conditions, put right, overruled, and told over time; see {@link WindowCase} for what is needed. */
class ReadingsWindowTest extends WindowCase {

    /** The strobe /RD where it leaves IC1.21. */
    private static final Point STROBE = new Point(450, 450);

    @Test
    void readings_ofAPlace_putRightOverruledAndToldOverTime() throws Exception {
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        try (WindowDriver window = WindowDriver.start(HOME, folder, sheet)) {
            window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising"));
            press(window, "Measure");
            window.await("the readings in sight", r -> r.place("Readings").isPresent());
            read(window, "2.2V flat @ cold [meter]", 1);
            assertEquals(new Circumstances("cold", "meter"), reading(0).circumstances());
            read(window, "3.1V", 2);
            window.await("the difference", r -> r.shows("3.1 V | 900 mV more"));

            select(window, "2.2 V flat @ cold [meter]");
            press(window, "Put it right\u2026");
            window.await("the caret in the value", r -> r.flag("typing"));
            window.key(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
            window.type("1.3V flat");
            window.key(KeyEvent.VK_ENTER);
            window.until("the reading to be put right", () -> reading(0).value().value() == 1.3);
            assertEquals(new Circumstances("cold", "meter"), reading(0).circumstances());

            window.await("the list to show it", r -> r.row("1.3 V flat @ cold [meter]").isPresent());
            select(window, "1.3 V flat @ cold [meter]");
            press(window, "Own verdict\u2026");
            window.await("the caret in the reason", r -> r.flag("typing"));
            window.type("no driver pulls it");
            window.key(KeyEvent.VK_ENTER);
            window.until("the word to count", () -> reading(0).overruled());
            assertEquals(Outcome.BAD, reading(0).verdict().outcome());
            assertTrue(reading(0).verdict().reason().endsWith("no driver pulls it"), reading(0).verdict().reason());
            window.picture("readings");
            assertEquals(0, window.closeWindow());
        }
    }

    private void read(WindowDriver window, String typed, int count) {
        Report report = window.await("the sheet", r -> r.onScreen(1, STROBE).isPresent());
        if (report.text("selected").isEmpty()) {
            window.click(report.onScreen(1, STROBE).orElseThrow());
        }
        window.await("the sheet to have the keys", r -> r.flag("focus") && !r.text("selected").isEmpty());
        window.key(KeyEvent.VK_R);
        window.await("the entry", r -> r.flag("typing"));
        window.type(typed);
        window.key(KeyEvent.VK_ENTER);
        window.until("the reading in the job", () -> state().readings().size() == count);
        window.await("the reading in the list", r -> r.shows(count == 1 ? "One reading." : count + " readings"));
    }

    private static void select(WindowDriver window, String words) {
        Report report = window.await(words, r -> r.row(words).isPresent());
        window.click(report.row(words).orElseThrow());
    }

    private ReadingMark reading(int index) {
        return state().readings().get(index);
    }
}
