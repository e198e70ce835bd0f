// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.job.change.AddCorrection;
import org.probeleaf.job.change.AddNote;
import org.probeleaf.job.change.RemoveCorrection;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Outcome.State;
import org.probeleaf.recognition.correction.Spot;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.PartUnit;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.netlist.Sheet;
import org.probeleaf.schematic.netlist.SheetKind;
import org.probeleaf.schematic.netlist.Wire;
import org.probeleaf.schematic.place.Place;

class JobCorrectionsTest {

    private static final Instant WHEN = Instant.parse("2026-03-01T09:30:00Z");
    private static final Spot ONE = new Spot(Place.parse("U1.1"), 1, new Point(10, 10));
    private static final Spot TWO = Spot.of(1, new Point(50, 30.5));

    @TempDir
    Path folder;
    private Path file;

    @BeforeEach
    void makeJob() throws IOException {
        file = folder.resolve("case.probeleaf");
        try (Job job = Job.create(file, List.of(TestSheets.plain(folder, "board.pdf", 1)), JobDetails.blank())) {
            job.setNetlist(netlist("N1", "N2"));
        }
    }

    /** Two wires, one above the other, each with a pin of U1. */
    private static Netlist netlist(String upper, String lower) {
        return new Netlist("board.pdf", "00", List.of(new Sheet(1, 300, 200, SheetKind.VECTOR)),
                List.of(new Part("U1", null, List.of(new PartUnit(null, 1, new Box(0, 5, 8, 35))),
                        List.of(Pin.drawn("1", null, null, 1, new Point(10, 10), upper),
                                Pin.drawn("2", null, null, 1, new Point(10, 30), lower)))),
                List.of(wire(upper, 10), wire(lower, 30)), List.of());
    }

    private static Net wire(String id, double y) {
        return new Net(id, null, List.of(1), List.of(new Wire(1, List.of(new Point(10, y), new Point(90, y)))),
                List.of(), List.of(), 0.98);
    }

    private static Correction join() {
        return new Correction.Join(List.of(ONE, TWO));
    }

    private static long nets(Job job) {
        return job.state().netlist().parts().get(0).pins().stream().map(Pin::net).distinct().count();
    }

    @Test
    void correct_isInTheNetlistAndTheRecognisedOneStays() throws IOException {
        try (Job job = Job.open(file)) {
            assertEquals(State.DONE, job.correct(join(), WHEN).state());
            assertEquals(1, nets(job));
            assertEquals(netlist("N1", "N2"), job.state().sheetReading().recognised());
            assertEquals("join of U1.1 and 1@50,30.5", job.state().undoName());
        }
    }

    @Test
    void undo_restoresExactly() throws IOException {
        try (Job job = Job.open(file)) {
            Netlist before = job.state().netlist();
            job.correct(join(), WHEN);
            Netlist after = job.state().netlist();
            assertEquals(Optional.of("join of U1.1 and 1@50,30.5"), job.undo());
            assertEquals(before, job.state().netlist());
            job.redo();
            assertEquals(after, job.state().netlist());
        }
    }

    @Test
    void setNetlist_anotherReading_getsTheCorrectionsToo() throws IOException {
        try (Job job = Job.open(file)) {
            job.correct(join(), WHEN);
            job.setNetlist(netlist("N77", "N5"));
            assertEquals(1, nets(job));
            job.undo();
            assertEquals(2, nets(job));
        }
    }

    @Test
    void setNetlist_withoutThePlace_keepsTheCorrectionAndDoubtsIt() throws IOException {
        try (Job job = Job.open(file)) {
            job.correct(join(), WHEN);
            job.setNetlist(Netlist.empty());
            assertEquals(1, job.state().sheetReading().corrections().size());
            assertEquals("correction-without-place", job.state().netlist().doubts().get(0).code());
            job.setNetlist(netlist("N1", "N2"));
            assertEquals(1, nets(job));
            assertEquals(List.of(), job.state().netlist().doubts());
        }
    }

