// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job;

import java.util.List;
import java.util.Optional;

import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.netlist.Netlist;

/**
 * A job at one moment.
 *
 * @param details      the head
 * @param sheets       the sheet files, in order
 * @param sheetReading what was recognised on the sheets, and what a person says of it
 * @param labels       net labels of the technician's own, in the order they were made
 * @param notes        notes, in the order they were made
 * @param readings     readings, in the order they were made
 * @param captures     waveforms, in the order they were pinned
 * @param boards       the boards as they are
 * @param log          every change ever made, in the order of time
 * @param undoName     what {@code undo} would undo, in words, or null where there is nothing
 * @param redoName     what {@code redo} would redo, in words, or null where there is nothing
 * @param revision     rises with each change, undo, redo and stored netlist
 */
public record JobState(JobDetails details, List<JobSheet> sheets, SheetReading sheetReading,
        List<LabelMark> labels, List<NoteMark> notes, List<ReadingMark> readings, List<CaptureMark> captures, Boards boards,
        List<LogEntry> log, String undoName, String redoName, long revision) {

    public JobState {
        sheets = List.copyOf(sheets);
        labels = List.copyOf(labels);
        notes = List.copyOf(notes);
        readings = List.copyOf(readings);
        captures = List.copyOf(captures);
        log = List.copyOf(log);
    }

    /** What is connected on the board on the bench, or null before recognition. */
    public Netlist onBench() {
        return boards.thisBoard() == null ? null : boards.thisBoard().netlist();
    }

    /** What the sheets say, the corrections put to it, or null before recognition. */
    public Netlist netlist() {
        return sheetReading.netlist();
    }

    /** The sheet file that holds a page of the job. */
    public Optional<JobSheet> sheetOf(int page) {
        return sheets.stream().filter(s -> s.holds(page)).findFirst();
    }

    /** How many pages the job's sheet files have together. */
    public int pageCount() {
        return sheets.stream().mapToInt(JobSheet::pageCount).sum();
    }
}
