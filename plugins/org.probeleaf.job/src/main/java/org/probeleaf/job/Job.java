// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.probeleaf.job.LogEntry.Status;
import org.probeleaf.job.change.AddCapture;
import org.probeleaf.job.change.AddCorrection;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.change.ChangeBoard;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.internal.ChangeLog;
import org.probeleaf.job.internal.Failures;
import org.probeleaf.job.internal.JobChecker;
import org.probeleaf.job.internal.JobFile;
import org.probeleaf.job.internal.JobStore;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.job.mark.Marks;
import org.probeleaf.recognition.Progress;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Outcome;
import org.probeleaf.schematic.checksum.Sha256;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.board.ChangeOutcome;

/**
 * An open job file. Its state is its changes replayed; a change is on the disk before anyone hears of it, and undo
 * goes back to the start, also after the job was closed and opened again.
 *
 * <p>Any thread may call. Calls that touch the file wait for each other; {@link #state} never waits. Listeners are told
 * on the thread that made the change, with no lock held; where several threads write, {@link JobState#revision} tells
 * which state is the newer. Whoever opened the job closes it.
 */
public final class Job implements AutoCloseable {

    private final JobFile file;
    private final JobDetails start;
    private final List<JobListener> listeners = new CopyOnWriteArrayList<>();
    private ChangeLog log;
    private Netlist recognised;
    private boolean closed;
    private volatile JobState state;

    private Job(JobFile file, JobDetails start, ChangeLog log, JobState state) {
        this.file = file;
        this.start = start;
        this.log = log;
        this.recognised = state.sheetReading().recognised();
        this.state = state;
    }

    /**
     * Makes a job file with the given sheets and opens it as its one writer.
     *
     * @param file    a file that is not there yet
     * @param sheets  sheet files, at least one, in order
     * @param details the head
     * @throws JobException EXISTS, SHEET, HELD, NOT_WRITTEN; where it is thrown no file is left behind
     */
    public static Job create(Path file, List<Path> sheets, JobDetails details) throws JobException {
        return create(file, sheets, details, null);
    }

    /**
     * As {@link #create(Path, List, JobDetails)} with protected sheets.
     *
     * @param password for the sheets that need one, or null. It is kept in the job, so that the sheets open without
     *                 asking again; whoever has the job can read them
     */
    public static Job create(Path file, List<Path> sheets, JobDetails details, String password) throws JobException {
        if (sheets.isEmpty()) {
            throw new IllegalArgumentException("a job needs at least one sheet");
        }
        return opened(JobFile.create(file, details, SheetIntake.take(sheets, password), Instant.now()));
    }

    /**
     * Opens a job file as its one writer. A file of an older version is brought up to date.
     *
     * @throws JobException NOT_FOUND, NOT_A_JOB, HELD, DAMAGED, NEWER_VERSION, NOT_WRITTEN
     */
    public static Job open(Path file) throws JobException {
        return opened(JobFile.write(file));
    }

    /**
     * Opens a job file to read, also while a writer has it. Its state is that of the moment of opening.
     *
     * @throws JobException NOT_FOUND, NOT_A_JOB, DAMAGED, NEWER_VERSION
     */
    public static Job openToRead(Path file) throws JobException {
        return opened(JobFile.read(file));
    }

    private static Job opened(JobFile file) throws JobException {
        try {
            return file.store().snapshot(() -> {
                JobStore store = file.store();
                JobDetails start = store.startDetails();
                ChangeLog log = ChangeLog.replay(start, store.changes());
                SheetReading reading = SheetReading.of(store.netlist(), log.marks().corrections());
                Boards boards = Boards.of(reading.netlist(), log.marks().board());
                return new Job(file, start, log, state(log, store.sheets(), reading, boards, store.revision()));
            });
        } catch (SQLException e) {
            file.close();
            throw Failures.of(file.path(), e);
        } catch (RuntimeException e) {
            file.close();
            throw new JobException(JobException.Problem.DAMAGED, file.path() + ": is damaged (" + e.getMessage()
                    + "); go back to a copy of it", e);
        }
    }

    private static JobState state(ChangeLog log, List<JobSheet> sheets, SheetReading reading, Boards boards,
            long revision) {
        Marks m = log.marks();
        return new JobState(m.details(), sheets, reading, m.labels(), m.notes(), m.readings(), m.captures(), boards, log.entries(),
                log.undoable().map(r -> r.entry().words()).orElse(null),
                log.redoable().map(r -> r.entry().words()).orElse(null), revision);
    }

    /** The job's file. */
    public Path file() {
        return file.path();
    }

    /** Whether the job was opened to read only. */
    public boolean readOnly() {
        return file.lock() == null;
    }

    /** The job as it is now. */
    public JobState state() {
        return state;
    }

