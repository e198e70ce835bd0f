// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.schematic.geometry.Point;

/** A part of the technician's own, with mouse and keyboard on the example; see {@link WindowTest} for what is needed. */
class PartBookWindowTest {

    private static final Path HOME = Path.of(System.getProperty("probeleaf.workbench", "none"));
    private static final Path EXAMPLE = Path.of(System.getProperty("probeleaf.example", "none"));
    /** The strobe /RD where it leaves IC1.21, and the body of its gate IC5C. */
    private static final Point STROBE = new Point(450, 450);
    private static final Point GATE = new Point(940, 580);

    @TempDir
    Path folder;

    @BeforeAll
    static void needsDisplay() {
        boolean required = "required".equals(System.getenv("PROBELEAF_WINDOW_TESTS"));
        boolean there = System.getenv("DISPLAY") != null && Files.isExecutable(HOME.resolve("launch"));
        assumeTrue(there || required, "there is no display, or the window is not assembled: ./probeleaf test has both");
    }

    @Test
    void keep_aChangedType_countsInTheTraceAtOnce() throws Exception {
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        try (WindowDriver window = WindowDriver.start(HOME, folder, sheet)) {
            window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising"));
            press(window, "Part book");
            select(window, GATE);
            Report standard = window.await("the gate's type", r -> r.shows("7432 | Quad 2-input OR | standard"));
            window.click(standard.row("7432 | Quad 2-input OR | standard").orElseThrow());
            press(window, "Keep as mine");
            Path file = folder.resolve("parts/7432.txt");
            window.await("the type to be one's own", r -> r.shows("7432 | Quad 2-input OR | you"));
            assertTrue(Files.readString(file).contains("unit C OR 9,10 > 8"));

            Files.writeString(file, Files.readString(file).replace("  9 in 3A", "  9 oc 3A"));
            press(window, "Drop mine");
            window.await("the standard type again", r -> r.shows("7432 | Quad 2-input OR | standard"));
            assertTrue(Files.notExists(file));
            window.picture("part-book");

            press(window, "New");
            window.await("a type begun", r -> r.shows("Reads well") || r.shows("From the standard book"));
            press(window, "Keep as mine");
            window.until("the new type in a file", () -> Files.exists(folder.resolve("parts/NAME.txt")));
            select(window, STROBE);
            window.key(KeyEvent.VK_ESCAPE);
            assertEquals(0, window.closeWindow());
        }
    }

    private static void press(WindowDriver window, String words) {
        Report report = window.await(words + " to be in sight", r -> r.place(words).isPresent());
        window.click(report.place(words).orElseThrow());
    }

    private static void select(WindowDriver window, Point spot) {
        window.click(window.await("the sheet", r -> r.onScreen(1, spot).isPresent()).onScreen(1, spot).orElseThrow());
        window.await("the sheet to have the keys", r -> r.flag("focus"));
    }
}
