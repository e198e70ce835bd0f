// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobState;
import org.probeleaf.recognition.Progress;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PartBook;

/** Corrections made with mouse and keyboard on the example; see {@link WindowCase} for what is needed. */
class CorrectionWindowTest extends WindowCase {

    /** Where the branch to IC5.9 leaves the wire of /RD, with a junction; on that wire; and on the branch. */
    private static final Point TEE = new Point(830, 450);
    private static final Point STROBE = new Point(720, 450);
    private static final Point BRANCH = new Point(830, 520);

    private WindowDriver start() throws Exception {
        Path sheet = Files.copy(EXAMPLE, folder.resolve("board.pdf"));
        return WindowDriver.start(HOME, folder, sheet);
    }

    private static Report read(WindowDriver window) {
        Report report = window.await("the sheets to be read", r -> r.flag("recognised") && !r.flag("recognising"));
        window.click(report.onScreen(1, new Point(600, 140)).orElseThrow());
        return window.await("the sheet to have the keyboard", r -> r.flag("focus"));
    }

    @Test
    void junctionTakenAway_previewedClickedUndone_isInTheJobAndOutlivesAnotherReading() throws Exception {
        try (WindowDriver window = start()) {
            Report report = read(window);
            String strobe = pin(state(), "IC1", "21").net();
            assertEquals(strobe, pin(state(), "IC5", "9").net());

            window.key(KeyEvent.VK_D, KeyEvent.VK_SHIFT);
            window.await("the task in hand", r -> r.text("correcting").equals("NO_JUNCTION 0"));
            window.move(report.onScreen(1, STROBE).orElseThrow());
            window.move(report.onScreen(1, TEE).orElseThrow());
            window.await("what would come of it", r -> r.text("trial").equals("DONE"));
            assertEquals(0, corrections().size(), "nothing is corrected before the click");
            window.picture("correction-preview");
            window.click(report.onScreen(1, TEE).orElseThrow());
            window.until("the correction in the job", () -> corrections().size() == 1);
            assertTrue(!strobe.equals(pin(state(), "IC5", "9").net()), "IC5.9 has come off /RD");

            String off = pin(state(), "IC5", "9").net();
            window.await("the task done", r -> r.text("correcting").isEmpty());
            window.click(report.onScreen(1, BRANCH).orElseThrow());
            window.await("the branch to be a net of its own", r -> r.text("selected").equals(off));

            window.key(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
            window.until("the correction gone", () -> corrections().isEmpty());
            window.await("the branch to be on /RD again", r -> r.text("selected").equals(strobe));
            window.key(KeyEvent.VK_Y, KeyEvent.VK_CONTROL);
            window.until("the correction back", () -> corrections().size() == 1);
            assertEquals(0, window.closeWindow());
        }
        try (Job again = Job.open(job())) {
            again.setNetlist(again.recognise(PartBook.standard(), Progress.NONE));
            assertEquals(List.of(), again.state().netlist().doubts());
            assertTrue(!pin(again.state(), "IC1", "21").net().equals(pin(again.state(), "IC5", "9").net()));
        }
    }

    @Test
    void join_twoClicks_makesOneNetAndEscapeCorrectsNothing() throws Exception {
        try (WindowDriver window = start()) {
            Report report = read(window);
            window.key(KeyEvent.VK_J);
            window.await("the task in hand", r -> r.text("correcting").equals("JOIN 0"));
            window.click(report.onScreen(1, STROBE).orElseThrow());
            window.await("the first place", r -> r.text("correcting").equals("JOIN 1"));
            window.key(KeyEvent.VK_ESCAPE);
            window.await("the task let go", r -> r.text("correcting").isEmpty());

            Pin clock = pin(state(), "IC6", "6");
            window.key(KeyEvent.VK_J);
            window.await("the task in hand", r -> r.text("correcting").equals("JOIN 0"));
            window.click(report.onScreen(1, new Point(600, 140)).orElseThrow());
            window.await("a word that there is nothing", r -> r.flag("misses") && r.text("correcting").equals("JOIN 0"));
            window.click(report.onScreen(1, STROBE).orElseThrow());
            window.await("only the wire taken", r -> !r.flag("misses") && r.text("correcting").equals("JOIN 1"));
            window.click(report.onScreen(clock.page(), clock.at()).orElseThrow());
            window.until("the correction in the job", () -> corrections().size() == 1);
            assertTrue(corrections().get(0) instanceof Correction.Join);
            assertEquals(pin(state(), "IC1", "21").net(), pin(state(), "IC6", "6").net());
            assertEquals(0, window.closeWindow());
        }
    }

    @Test
    void partMissed_drawnAndLettered_isOnTheList() throws Exception {
        try (WindowDriver window = start()) {
            Report report = read(window);
            // The menu at a bare spot: a pin, a part, a region.
            window.rightClick(report.onScreen(1, new Point(600, 140)).orElseThrow());
            window.await("the menu", r -> r.flag("menu"));
            window.key(KeyEvent.VK_DOWN);
            window.key(KeyEvent.VK_DOWN);
            window.key(KeyEvent.VK_ENTER);
            window.await("the task in hand", r -> r.text("correcting").equals("ADD_PART 0"));
            window.click(report.onScreen(1, new Point(280, 690)).orElseThrow());
            window.await("one corner", r -> r.text("correcting").equals("ADD_PART 1"));
            window.click(report.onScreen(1, new Point(310, 705)).orElseThrow());
            window.await("the fields", r -> r.text("correcting").equals("ADD_PART 2") && r.flag("typing"));
            window.type("R99");
            window.key(KeyEvent.VK_TAB);
            window.type("4k7");
            window.key(KeyEvent.VK_ENTER);
            window.until("the correction in the job", () -> corrections().size() == 1);
            Part part = state().netlist().part("R99").orElseThrow();
            assertEquals("4k7", part.value());
            assertEquals(30, part.units().get(0).box().width(), 3);
            assertEquals(0, window.closeWindow());
        }
    }

    private List<Correction> corrections() {
        return state().sheetReading().corrections().stream().map(k -> k.correction()).toList();
    }

    private static Pin pin(JobState state, String ref, String number) {
        Netlist netlist = state.netlist();
        return netlist.part(ref).orElseThrow().pins().stream().filter(p -> number.equals(p.number())).findFirst()
                .orElseThrow();
    }
}