    /**
     * Makes a change. It is safe on disk when this returns; then the listeners are told.
     *
     * @throws IllegalArgumentException with one sentence for a person where the job does not allow it
     * @throws IllegalStateException    where the job was opened to read or is closed
     * @throws JobException             NOT_WRITTEN, DAMAGED; the job is then as before
     */
    public void apply(Change change) throws JobException {
        apply(change, store -> Optional.empty());
    }

    private void apply(Change change, Writing first) throws JobException {
        written(store -> {
            Marks before = log.marks();
            Marks after = change.applyTo(before);
            String words = change.words(before);
            ChangeLog.Row row = store.commit(() -> {
                first.write(store);
                return store.addChange(change, words);
            });
            log = log.plus(row, after);
            return Optional.of(words);
        });
    }

    /**
     * Pins a capture and keeps its file unchanged.
     *
     * @param bytes of the file; their checksum is that of the mark
     * @throws JobException as {@link #apply}
     */
    public void addCapture(CaptureMark capture, byte[] bytes) throws JobException {
        if (!Sha256.of(bytes).equals(capture.sha256())) {
            throw new IllegalArgumentException("the checksum is that of another file than " + capture.fileName());
        }
        apply(new AddCapture(capture), store -> {
            store.addCapture(capture.sha256(), capture.fileName(), bytes);
            return Optional.empty();
        });
    }

    /**
     * The bytes of a capture's file exactly as they came.
     *
     * @throws JobException DAMAGED where they are not there, or have changed since
     */
    public synchronized byte[] captureBytes(CaptureMark capture) throws JobException {
        requireOpen();
        try {
            return sound(file.store().captureBytes(capture.sha256()), capture.sha256(),
                    "capture " + capture.fileName());
        } catch (SQLException e) {
            throw Failures.of(file.path(), e);
        }
    }

    /**
     * Undoes the last change that stands.
     *
     * @return what was undone, in words, or empty where there was nothing
     * @throws JobException as {@link #apply}
     */
    public Optional<String> undo() throws JobException {
        return written(store -> {
            Optional<ChangeLog.Row> last = log.undoable();
            if (last.isPresent()) {
                move(store, last.get(), Status.UNDONE, log.without(last.get(), start));
            }
            return last.map(r -> r.entry().words());
        });
    }

    /**
     * Redoes the change undone last.
     *
     * @return what was redone, in words, or empty where there was nothing
     * @throws JobException as {@link #apply}
     */
    public Optional<String> redo() throws JobException {
        return written(store -> {
            Optional<ChangeLog.Row> next = log.redoable();
            if (next.isPresent()) {
                move(store, next.get(), Status.DONE, ChangeLog.apply(next.get(), log.marks()));
            }
            return next.map(r -> r.entry().words());
        });
    }

    private void move(JobStore store, ChangeLog.Row row, Status status, Marks after) throws SQLException {
        store.commit(() -> {
            store.setStatus(row, status);
            return row;
        });
        log = log.with(row, status, after);
    }

    /**
     * Corrects the reading of the sheets. The correction is pinned to the sheet and is put to every later recognition.
     *
     * @return what became of it: done, or put to the netlist without effect so far
     * @throws IllegalArgumentException with one sentence for a person where the sheets are read that way already, where
     *                                  they have no such place, or have not been recognised
     * @throws JobException             as {@link #apply}
     */
    public Outcome correct(Correction correction, Instant when) throws JobException {
        SheetReading now = state.sheetReading();
        if (now.recognised() == null) {
            throw new IllegalArgumentException("the sheets have not been read yet; wait until they are");
        }
        Outcome outcome = now.tried(correction).last();
        if (outcome.state() == Outcome.State.ALREADY || outcome.state() == Outcome.State.NO_PLACE) {
            throw new IllegalArgumentException("nothing is corrected: " + outcome.why());
        }
        apply(new AddCorrection(KeptCorrection.of(correction, when)));
        return outcome;
    }

    /**
     * Notes what was done to a board.
     *
     * @param done what was done, at least one, all to the same board
     * @return what became of each
     * @throws IllegalArgumentException with one sentence for a person where one of them cannot be, or where the sheets
     *                                  have not been recognised; none of them is noted then
     * @throws JobException             as {@link #apply}
     */
    public List<ChangeOutcome> changeBoard(List<KeptBoardChange> done) throws JobException {
        Boards now = state.boards();
        if (now.drawn() == null) {
            throw new IllegalArgumentException("the sheets have not been read yet; wait until they are");
        }
        List<ChangeOutcome> outcomes = new ArrayList<>();
        for (KeptBoardChange one : done) {
            List<ChangeOutcome> all = now.tried(one.board(), one.change()).outcomes();
            ChangeOutcome outcome = all.get(all.size() - 1);
            if (!outcome.done()) {
                throw new IllegalArgumentException(outcome.text());
            }
            outcomes.add(outcome);
            now = now.plus(one);
        }
        apply(new ChangeBoard(done));
        return outcomes;
    }

