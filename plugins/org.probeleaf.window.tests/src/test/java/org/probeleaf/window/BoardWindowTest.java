// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.probeleaf.job.JobState;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/** What is done to the board, with mouse and keyboard on the example; see {@link WindowCase} for what is needed. */
class BoardWindowTest extends WindowCase {

    /** Where the strobe /RD ends at IC5.9; the body of C17; the output IC5.3 and the input IC6.9. */
    private static final Point GATE_INPUT = new Point(900, 570);
    private static final Point OUTPUT = new Point(735, 420);
    private static final Point INPUT = new Point(540, 550);

    @Test
    void lift_forNow_isHandedOverOnlyWhenAcceptedOrUndone() throws Exception {
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        Path out = folder.resolve("board-handover").resolve("board-marked.pdf");
        try (WindowDriver window = WindowDriver.start(HOME, folder, sheet)) {
            Report report = window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising"));
            window.click(report.onScreen(1, GATE_INPUT).orElseThrow());
            window.await("the pin to be selected", r -> !r.text("selected").isEmpty() && r.flag("focus"));
            window.key(KeyEvent.VK_L);
            window.until("the lifted pin in the job", () -> state().boards().open().size() == 1);
            assertEquals(new BoardChange.Lift(new Place.OfPin("IC5", "9")), state().boards().open().get(0).change());
            assertTrue(state().boards().thisBoard().isLifted("IC5", "9"));
            window.await("the pin to be on no net", r -> r.text("selected").isEmpty() && r.text("correcting").isEmpty());
            window.picture("board-lifted");

            window.key(KeyEvent.VK_H, KeyEvent.VK_CONTROL);
            window.await("the refusal", r -> r.text("trouble").contains("IC5.9 lifted"));
            assertFalse(Files.exists(out));
            window.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
            window.until("the pin down again", () -> state().boards().open().isEmpty());
            window.await("the pin on its net", r -> !r.text("selected").isEmpty());
            window.key(KeyEvent.VK_H, KeyEvent.VK_CONTROL);
            window.await("the sheets handed over", r -> r.text("trouble").contains("board-marked.pdf"));
            assertTrue(Files.size(out) > 0);

            window.key(KeyEvent.VK_Y, KeyEvent.VK_CONTROL);
            window.until("the pin lifted once more", () -> state().boards().open().size() == 1);
            assertEquals(0, window.closeWindow());
        }
    }

    @Test
    void link_ofTwoPins_makesOneNet() throws Exception {
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        try (WindowDriver window = WindowDriver.start(HOME, folder, sheet)) {
            Report report = window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising"));
            window.click(report.onScreen(1, OUTPUT).orElseThrow());
            String output = window.await("the output", r -> !r.text("selected").isEmpty() && r.flag("focus"))
                    .text("selected");
            window.key(KeyEvent.VK_B);
            window.await("the first end taken", r -> r.text("correcting").equals("LINK 1"));
            window.click(report.onScreen(1, INPUT).orElseThrow());
            window.until("the link in the job", () -> state().boards().open().size() == 1);
            JobState state = state();
            assertEquals(new BoardChange.Link(new Place.OfPin("IC5", "3"), new Place.OfPin("IC6", "9")),
                    state.boards().open().get(0).change());
            assertEquals(net(state, "IC5", "3"), net(state, "IC6", "9"));
            window.picture("board-link");
            assertFalse(output.isEmpty());
            assertEquals(0, window.closeWindow());
        }
    }

    private static String net(JobState state, String ref, String number) {
        return state.onBench().part(ref).orElseThrow().pins().stream().filter(p -> number.equals(p.number()))
                .findFirst().orElseThrow().net();
    }
}
