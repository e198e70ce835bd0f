// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.probeleaf.drawing.SheetException;
import org.probeleaf.job.JobException.Problem;
import org.probeleaf.job.change.AddLabel;
import org.probeleaf.job.change.AddNote;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.change.EditLabel;
import org.probeleaf.job.change.MoveCard;
import org.probeleaf.job.change.RemoveNote;
import org.probeleaf.job.change.SetDetails;
import org.probeleaf.job.details.Hazard;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.Offset;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.recognition.Progress;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;

class JobTest {

    private static final Instant WHEN = Instant.parse("2026-03-01T09:30:00Z");
    private static final Anchor SPOT = new Anchor(1, new Point(40.25, 30));

    @TempDir
    Path folder;
    private Path file;
    private Path sheet;

    @BeforeEach
    void makeSheet() throws IOException {
        file = folder.resolve("case.probeleaf");
        sheet = TestSheets.plain(folder, "board.pdf", 2);
    }

    private Job create() throws JobException {
        return Job.create(file, List.of(sheet), JobDetails.blank().withUnit("Tide logger"));
    }

    private static LabelMark label(String text) {
        return LabelMark.of(Place.parse("1@40.25,30"), SPOT, text, WHEN);
    }

    @Test
    void create_oneSheet_keepsItsBytesAndHead() throws IOException {
        try (Job job = create()) {
            assertEquals("Tide logger", job.state().details().unit());
            assertEquals(1, job.state().sheets().size());
            assertEquals(2, job.state().pageCount());
            assertArrayEquals(Files.readAllBytes(sheet), job.sheetBytes(0));
            assertNull(job.state().netlist());
            assertEquals(List.of(), job.check());
        }
    }

