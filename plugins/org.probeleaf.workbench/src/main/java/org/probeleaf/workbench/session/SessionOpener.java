// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.probeleaf.drawing.SheetException;
import org.probeleaf.drawing.SheetFile;
import org.probeleaf.job.Boards;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobException;
import org.probeleaf.job.JobException.Problem;
import org.probeleaf.job.JobSheet;
import org.probeleaf.job.JobState;
import org.probeleaf.job.SheetReading;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.schematic.netlist.Netlist;

/** Opens a sheet or a job: first the pages, so that they show at once, then the job. Runs on the worker. */
final class SessionOpener {

    private final Path asked;
    private final String password;
    private final Consumer<Sheets> sheets;
    private final Consumer<Trouble> notices;

    SessionOpener(Path asked, String password, Consumer<Sheets> sheets, Consumer<Trouble> notices) {
        this.asked = asked;
        this.password = password;
        this.sheets = sheets;
        this.notices = notices;
    }

    /** Opens and hands over the job. */
    void open(Consumer<Job> done) throws IOException {
        if (JobFiles.isJob(asked)) {
            Job job = openJob(asked);
            try {
                sheets.accept(pagesOf(job));
            } catch (IOException e) {
                job.close();
                throw e;
            }
            done.accept(job);
            return;
        }
        SheetFile file = SheetFile.open(asked, password);
        sheets.accept(Sheets.of(List.of(file)));
        Path jobFile = JobFiles.forSheet(asked, file.bytes());
        if (Files.exists(jobFile)) {
            done.accept(openJob(jobFile));
            return;
        }
        JobFiles.makeFolder(jobFile);
        done.accept(Job.create(jobFile, List.of(asked), JobDetails.blank(), password));
    }

    private Job openJob(Path file) throws JobException {
        try {
            return Job.open(file);
        } catch (JobException e) {
            boolean readable = e.problem() == Problem.HELD || e.problem() == Problem.NOT_WRITTEN;
            if (!readable) {
                throw e;
            }
            Job job = Job.openToRead(file);
            notices.accept(new Trouble(Trouble.Kind.RETRY, e.problem() == Problem.HELD
                    ? "This job is open somewhere else: here it can be looked at, but nothing can be added."
                    : "This job cannot be written: it can be looked at, but nothing can be added."));
            return job;
        }
    }

    private static Sheets pagesOf(Job job) throws IOException {
        List<SheetFile> files = new ArrayList<>();
        for (JobSheet s : job.state().sheets()) {
            files.add(SheetFile.open(job.sheetBytes(s.index()), s.fileName(), job.sheetPassword(s.index())));
        }
        return Sheets.of(files);
    }

    /** The state with another netlist; for a job that cannot be written. */
    static JobState with(JobState s, Netlist netlist) {
        SheetReading reading = SheetReading.of(netlist, s.sheetReading().corrections());
        return new JobState(s.details(), s.sheets(), reading, s.labels(), s.notes(), s.readings(), s.captures(),
                Boards.of(reading.netlist(), s.boards().kept()), s.log(), s.undoName(), s.redoName(), s.revision());
    }

    /** An exception as what the person can do about it. */
    static Trouble trouble(IOException e) {
        Throwable sheet = e instanceof JobException && e.getCause() instanceof SheetException ? e.getCause() : e;
        if (sheet instanceof SheetException s && (s.problem() == SheetException.Problem.PASSWORD_NEEDED
                || s.problem() == SheetException.Problem.PASSWORD_WRONG)) {
            return new Trouble(Trouble.Kind.PASSWORD, s.problem() == SheetException.Problem.PASSWORD_NEEDED
                    ? "This sheet is protected. Type its password to open it."
                    : "That password does not open this sheet. Type it again.");
        }
        return new Trouble(Trouble.Kind.RETRY, e.getMessage());
    }
}
