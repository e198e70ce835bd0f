// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.probeleaf.job.change.Change;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.recognition.Progress;
import org.probeleaf.schematic.netlist.Netlist;

/**
 * An open job file. Any thread may call; calls that write wait for each other. Whoever opened it closes it.
 */
public final class Job implements AutoCloseable {

    private Job() {
    }

    /**
     * Makes a job file with the given sheets and opens it as its one writer.
     *
     * @param file    a file that is not there yet
     * @param sheets  sheet files, at least one, in order
     * @param details the head
     * @throws JobException EXISTS, SHEET, NOT_WRITTEN; where it is thrown no file is left behind
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
        throw new UnsupportedOperationException();
    }

    /**
     * Opens a job file as its one writer.
     *
     * @throws JobException NOT_FOUND, NOT_A_JOB, HELD, DAMAGED, NEWER_VERSION, NOT_WRITTEN
     */
    public static Job open(Path file) throws JobException {
        throw new UnsupportedOperationException();
    }

    /**
     * Opens a job file to read, also while a writer has it. Its state is that of the moment of opening.
     *
     * @throws JobException NOT_FOUND, NOT_A_JOB, DAMAGED, NEWER_VERSION
     */
    public static Job openToRead(Path file) throws JobException {
        throw new UnsupportedOperationException();
    }

    /** The job's file. */
    public Path file() {
        throw new UnsupportedOperationException();
    }

    /** Whether the job was opened to read only. */
    public boolean readOnly() {
        throw new UnsupportedOperationException();
    }

    /** The job as it is now. */
    public JobState state() {
        throw new UnsupportedOperationException();
    }

    /**
     * Makes a change. It is safe on disk when this returns; then the listeners are told.
     *
     * @throws IllegalArgumentException with one sentence for a person where the job does not allow it
     * @throws IllegalStateException    where the job was opened to read or is closed
     * @throws JobException             NOT_WRITTEN, DAMAGED; the job is then as before
     */
    public void apply(Change change) throws JobException {
        throw new UnsupportedOperationException();
    }

    /**
     * Undoes the last change that stands.
     *
     * @return what was undone, in words, or empty where there was nothing
     * @throws JobException as {@link #apply}
     */
    public Optional<String> undo() throws JobException {
        throw new UnsupportedOperationException();
    }

    /**
     * Redoes the change undone last.
     *
     * @return what was redone, in words, or empty where there was nothing
     * @throws JobException as {@link #apply}
     */
    public Optional<String> redo() throws JobException {
        throw new UnsupportedOperationException();
    }

    /**
     * Keeps what was recognised. It is derived from the sheets and stands outside undo.
     *
     * @throws JobException as {@link #apply}
     */
    public void setNetlist(Netlist netlist) throws JobException {
        throw new UnsupportedOperationException();
    }

    /**
     * Recognises the job's sheets; page numbers count on over the files. Does not keep the result: see
     * {@link #setNetlist}.
     *
     * @throws java.util.concurrent.CancellationException where {@code progress} says to stop
     * @throws JobException                               SHEET, DAMAGED
     */
    public Netlist recognise(Progress progress) throws JobException {
        throw new UnsupportedOperationException();
    }

    /**
     * The bytes of a sheet file exactly as they came.
     *
     * @param index 0-based, see {@link JobSheet#index}
     * @throws JobException DAMAGED
     */
    public byte[] sheetBytes(int index) throws JobException {
        throw new UnsupportedOperationException();
    }

    /**
     * The password that opens a sheet file.
     *
     * @param index 0-based, see {@link JobSheet#index}
     * @return the password, or null where it needs none
     * @throws JobException DAMAGED
     */
    public String sheetPassword(int index) throws JobException {
        throw new UnsupportedOperationException();
    }

    /** From now on tells {@code listener} of each change. */
    public void addListener(JobListener listener) {
        throw new UnsupportedOperationException();
    }

    /** No longer tells {@code listener}. */
    public void removeListener(JobListener listener) {
        throw new UnsupportedOperationException();
    }

    /**
     * Looks the whole file over: its structure, each sheet against its checksum, each change replayed.
     *
     * @return what is wrong, one line each; empty where the job is sound
     */
    public List<String> check() {
        throw new UnsupportedOperationException();
    }

    /** Lets the file go. Closing twice is allowed. */
    @Override
    public void close() {
        throw new UnsupportedOperationException();
    }
}
