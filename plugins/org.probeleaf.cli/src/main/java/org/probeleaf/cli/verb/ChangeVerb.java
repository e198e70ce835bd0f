// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;

import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JobFiles;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.job.Job;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.schematic.place.Place;

import picocli.CommandLine.Parameters;

/** A verb that pins something to a place in a job. */
abstract class ChangeVerb extends Verb {

    @Parameters(index = "0", paramLabel = "FILE", description = "The job.")
    private Path file;

    @Parameters(index = "1", paramLabel = "AT", description =
            "The place: IC4.21, IC4, net:/RD or 1@120.5,300 (page, points from the left and the top).")
    private String at;

    ChangeVerb(Console console) {
        super(console);
    }

    /**
     * The change to make.
     *
     * @throws IllegalArgumentException with one sentence for a person where what was typed makes none
     */
    abstract Change change(Place place, Anchor anchor) throws IOException;

    /** The same for a change that depends on what the job holds. */
    Change change(Job job, Place place, Anchor anchor) throws IOException {
        return change(place, anchor);
    }

    /** Puts it into the job. */
    void keep(Job job, Change change) throws IOException {
        job.apply(change);
    }

    /** Says that it is done. */
    abstract void done(Change change);

    @Override
    final ExitCode run() throws IOException {
        Place place = place(at);
        Change change;
        try (Job job = Job.open(file)) {
            try {
                change = change(job, place, JobFiles.anchor(job, place, file, console()));
                keep(job, change);
            } catch (IllegalArgumentException e) {
                throw Problem.usage(e.getMessage());
            }
        }
        done(change);
        return ExitCode.DONE;
    }
}
