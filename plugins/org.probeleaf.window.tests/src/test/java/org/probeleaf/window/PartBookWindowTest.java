// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.probeleaf.schematic.geometry.Point;

/** A part of the technician's own, with mouse and keyboard on the example; see {@link WindowCase} for what is needed. */
class PartBookWindowTest extends WindowCase {

    /** The strobe /RD where it leaves IC1.21, and the body of its gate IC5C. */
    private static final Point STROBE = new Point(450, 450);
    private static final Point GATE = new Point(940, 580);

    @Test
    void keep_aChangedType_countsInTheTraceAtOnce() throws Exception {
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        try (WindowDriver window = WindowDriver.start(HOME, folder, sheet)) {
            window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising"));
            press(window, "Part book");
            select(window, GATE);
            Report standard = window.await("the gate's type", r -> r.shows("7432 | Quad 2-input OR | standard"));
            window.click(standard.row("7432 | Quad 2-input OR | standard").orElseThrow());
            window.key(KeyEvent.VK_ENTER);
            window.await("the caret among the lines", r -> r.flag("typing"));
            sayThatPin9Drives(window);
            window.await("the lines to read well", r -> r.shows("Reads well"));
            press(window, "Keep as mine");
            window.await("the type to be one's own", r -> r.shows("7432 | Quad 2-input OR | you"));
            Path file = folder.resolve("parts/7432.txt");
            assertTrue(Files.readString(file).contains("  9 out 3A"), () -> "no out");
            window.picture("part-book");

            press(window, "Trace");
            window.await("the stage of tracing", r -> r.place("Suspects").isPresent());
            select(window, STROBE);
            window.await("the pin to drive", r -> r.shows("IC5.9  3A | drives") || r.shows("IC5.9 3A | drives"));
            press(window, "Look");
            window.await("the stage of looking", r -> r.place("Drop mine").isPresent());
            select(window, GATE);
            window.await("the gate's type again", r -> r.shows("Written by you"));
            press(window, "Drop mine");
            window.await("the standard type again", r -> r.shows("7432 | Quad 2-input OR | standard"));
            assertTrue(Files.notExists(file));
            assertEquals(0, window.closeWindow());
        }
    }

    /** Pin 9 stands in the eleventh line, after the part's, its spellings and eight pins. */
    private static void sayThatPin9Drives(WindowDriver window) {
        window.key(KeyEvent.VK_HOME, KeyEvent.VK_CONTROL);
        for (int i = 0; i < 10; i++) {
            window.key(KeyEvent.VK_DOWN);
        }
        for (int i = 0; i < 4; i++) {
            window.key(KeyEvent.VK_RIGHT);
        }
        window.key(KeyEvent.VK_DELETE);
        window.key(KeyEvent.VK_DELETE);
        window.type("out");
    }

    private static void select(WindowDriver window, Point spot) {
        window.click(window.await("the sheet", r -> r.onScreen(1, spot).isPresent()).onScreen(1, spot).orElseThrow());
        window.await("the sheet to have the keys", r -> r.flag("focus"));
    }
}
