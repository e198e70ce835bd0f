// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.job.internal;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.job.JobSheet;
import org.probeleaf.job.LogEntry.Status;
import org.probeleaf.job.mark.CaptureMark;
import org.probeleaf.job.mark.Marks;
import org.probeleaf.schematic.checksum.Sha256;

/** Looks a job file over: its structure, its sheets against their checksums, its changes by replaying them. */
public final class JobChecker {

    private final JobStore store;
    private final List<String> wrong = new ArrayList<>();

    public JobChecker(JobStore store) {
        this.store = store;
    }

    /** What is wrong, one line each; empty where the job is sound. */
    public List<String> check() {
        step("the file's structure", () -> wrong.addAll(store.integrity()));
        step("the sheets", this::checkSheets);
        step("the changes", this::checkChanges);
        step("the captures", this::checkCaptures);
        step("the netlist", store::netlist);
        return List.copyOf(wrong);
    }

    @FunctionalInterface
    private interface Step {
        void run() throws SQLException;
    }

    private void step(String what, Step step) {
        try {
            step.run();
        } catch (SQLException | RuntimeException e) {
            wrong.add(what + ": " + String.valueOf(e.getMessage()).replace('\n', ' '));
        }
    }

    private void checkSheets() throws SQLException {
        int page = 1;
        List<JobSheet> sheets = store.sheets();
        if (sheets.isEmpty()) {
            wrong.add("the sheets: there are none");
        }
        for (JobSheet sheet : sheets) {
            if (sheet.firstPage() != page) {
                wrong.add("sheet " + sheet.fileName() + ": its pages do not follow those before it");
            }
            page += sheet.pageCount();
            step("sheet " + sheet.fileName(), () -> {
                if (!Sha256.of(store.sheetBytes(sheet.index())).equals(sheet.sha256())) {
                    wrong.add("sheet " + sheet.fileName() + ": its bytes are not those that were put in");
                }
            });
        }
    }

    private void checkCaptures() throws SQLException {
        for (CaptureMark capture : ChangeLog.replay(store.startDetails(), store.changes()).marks().captures()) {
            byte[] bytes = store.captureBytes(capture.sha256());
            if (bytes == null || !Sha256.of(bytes).equals(capture.sha256())) {
                wrong.add("capture " + capture.fileName() + (bytes == null ? ": its file is missing"
                        : ": its bytes are not those that were put in"));
            }
        }
    }

    private void checkChanges() throws SQLException {
        ChangeLog log = ChangeLog.replay(store.startDetails(), store.changes());
        Marks marks = log.marks();
        for (ChangeLog.Row row : log.rows()) {
            if (row.is(Status.UNDONE)) {
                marks = ChangeLog.apply(row, marks);
            }
        }
    }
}
