// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.time.Instant;

import org.probeleaf.cli.answer.JobText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.place.Place;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code reading}: pins a reading. */
@Command(name = "reading", description = {"Pin a reading to a place on a job's sheets, with what it should be; the"
        + " verdict and its reason are printed.", "", "Values are written as on the bench: 11.8V, 3k3, 4R7, 100n,"
        + " 1.2M, -5, H, L, open. Words after the value are kept as a remark: \"2.2V flat\"."})
public final class ReadingCommand extends ChangeVerb {

    @Parameters(index = "2", paramLabel = "VALUE", description = "What was measured.")
    private String value;

    @Option(names = "--expect", paramLabel = "WHAT", description = {
        "What it should be: VALUE±TOL (5V±5%%; +- will do), a range LO..HI (4.75V..5.25V), or a logic family"
                + " (74LS)."})
    private String expect;

    @Option(names = "--note", paramLabel = "T", defaultValue = "", description = "A remark on the reading.")
    private String note;

    public ReadingCommand(Console console) {
        super(console);
    }

    @Override
    Change change(Place place, Anchor anchor) {
        Expectation expectation = expect == null ? null : Expectation.parse(expect);
        return new AddReading(ReadingMark.of(place, anchor, value, note, expectation, Instant.now()));
    }

    @Override
    void done(Change change) {
        say(JobText.reading(((AddReading) change).reading()));
    }
}