    @Test
    void correct_whatIsSoOrNowhere_isRefusedWithASentence() throws IOException {
        try (Job job = Job.open(file)) {
            JobState before = job.state();
            assertTrue(refusal(job, new Correction.Join(List.of(ONE, Spot.of(1, new Point(60, 10)))))
                    .contains("on one net, N1"));
            assertTrue(refusal(job, new Correction.Split(Spot.of(1, new Point(200, 100))))
                    .contains("there is no wire at 1@200,100"));
            assertEquals(before, job.state());
        }
    }

    private static String refusal(Job job, Correction correction) {
        return assertThrows(IllegalArgumentException.class, () -> job.correct(correction, WHEN)).getMessage();
    }

    @Test
    void otherChanges_keepTheCorrectedNetlist() throws IOException {
        try (Job job = Job.open(file)) {
            job.correct(join(), WHEN);
            Netlist corrected = job.state().netlist();
            job.apply(new AddNote(NoteMark.of(ONE.place(), new Anchor(1, ONE.at()), "dry joint", WHEN)));
            assertSame(corrected, job.state().netlist());
        }
    }

    @Test
    void removeCorrection_inTheMiddle_leavesTheOthers() throws IOException {
        try (Job job = Job.open(file)) {
            job.correct(join(), WHEN);
            job.correct(new Correction.Name(ONE, "CLK"), WHEN);
            job.apply(new RemoveCorrection(job.state().sheetReading().corrections().get(0).id(), WHEN));
            assertEquals(2, nets(job));
            assertEquals("CLK", job.state().netlist().nets().get(0).name());
            assertEquals("withdrawal of join of U1.1 and 1@50,30.5", job.state().undoName());
        }
    }

    @Test
    void everyKind_survivesClosingUndoAndRedo() throws IOException {
        Box box = new Box(1, 2.5, 30, 40);
        List<Correction> kinds = List.of(join(), new Correction.Split(TWO), new Correction.Detach(List.of(ONE, TWO)),
                new Correction.Junction(TWO, true), new Correction.Junction(TWO, false),
                new Correction.Name(ONE, "/RD"), new Correction.AddPin(TWO, "U1", "3", null),
                new Correction.AddPin(TWO, "U1", null, "\u03a6"), new Correction.MovePin(ONE, TWO),
                new Correction.EditPin(ONE, "", "Q"), new Correction.EditPin(ONE, "4", null),
                new Correction.RemovePin(ONE), new Correction.AddPart(1, box, "R9", "4k7", null),
                new Correction.AddPart(1, box, "IC3", null, "B"), new Correction.EditPart(ONE, "U2", null),
                new Correction.EditPart(ONE, null, ""), new Correction.RemovePart(ONE),
                new Correction.AssignUnit(ONE, "IC3", "B"), new Correction.AssignUnit(ONE, "IC3", null),
                new Correction.Ignore(2, box), new Correction.Confirm(TWO));
        assertEquals(Correction.class.getPermittedSubclasses().length,
                kinds.stream().map(Correction::getClass).distinct().count(), "a kind is missing here");
        JobState before;
        try (Job job = Job.open(file)) {
            for (Correction c : kinds) {
                job.apply(new AddCorrection(KeptCorrection.of(c, WHEN)));
            }
            before = job.state();
        }
        try (Job job = Job.open(file)) {
            assertEquals(before, job.state());
            assertEquals(List.of(), job.check());
            List<KeptCorrection> all = new ArrayList<>(before.sheetReading().corrections());
            assertEquals(kinds, all.stream().map(KeptCorrection::correction).toList());
            while (job.undo().isPresent()) {
                all.remove(all.size() - 1);
                assertEquals(all, job.state().sheetReading().corrections());
            }
            while (job.redo().isPresent()) {
                assertTrue(job.state().sheetReading().corrections().size() <= kinds.size());
            }
            assertEquals(before.netlist(), job.state().netlist());
        }
    }
}
