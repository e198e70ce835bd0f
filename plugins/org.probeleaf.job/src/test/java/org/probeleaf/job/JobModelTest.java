// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

import org.probeleaf.job.change.AddCapture;
import org.probeleaf.job.change.AddCorrection;
import org.probeleaf.job.change.AddLabel;
import org.probeleaf.job.change.AddNote;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.change.ChangeBoard;
import org.probeleaf.job.change.EditLabel;
import org.probeleaf.job.change.EditNote;
import org.probeleaf.job.change.EditReading;
import org.probeleaf.job.change.KeepBoardChange;
import org.probeleaf.job.change.MoveCard;
import org.probeleaf.job.change.OverruleReading;
import org.probeleaf.job.change.PutBack;
import org.probeleaf.job.change.ReadCaptureAs;
import org.probeleaf.job.change.RemoveCapture;
import org.probeleaf.job.change.RemoveCorrection;
import org.probeleaf.job.change.RemoveLabel;
import org.probeleaf.job.change.RemoveNote;
import org.probeleaf.job.change.RemoveReading;
import org.probeleaf.job.change.SetDetails;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.Mark;
import org.probeleaf.job.mark.Marks;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.Offset;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Spot;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.checksum.Sha256;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.place.Place;

/** Random changes, undo and redo on a job against a plain list of the marks after each change. */
class JobModelTest {

    private static final Instant WHEN = Instant.parse("2026-03-01T09:30:00Z");
    private static final Anchor SPOT = new Anchor(1, new Point(10, 20));

    private static Path folder;
    private static int jobs;

    /** What a person does: the kind of step and a number that picks what it is done to. */
    record Step(Kind kind, int pick) {
    }

    enum Kind {
        LABEL, NOTE, READING, CAPTURE, READ_AS, CORRECT, WITHDRAW, BOARD, PUT_BACK, EDIT, REMOVE, MOVE, DETAILS, UNDO, REDO, REOPEN
    }

    @BeforeContainer
    static void makeFolder() throws IOException {
        folder = Files.createTempDirectory("job-model");
        TestSheets.plain(folder, "board.pdf", 1);
    }

