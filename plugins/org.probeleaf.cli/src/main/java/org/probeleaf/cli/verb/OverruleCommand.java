// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.time.Instant;
import java.util.Locale;

import org.probeleaf.cli.answer.JobText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.job.Job;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.change.OverruleReading;
import org.probeleaf.job.expectation.Outcome;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.place.Place;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code overrule}: the person's own verdict on a reading. */
@Command(name = "overrule", description = "Give the last reading at a place your own verdict, with the reason. What follows"
        + " from its value is kept beside it.")
public final class OverruleCommand extends ChangeVerb {

    @Parameters(index = "2", paramLabel = "VERDICT", description = "good, bad or unsure; judged takes your word back.")
    private String verdict;

    @Option(names = "--why", paramLabel = "T", defaultValue = "", description = "The reason.")
    private String why;

    private ReadingMark overruled;

    public OverruleCommand(Console console) {
        super(console);
    }

    @Override
    Change change(Place place, Anchor anchor) {
        throw new IllegalStateException("a verdict depends on the job");
    }

    @Override
    Change change(Job job, Place place, Anchor anchor) throws IOException {
        ReadingMark last = Readings.last(job.state(), place).orElseThrow(() -> new IllegalArgumentException(
                "there is no reading at " + place.text() + " to give a verdict on"));
        OverruleReading change = new OverruleReading(last.id(), outcome(), why, Instant.now());
        overruled = last.withWord(change.outcome(), change.why());
        return change;
    }

    private Outcome outcome() {
        return switch (verdict.strip().toLowerCase(Locale.ROOT)) {
            case "good" -> Outcome.GOOD;
            case "bad" -> Outcome.BAD;
            case "unsure" -> Outcome.UNSURE;
            case "judged" -> null;
            default -> throw new IllegalArgumentException("\"" + verdict + "\" is no verdict; say good, bad, unsure or judged");
        };
    }

    @Override
    void done(Change change) {
        say(JobText.reading(overruled));
    }
}