    /**
     * Keeps what was recognised. It is derived from the sheets and stands outside undo.
     *
     * @throws JobException as {@link #apply}
     */
    public void setNetlist(Netlist netlist) throws JobException {
        written(store -> {
            store.commit(() -> {
                store.setNetlist(netlist, Instant.now());
                return netlist;
            });
            this.recognised = netlist;
            return Optional.of("netlist");
        });
    }

    /** Writes something; returns what was written, in words, or empty where there was nothing to do. */
    @FunctionalInterface
    private interface Writing {
        Optional<String> write(JobStore store) throws SQLException;
    }

    private Optional<String> written(Writing writing) throws JobException {
        Optional<String> words;
        JobState now;
        synchronized (this) {
            requireOpen();
            if (readOnly()) {
                throw new IllegalStateException(file.path() + ": was opened to read; open it to write");
            }
            try {
                words = writing.write(file.store());
            } catch (SQLException e) {
                throw Failures.of(file.path(), e);
            }
            if (words.isPresent()) {
                SheetReading reading = state.sheetReading().with(recognised, log.marks().corrections());
                Boards boards = state.boards().with(reading.netlist(), log.marks().board());
                state = state(log, state.sheets(), reading, boards, state.revision() + 1);
            }
            now = state;
        }
        if (words.isPresent()) {
            tell(now);
        }
        return words;
    }

    /** Tells every listener; what the first failing one threw goes on to the caller when all have heard. */
    private void tell(JobState now) {
        RuntimeException failure = null;
        for (JobListener listener : listeners) {
            try {
                listener.jobChanged(now);
            } catch (RuntimeException e) {
                failure = failure == null ? e : failure;
            }
        }
        if (failure != null) {
            throw failure;
        }
    }

    /**
     * Recognises the job's sheets; page numbers count on over the files. Does not keep the result: see
     * {@link #setNetlist}. The netlist of a job of several files bears their names in one, and the checksum of all
     * their bytes in order.
     *
     * @param book     knows the pins that a sheet does not draw
     * @param progress hears of each page
     * @throws java.util.concurrent.CancellationException where {@code progress} says to stop
     * @throws JobException                               SHEET, DAMAGED
     */
    public Netlist recognise(PartBook book, Progress progress) throws JobException {
        return JobPages.recognise(this, book, progress);
    }

    /**
     * The bytes of a sheet file exactly as they came; bytes that have changed since are never handed on.
     *
     * @param index 0-based, see {@link JobSheet#index}
     * @throws JobException DAMAGED
     */
    public synchronized byte[] sheetBytes(int index) throws JobException {
        requireOpen();
        try {
            JobSheet sheet = file.store().sheets().get(index);
            return sound(file.store().sheetBytes(index), sheet.sha256(), "sheet " + sheet.fileName());
        } catch (SQLException e) {
            throw Failures.of(file.path(), e);
        }
    }

    private byte[] sound(byte[] bytes, String sha256, String what) throws JobException {
        if (bytes == null || !Sha256.of(bytes).equals(sha256)) {
            throw new JobException(JobException.Problem.DAMAGED, file.path() + ": its " + what
                    + " is not as it was put in; go back to a copy of the job", null);
        }
        return bytes;
    }

    /**
     * The password that opens a sheet file.
     *
     * @param index 0-based, see {@link JobSheet#index}
     * @return the password, or null where it needs none
     * @throws JobException DAMAGED
     */
    public synchronized String sheetPassword(int index) throws JobException {
        requireOpen();
        try {
            return file.store().sheetPassword(index);
        } catch (SQLException e) {
            throw Failures.of(file.path(), e);
        }
    }

    /** From now on tells {@code listener} of each change. */
    public void addListener(JobListener listener) {
        listeners.add(listener);
    }

    /** No longer tells {@code listener}. */
    public void removeListener(JobListener listener) {
        listeners.remove(listener);
    }

    /**
     * Looks the whole file over: its structure, each sheet against its checksum, each change replayed.
     *
     * @return what is wrong, one line each; empty where the job is sound
     */
    public synchronized List<String> check() {
        requireOpen();
        return new JobChecker(file.store()).check();
    }

    private void requireOpen() {
        if (closed) {
            throw new IllegalStateException(file.path() + ": the job is closed");
        }
    }

    /** Lets the file go. Closing twice is allowed. */
    @Override
    public synchronized void close() {
        if (closed) {
            return;
        }
        closed = true;
        try {
            file.close();
        } catch (JobException e) {
            // Every change was on the disk before; there is nothing left to lose.
        }
    }
}