    @AfterContainer
    static void deleteFolder() throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path p : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(p);
            }
        }
    }

    @Property(tries = 60, shrinking = ShrinkingMode.OFF)
    void steps_anySequence_equalTheModel(@ForAll("sequences") List<Step> steps) throws IOException {
        Path file = folder.resolve("model" + jobs++ + ".probeleaf");
        List<Marks> history = new ArrayList<>(List.of(Marks.of(JobDetails.blank())));
        int now = 0;
        Job job = Job.create(file, List.of(folder.resolve("board.pdf")), JobDetails.blank());
        try {
            for (Step step : steps) {
                switch (step.kind()) {
                    case UNDO -> now = job.undo().isPresent() ? now - 1 : now;
                    case REDO -> now = job.redo().isPresent() ? now + 1 : now;
                    case REOPEN -> {
                        JobState before = job.state();
                        job.close();
                        job = Job.open(file);
                        assertEquals(before, job.state());
                    }
                    default -> {
                        Change change = change(step, history.get(now));
                        if (change != null) {
                            if (change instanceof AddCapture add) {
                                job.addCapture(add.capture(), bytes(add.capture().fileName()));
                            } else {
                                job.apply(change);
                            }
                            history.subList(now + 1, history.size()).clear();
                            history.add(change.applyTo(history.get(now++)));
                        }
                    }
                }
                check(history, now, job.state());
            }
            assertEquals(List.of(), job.check());
        } finally {
            job.close();
        }
    }

    private static void check(List<Marks> history, int now, JobState state) {
        assertEquals(history.get(now),
                new Marks(state.details(), state.labels(), state.notes(), state.readings(),
                        state.sheetReading().corrections(), state.captures(), state.boards().kept()));
        assertEquals(now == 0, state.undoName() == null);
        assertEquals(now == history.size() - 1, state.redoName() == null);
    }

    /** The change that a step makes, or null where there is nothing to make it on. */
    private static Change change(Step step, Marks marks) {
        String text = "t" + step.pick();
        return switch (step.kind()) {
            case LABEL -> new AddLabel(LabelMark.of(Place.parse("net:/RD"), SPOT, text, WHEN));
            case NOTE -> new AddNote(NoteMark.of(Place.parse("IC4"), SPOT, text + "\nmore", WHEN));
            case READING -> new AddReading(ReadingMark.of(Place.parse("IC4.2"), SPOT, step.pick() + "mV flat", "",
                    step.pick() % 2 == 0 ? null : Expectation.parse("74HC"), WHEN));
            case CAPTURE -> new AddCapture(CaptureMark.of(Place.parse("IC4.3"), SPOT, text,
                    Sha256.of(bytes(text)), bytes(text).length, "", "slow sweep", WHEN));
            case READ_AS -> marks.captures().isEmpty() ? null : step.pick() % 2 == 0
                    ? new ReadCaptureAs(id(marks.captures(), step), "time=1 " + text, WHEN)
                    : new RemoveCapture(id(marks.captures(), step), WHEN);
            case CORRECT -> new AddCorrection(KeptCorrection.of(new Correction.Name(
                    Spot.of(1, new Point(step.pick(), 7)), text), WHEN));
            case WITHDRAW -> marks.corrections().isEmpty() ? null : new RemoveCorrection(
                    marks.corrections().get(step.pick() % marks.corrections().size()).id(), WHEN);
            case BOARD -> new ChangeBoard(List.of(KeptBoardChange.of(
                    step.pick() % 4 == 0 ? Board.KNOWN_GOOD : Board.THIS, boardChange(step.pick()),
                    step.pick() % 2 == 0, text, WHEN)));
            case PUT_BACK -> marks.board().stream().filter(KeptBoardChange::stands).findFirst()
                    .<Change>map(k -> k.temporary() && step.pick() % 3 == 0 ? new KeepBoardChange(k.id(), WHEN)
                            : new PutBack(k.id(), WHEN)).orElse(null);
            case DETAILS -> new SetDetails(marks.details().withComplaint(text), WHEN);
            case MOVE -> !marks.notes().isEmpty() ? new MoveCard(id(marks.notes(), step),
                    step.pick() % 3 == 0 ? null : new Offset(step.pick(), -step.pick()), WHEN) : null;
            case EDIT -> step.pick() % 3 == 0 && !marks.readings().isEmpty() ? reword(marks.readings(), step, text)
                    : !marks.labels().isEmpty() ? new EditLabel(id(marks.labels(), step), text, WHEN)
                    : !marks.notes().isEmpty() ? new EditNote(id(marks.notes(), step), text, WHEN) : null;
            case REMOVE -> !marks.readings().isEmpty() ? new RemoveReading(id(marks.readings(), step), WHEN)
                    : !marks.labels().isEmpty() ? new RemoveLabel(id(marks.labels(), step), WHEN)
                    : !marks.notes().isEmpty() ? new RemoveNote(id(marks.notes(), step), WHEN) : null;
            default -> throw new IllegalArgumentException(step.toString());
        };
    }

    private static Change reword(List<ReadingMark> readings, Step step, String why) {
        ReadingMark mark = readings.get(step.pick() % readings.size());
        Outcome outcome = Outcome.values()[step.pick() % Outcome.values().length];
        return step.pick() % 2 == 0 ? new OverruleReading(mark.id(), step.pick() % 4 == 0 ? null : outcome, why, WHEN)
                : new EditReading(mark.typedAnew("1." + step.pick() + "V sagging @ " + why + " [meter]", "",
                        mark.circumstances(), mark.expectation()), WHEN);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static BoardChange boardChange(int pick) {
        return switch (pick % 7) {
            case 0 -> new BoardChange.Lift(new Place.OfPin("IC4", "" + pick));
            case 1 -> new BoardChange.Remove("R" + pick);
            case 2 -> new BoardChange.Fit("R" + pick, pick % 2 == 0 ? "4k7" : null,
                    List.of(Place.parse("net:/RD"), Place.parse("1@10.5,20")));
            case 3 -> new BoardChange.Replace("IC4", pick % 2 == 0 ? "74HCT32" : null);
            case 4 -> new BoardChange.Link(Place.parse("IC4.2"), Place.parse("net:/RD"));
            case 5 -> new BoardChange.Cut(Place.parse("1@3,4.25"));
            default -> new BoardChange.Value("R" + pick, "3k3");
        };
    }

    private static String id(List<? extends Mark> list, Step step) {
        return list.get(step.pick() % list.size()).id();
    }

    @Provide
    Arbitrary<List<Step>> sequences() {
        Arbitrary<Step> step = Arbitraries.of(Kind.class)
                .flatMap(kind -> Arbitraries.integers().between(0, 999).map(pick -> new Step(kind, pick)));
        return step.list().ofMinSize(1).ofMaxSize(40);
    }
}
