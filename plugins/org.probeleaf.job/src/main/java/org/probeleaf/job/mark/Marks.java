// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

import org.probeleaf.job.details.JobDetails;

/**
 * All that changes act on: the head of the job, its marks and its corrections, each list in the order they were made.
 *
 * @param details     the head
 * @param labels      net labels of the technician's own
 * @param notes       notes
 * @param readings    readings
 * @param corrections corrections of the reading of the sheets
 * @param captures    waveforms
 * @param board       what was done to boards, also what has been put back since
 */
public record Marks(JobDetails details, List<LabelMark> labels, List<NoteMark> notes, List<ReadingMark> readings,
        List<KeptCorrection> corrections, List<CaptureMark> captures, List<KeptBoardChange> board) {

    public Marks {
        labels = List.copyOf(labels);
        notes = List.copyOf(notes);
        readings = List.copyOf(readings);
        corrections = List.copyOf(corrections);
        captures = List.copyOf(captures);
        board = List.copyOf(board);
    }

    /** No marks under the given head. */
    public static Marks of(JobDetails details) {
        return new Marks(details, List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** The same marks with the head replaced. */
    public Marks withDetails(JobDetails other) {
        return new Marks(other, labels, notes, readings, corrections, captures, board);
    }

    /** The same marks with the labels replaced. */
    public Marks withLabels(List<LabelMark> other) {
        return new Marks(details, other, notes, readings, corrections, captures, board);
    }

    /** The same marks with the notes replaced. */
    public Marks withNotes(List<NoteMark> other) {
        return new Marks(details, labels, other, readings, corrections, captures, board);
    }

    /** The same marks with the readings replaced. */
    public Marks withReadings(List<ReadingMark> other) {
        return new Marks(details, labels, notes, other, corrections, captures, board);
    }

    /** The same marks with the corrections replaced. */
    public Marks withCorrections(List<KeptCorrection> other) {
        return new Marks(details, labels, notes, readings, other, captures, board);
    }

    /** The same marks with the captures replaced. */
    public Marks withCaptures(List<CaptureMark> other) {
        return new Marks(details, labels, notes, readings, corrections, other, board);
    }

    /** The same marks with what was done to boards replaced. */
    public Marks withBoard(List<KeptBoardChange> other) {
        return new Marks(details, labels, notes, readings, corrections, captures, other);
    }

    /**
     * The same marks with one thing done to a board replaced.
     *
     * @throws IllegalArgumentException where there is none with that id
     */
    public Marks withBoardChange(String id, UnaryOperator<KeptBoardChange> by) {
        if (boardChange(id).isEmpty()) {
            throw new IllegalArgumentException("there is no such change of the board (any more): " + id);
        }
        return withBoard(board.stream().map(k -> k.id().equals(id) ? by.apply(k) : k).toList());
    }

    /** What was done to a board, by its id. */
    public Optional<KeptBoardChange> boardChange(String id) {
        return board.stream().filter(k -> k.id().equals(id)).findFirst();
    }

    /** These marks with the card of one of them elsewhere; without that mark, the same. */
    public Marks withCardMoved(String id, Offset card) {
        return new Marks(details, labels.stream().map(m -> m.id().equals(id) ? m.withCard(card) : m).toList(),
                notes.stream().map(m -> m.id().equals(id) ? m.withCard(card) : m).toList(),
                readings.stream().map(m -> m.id().equals(id) ? m.withCard(card) : m).toList(), corrections,
                captures.stream().map(m -> m.id().equals(id) ? m.withCard(card) : m).toList(), board);
    }

    /** The mark of whatever kind with the given id. */
    public Optional<Mark> find(String id) {
        return Stream.of(labels, notes, readings, captures).<Mark>flatMap(List::stream).filter(m -> m.id().equals(id))
                .findFirst();
    }

    /**
     * A list with one more mark at its end.
     *
     * @throws IllegalArgumentException where a mark with that id is there already
     */
    public static <M extends Mark> List<M> added(List<M> list, M mark) {
        if (list.stream().anyMatch(m -> m.id().equals(mark.id()))) {
            throw new IllegalArgumentException("there already is a mark with the id " + mark.id());
        }
        List<M> next = new ArrayList<>(list);
        next.add(mark);
        return next;
    }

    /**
     * A list with one mark replaced.
     *
     * @throws IllegalArgumentException where the list has no such mark
     */
    public static <M extends Mark> List<M> replaced(List<M> list, String id, UnaryOperator<M> by) {
        require(list, id);
        return list.stream().map(m -> m.id().equals(id) ? by.apply(m) : m).toList();
    }

    /**
     * A list without one mark.
     *
     * @throws IllegalArgumentException where the list has no such mark
     */
    public static <M extends Mark> List<M> removed(List<M> list, String id) {
        require(list, id);
        return list.stream().filter(m -> !m.id().equals(id)).toList();
    }

    private static void require(List<? extends Mark> list, String id) {
        if (list.stream().noneMatch(m -> m.id().equals(id))) {
            throw new IllegalArgumentException("there is no such mark (any more): " + id);
        }
    }
}
