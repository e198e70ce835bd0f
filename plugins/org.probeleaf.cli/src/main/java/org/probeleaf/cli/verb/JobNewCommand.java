// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.cli.answer.JobText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JobFiles;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.job.Job;
import org.probeleaf.job.details.Hazard;
import org.probeleaf.job.details.JobDetails;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code job new}: makes a job of sheets. */
@Command(name = "new", description = "Make a job of sheets and read what is connected on them.")
public final class JobNewCommand extends Verb {

    @Parameters(index = "0", paramLabel = "FILE", description = "The job's file, as in tide-logger.probeleaf.")
    private Path file;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "SHEET", description = "PDF or image files, in order.")
    private List<Path> sheets;

    @Option(names = "--unit", paramLabel = "T", defaultValue = "", description = "What is on the bench.")
    private String unit;

    @Option(names = "--customer", paramLabel = "T", defaultValue = "", description = "Whose it is.")
    private String customer;

    @Option(names = "--complaint", paramLabel = "T", defaultValue = "", description = "What is said to be wrong.")
    private String complaint;

    @Option(names = "--technician", paramLabel = "T", defaultValue = "",
            description = "Who works on it; named as author on what is handed over.")
    private String technician;

    @Option(names = "--hazard", paramLabel = "NAME", split = ",", description = {
        "What can hurt: mains, capacitors, picture-tube, battery, heat, static. Several with commas between."})
    private List<String> hazards = new ArrayList<>();

    @Option(names = "--password", paramLabel = "P", description =
            "Opens protected PDFs. It is kept in the job, so whoever has the job can read them.")
    private String password;

    public JobNewCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        JobDetails details = new JobDetails(unit, customer, complaint, technician, parsedHazards());
        try (Job job = Job.create(file, sheets, details, password)) {
            JobFiles.netlist(job, console());
            say("Made " + file + ".");
            JobText.writeHead(console().out(), job.state());
        }
        return ExitCode.DONE;
    }

    private List<Hazard> parsedHazards() {
        try {
            return hazards.stream().map(Hazard::parse).toList();
        } catch (IllegalArgumentException e) {
            throw Problem.usage(e.getMessage());
        }
    }
}