    @Test
    void close_afterChanges_leavesOneFile() throws IOException {
        try (Job job = create()) {
            job.apply(new AddLabel(label("/RD")));
        }
        try (var files = Files.list(folder)) {
            assertEquals(List.of("board.pdf", "case.probeleaf"),
                    files.map(f -> f.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void create_severalSheets_pagesCountOn() throws IOException {
        Path second = TestSheets.plain(folder, "second.pdf", 3);
        try (Job job = Job.create(file, List.of(sheet, second), JobDetails.blank())) {
            assertEquals(3, job.state().sheets().get(1).firstPage());
            assertEquals(1, job.state().sheetOf(5).orElseThrow().index());
            Netlist read = job.recognise(PartBook.standard(), Progress.NONE);
            assertEquals(List.of(1, 2, 3, 4, 5), read.sheets().stream().map(s -> s.page()).toList());
            assertEquals("board.pdf, second.pdf", read.file());
        }
    }

    @Test
    void create_fileIsThere_refused() throws IOException {
        Files.writeString(file, "something");
        assertEquals(Problem.EXISTS, problem(() -> create().close()));
        assertEquals("something", Files.readString(file));
    }

    @Test
    void create_sheetCannotBeRead_refusedAndNothingLeft() throws IOException {
        Files.writeString(sheet, "no sheet");
        JobException e = assertThrows(JobException.class, this::create);
        assertEquals(Problem.SHEET, e.problem());
        assertTrue(e.getCause() instanceof SheetException);
        assertFalse(Files.exists(file));
    }

    @Test
    void create_lockedSheet_opensWithThePasswordKept() throws IOException {
        Path locked = TestSheets.locked(folder, "locked.pdf", "kelp");
        assertEquals(Problem.SHEET, problem(() -> Job.create(file, List.of(locked), JobDetails.blank()).close()));
        Job.create(file, List.of(locked, sheet), JobDetails.blank(), "kelp").close();
        try (Job job = Job.open(file)) {
            assertEquals("kelp", job.sheetPassword(0));
            assertNull(job.sheetPassword(1));
            assertEquals(3, job.recognise(PartBook.standard(), Progress.NONE).sheets().size());
        }
    }

    @Test
    void reopen_everyKindOfMark_sameState() throws IOException {
        JobState before;
        try (Job job = create()) {
            job.setNetlist(job.recognise(PartBook.standard(), Progress.NONE));
            LabelMark label = label("/RD");
            NoteMark note = NoteMark.of(Place.parse("IC4"), SPOT, "leg lifted\nby hand", WHEN);
            job.apply(new AddLabel(label));
            job.apply(new AddNote(note));
            job.apply(new AddReading(ReadingMark.of(Place.parse("IC4.21"), SPOT, "2.2V flat", "probe x10",
                    Expectation.parse("74LS"), WHEN)));
            job.apply(new AddReading(ReadingMark.of(Place.parse("net:+5V"), SPOT, "5.03", "",
                    Expectation.parse("5V\u00b15%"), WHEN)));
            job.apply(new AddReading(ReadingMark.of(Place.parse("net:+5V"), SPOT, "3k3", "",
                    Expectation.parse("3k..3.6k"), WHEN)));
            job.apply(new EditLabel(label.id(), "/RDX", WHEN));
            job.apply(new MoveCard(note.id(), new Offset(3, -4.5), WHEN));
            job.apply(new SetDetails(job.state().details().withHazards(List.of(Hazard.HEAT, Hazard.MAINS)), WHEN));
            job.undo();
            before = job.state();
        }
        try (Job job = Job.open(file)) {
            assertEquals(before, job.state());
            assertEquals("details of the job", job.state().redoName());
            assertEquals("move of note \u201cleg lifted\u201d at IC4", job.state().undoName());
            assertEquals("flat; probe x10", job.state().readings().get(0).remark());
            assertEquals(Outcome.UNSURE, job.state().readings().get(0).verdict().outcome());
            assertEquals(List.of(), job.check());
        }
    }

    @Test
    void undo_everything_backToTheStartAndForward() throws IOException {
        try (Job job = create()) {
            JobState start = job.state();
            job.apply(new AddLabel(label("A")));
            job.apply(new AddLabel(label("B")));
            JobState both = job.state();
            assertEquals(Optional.of("label B at 1@40.25,30"), job.undo());
            assertEquals(Optional.of("label A at 1@40.25,30"), job.undo());
            assertEquals(Optional.empty(), job.undo());
            assertEquals(start.labels(), job.state().labels());
            job.redo();
            job.redo();
            assertEquals(Optional.empty(), job.redo());
            assertEquals(both.labels(), job.state().labels());
        }
    }

    @Test
    void apply_afterUndo_abandonsTheUndoneButKeepsItInTheLog() throws IOException {
        try (Job job = create()) {
            job.apply(new AddLabel(label("A")));
            job.undo();
            job.apply(new AddLabel(label("B")));
            assertNull(job.state().redoName());
            assertEquals(List.of(LogEntry.Status.ABANDONED, LogEntry.Status.DONE),
                    job.state().log().stream().map(LogEntry::status).toList());
            assertEquals(List.of(), job.check());
        }
    }

    @Test
    void apply_listenersHear_onlyWhatIsOnDisk() throws IOException {
        try (Job job = create()) {
            List<Integer> onDisk = new ArrayList<>();
            List<Long> revisions = new ArrayList<>();
            job.addListener(state -> {
                try (Job reader = Job.openToRead(file)) {
                    onDisk.add(reader.state().labels().size());
                    revisions.add(state.revision() - reader.state().revision());
                } catch (JobException e) {
                    throw new IllegalStateException(e);
                }
            });
            job.apply(new AddLabel(label("A")));
            job.apply(new AddLabel(label("B")));
            job.undo();
            assertEquals(List.of(1, 2, 1), onDisk);
            assertEquals(List.of(0L, 0L, 0L), revisions);
        }
    }

    @Test
    void apply_unknownMark_refusedAndNothingChanged() throws IOException {
        try (Job job = create()) {
            JobState before = job.state();
            assertThrows(IllegalArgumentException.class, () -> job.apply(new RemoveNote("nowhere", WHEN)));
            assertEquals(before, job.state());
        }
    }

    @Test
    void open_whileAWriterHasIt_refusedForWritersOnly() throws IOException {
        try (Job job = create()) {
            job.apply(new AddLabel(label("A")));
            JobException e = assertThrows(JobException.class, () -> Job.open(file));
            assertEquals(Problem.HELD, e.problem());
            assertTrue(e.getMessage().contains("case.probeleaf") && e.getMessage().contains("close it there"));
            try (Job reader = Job.openToRead(file)) {
                assertTrue(reader.readOnly());
                assertEquals(1, reader.state().labels().size());
                assertThrows(IllegalStateException.class, () -> reader.apply(new AddLabel(label("B"))));
                job.apply(new AddLabel(label("B")));
                assertEquals(List.of(), reader.check());
            }
            job.apply(new AddLabel(label("C")));
        }
        Job.open(file).close();
    }

    @Test
    void open_oddFileNames_work() throws IOException {
        for (String name : List.of("a b.probeleaf", "what?.probeleaf", "100%41#.probeleaf", "pegel-m\u00fcritz.probeleaf")) {
            Path odd = folder.resolve(name);
            Job.create(odd, List.of(sheet), JobDetails.blank()).close();
            assertTrue(Files.exists(odd), name);
            try (Job job = Job.open(odd)) {
                assertEquals(List.of(), job.check());
            }
        }
    }

    @Test
    void open_noJob_refusedWithItsKind() throws IOException {
        assertEquals(Problem.NOT_FOUND, problem(() -> Job.open(file)));
        assertEquals(Problem.NOT_FOUND, problem(() -> Job.openToRead(file)));
        assertEquals(Problem.NOT_A_JOB, problem(() -> Job.open(sheet)));
        assertEquals(Problem.NOT_A_JOB, problem(() -> Job.openToRead(sheet)));
        assertEquals(Problem.NOT_A_JOB, problem(() -> Job.open(folder)));
        Files.createFile(file);
        assertEquals(Problem.NOT_A_JOB, problem(() -> Job.open(file)));
        assertEquals(0, Files.size(file));
    }

    private static Problem problem(Executable what) {
        JobException e = assertThrows(JobException.class, what);
        assertFalse(e.getMessage().contains("\n"), e.getMessage());
        return e.problem();
    }
}
