// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.probeleaf.job.LogEntry;
import org.probeleaf.job.LogEntry.Status;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.mark.Marks;

/**
 * The changes of a job, in order, and the marks that they give when replayed. Immutable.
 *
 * <p>The changes that can be redone are the undone ones; they all come after the last done one. Abandoned ones may
 * stand anywhere and are passed over.
 *
 * @param rows  every change ever made
 * @param marks what the done ones give
 */
public record ChangeLog(List<Row> rows, Marks marks) {

    /** A change as its row in the file. */
    public record Row(LogEntry entry, Change change) {

        public Row with(Status status) {
            return new Row(new LogEntry(entry.number(), entry.when(), entry.words(), status), change);
        }

        public boolean is(Status status) {
            return entry.status() == status;
        }
    }

    public ChangeLog {
        rows = List.copyOf(rows);
    }

    /**
     * Replays rows.
     *
     * @throws IllegalArgumentException where a row cannot be replayed; the message names it
     */
    public static ChangeLog replay(JobDetails start, List<Row> rows) {
        Marks marks = Marks.of(start);
        boolean undoneSeen = false;
        for (Row row : rows) {
            if (row.is(Status.DONE)) {
                if (undoneSeen) {
                    throw new IllegalArgumentException("change " + row.entry().number() + " stands on an undone one");
                }
                marks = apply(row, marks);
            }
            undoneSeen |= row.is(Status.UNDONE);
        }
        return new ChangeLog(rows, marks);
    }

    public static Marks apply(Row row, Marks marks) {
        try {
            return row.change().applyTo(marks);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("change " + row.entry().number() + " (" + row.entry().words()
                    + ") cannot be replayed: " + e.getMessage(), e);
        }
    }

    /** The change that undo would undo. */
    public Optional<Row> undoable() {
        for (int i = rows.size() - 1; i >= 0; i--) {
            if (rows.get(i).is(Status.DONE)) {
                return Optional.of(rows.get(i));
            }
        }
        return Optional.empty();
    }

    /** The change that redo would redo. */
    public Optional<Row> redoable() {
        return rows.stream().filter(r -> r.is(Status.UNDONE)).findFirst();
    }

    /** The log with one more change done; what was undone is abandoned. */
    public ChangeLog plus(Row row, Marks after) {
        List<Row> next = new ArrayList<>(rows.size() + 1);
        for (Row r : rows) {
            next.add(r.is(Status.UNDONE) ? r.with(Status.ABANDONED) : r);
        }
        next.add(row);
        return new ChangeLog(next, after);
    }

    /** The log with a row's status changed and the marks that this gives. */
    public ChangeLog with(Row row, Status status, Marks after) {
        List<Row> next = rows.stream()
                .map(r -> r.entry().number() == row.entry().number() ? r.with(status) : r).toList();
        return new ChangeLog(next, after);
    }

    /** The marks without one of the done changes at the end, replayed from the start. */
    public Marks without(Row last, JobDetails start) {
        Marks marks = Marks.of(start);
        for (Row row : rows) {
            if (row.is(Status.DONE) && row.entry().number() != last.entry().number()) {
                marks = apply(row, marks);
            }
        }
        return marks;
    }

    public List<LogEntry> entries() {
        return rows.stream().map(Row::entry).toList();
    }

    static String stored(Status status) {
        return status.name().toLowerCase(Locale.ROOT);
    }

    static Status status(String stored) {
        return Status.valueOf(stored.toUpperCase(Locale.ROOT));
    }
}
