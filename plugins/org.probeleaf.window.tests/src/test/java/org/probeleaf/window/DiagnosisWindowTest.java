// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.geometry.Point;

/**
 * From a pin that looks wrong to the parts that may be to blame, with mouse and keyboard on the example; see
 * {@link WindowCase} for what is needed.
 */
class DiagnosisWindowTest extends WindowCase {

    /** The strobe /RD where it leaves IC1.21, where it ends at its gate, IC5.9, and the gate's output, IC5.8. */
    private static final Point STROBE = new Point(450, 450);
    private static final Point GATE_INPUT = new Point(900, 570);
    private static final Point GATE_OUTPUT = new Point(985, 580);

    @Test
    void strobe_followedLiftedAndRead_leadsToSuspectsAndBack() throws Exception {
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        try (WindowDriver window = WindowDriver.start(HOME, folder, sheet)) {
            window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising"));
            press(window, "Trace");
            window.await("the stage of tracing", r -> r.place("Suspects").isPresent());
            follow(window);
            lift(window);
            suspect(window);
            putBack(window);
            assertEquals(0, window.closeWindow());
        }
    }

    private static void select(WindowDriver window, Point spot) {
        window.click(window.await("the sheet", r -> r.onScreen(1, spot).isPresent()).onScreen(1, spot).orElseThrow());
        window.await("the sheet to have the keys", r -> r.flag("focus"));
    }

    private static void follow(WindowDriver window) {
        select(window, STROBE);
        window.await("the strobe's pins", r -> r.shows("IC1.21") && r.shows("IC5.9") && r.number("route") == 1);
        window.key(KeyEvent.VK_G);
        window.key(KeyEvent.VK_G);
        window.await("what lies behind the gates", r -> r.number("route") > 2 && r.shows("/INP")
                && r.shows("through gate C of IC5"));
        window.key(KeyEvent.VK_PERIOD);
        window.await("the first net on the way", r -> r.number("step") == 1);
        window.picture("diagnosis-followed");
    }

    private void lift(WindowDriver window) {
        select(window, GATE_INPUT);
        window.await("the strobe once more", r -> r.number("step") == 0 && r.shows("IC1.21"));
        window.key(KeyEvent.VK_L);
        window.until("the lifted pin in the job", () -> state().boards().open().size() == 1);
        window.await("both sides to measure", r -> r.place("At the pin").isPresent() && r.place("At the pad").isPresent());
    }

    private void suspect(WindowDriver window) {
        select(window, GATE_OUTPUT);
        window.key(KeyEvent.VK_R);
        window.await("the entry", r -> r.flag("typing"));
        window.type("bad");
        window.key(KeyEvent.VK_ENTER);
        Report first = window.await("the first suspects", r -> r.text("suspects").contains("IC5")
                && r.shows("Probe next: " + r.text("next")));
        assertFalse(first.text("next").isEmpty());
        window.picture("diagnosis-suspects");
        press(window, "Good");
        Report second = window.await("other suspects", r -> !r.text("suspects").equals(first.text("suspects")));
        assertTrue(second.text("suspects").contains("IC5"), second.text("suspects"));
        assertNotEquals(first.text("next"), second.text("next"));
        assertEquals(2, state().readings().size());
        assertEquals(first.text("next"), state().readings().get(1).place().text());
        window.picture("diagnosis-narrowed");
    }

    private void putBack(WindowDriver window) {
        press(window, "Put-back");
        window.await("the lift to be named", r -> r.shows("Put IC5.9 back on its pad")
                && r.place("Put-back (1)").isPresent());
        window.picture("diagnosis-put-back");
        window.key(KeyEvent.VK_H, KeyEvent.VK_CONTROL);
        window.await("the refusal", r -> r.text("trouble").contains("IC5.9 lifted"));
        assertFalse(Files.exists(folder.resolve("board-handover")));
        Report report = window.await("the list", r -> r.shows("Put IC5.9 back on its pad"));
        window.click(report.row("Put IC5.9 back on its pad").orElseThrow());
        press(window, "It is put back");
        window.until("nothing to put back", () -> state().boards().open().isEmpty());
        window.await("the empty list", r -> r.place("Put-back").isPresent());
        window.key(KeyEvent.VK_H, KeyEvent.VK_CONTROL);
        window.await("the sheets handed over", r -> r.text("trouble").contains("board-marked.pdf"));
    }
}
