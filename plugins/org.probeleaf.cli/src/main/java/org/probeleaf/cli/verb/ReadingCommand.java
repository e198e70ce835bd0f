// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;

import org.probeleaf.cli.answer.JobText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.PartBooks;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.job.Job;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.change.Change;
import org.probeleaf.job.change.EditReading;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.history.PlaceHistory;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.Circumstances;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.job.round.Offer;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.SignalGraph;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code reading}: pins a reading. */
@Command(name = "reading", description = {"Pin a reading to a place on a job's sheets, with what it should be; the"
        + " verdict and its reason are printed.", "", "Values are written as on the bench: 11.8V, 3k3, 4R7, 100n,"
        + " 1.2M, -5, 2.4Vpp, 50Hz, 23C, \"0.6 diode\", \"ESR 0.8\", >20M, ~2.5V, 4.7-5.1V, H, L, pulsing, open. Words after the"
        + " value are kept as a remark: \"2.2V flat\". Behind an @ stand the conditions, in square brackets the instrument:"
        + " \"2.2V flat @ reset held [scope, 10:1]\"; [] is the instrument named last."})
public final class ReadingCommand extends ChangeVerb {

    private static final String RAIL = "rail";
    private static final String FAMILY = "family";

    @Parameters(index = "2", paramLabel = "VALUE", description = "What was measured.")
    private String value;

    @Option(names = "--expect", paramLabel = "WHAT", description = {
        "What it should be: VALUE±TOL (5V±5%%; +- will do), a range LO..HI (4.75V..5.25V), a logic family"
                + " (74LS), the value of a board that works (\"good 4.1V\", 10 %% to either side), rail: what the net's name says (+5V),"
                + " 5 %% to either side, or family: the levels of the part there."})
    private String expect;

    @Option(names = "--like", paramLabel = "JOB", description = "It should be what was read last at this place of another"
            + " job, that of a board that works.")
    private Path like;

    @Option(names = "--conditions", paramLabel = "T", defaultValue = "", description = "In what state the unit was.")
    private String conditions;

    @Option(names = "--instrument", paramLabel = "T", defaultValue = "", description = "What it was read with.")
    private String instrument;

    @Option(names = "--note", paramLabel = "T", defaultValue = "", description = "A remark on the reading.")
    private String note;

    @Option(names = "--instead", description = "It was mistyped: put this in place of the last reading at this place.")
    private boolean instead;

    private Offer offer;

    public ReadingCommand(Console console) {
        super(console);
    }

    @Override
    Change change(Place place, Anchor anchor) {
        throw new IllegalStateException("a reading depends on its job");
    }

    @Override
    Change change(Job job, Place place, Anchor anchor) throws IOException {
        Circumstances said = new Circumstances(conditions, instrument);
        value = Circumstances.sameInstrument(value, job.state().readings());
        Instant now = Instant.now();
        if (!instead) {
            return new AddReading(ReadingMark.of(place, anchor, value, note, said, expected(job, place), now));
        }
        ReadingMark last = Readings.last(job.state(), place).orElseThrow(() -> new IllegalArgumentException(
                "there is no reading at " + place.text() + " yet; leave --instead away"));
        Expectation expectation = expect == null && like == null ? last.expectation() : expected(job, place);
        return new EditReading(last.typedAnew(value, note, said.or(last.circumstances()), expectation), now);
    }

    private Expectation expected(Job job, Place place) throws IOException {
        if (like != null) {
            if (expect != null) {
                throw new IllegalArgumentException("say --expect or --like, not both");
            }
            return asIn(like, place);
        }
        return expect == null ? null : named(job, place);
    }

    /** What is asked for by a word in place of a value. */
    private Expectation named(Job job, Place place) {
        PartBook book = PartBooks.book(console());
        if (expect.strip().equalsIgnoreCase(RAIL)) {
            return offered(Offer.rail(job.state(), book, place), () -> rail(job, place, book));
        }
        if (expect.strip().equalsIgnoreCase(FAMILY)) {
            return offered(Offer.family(job.state(), book, place), () -> "no part at " + place.text() + " is of a known logic"
                    + " family; name it, like --expect 74LS");
        }
        return Expectation.parse(expect);
    }

    private static String rail(Job job, Place place, PartBook book) {
        Optional<String> name = SignalGraph.of(job.state().boards().drawn(), book).netAt(place).map(Net::name);
        return "the net at " + place.text() + (name.isEmpty() ? " has no name" : " is named " + name.get()
                + ", which says no voltage") + "; say what it should be, like --expect 5V\u00b15%";
    }

    private Expectation offered(Optional<Offer> made, Supplier<String> otherwise) {
        offer = made.orElseThrow(() -> new IllegalArgumentException(otherwise.get()));
        return Expectation.parse(offer.expected());
    }

    /** What was read last at the place in the job of a board that works. */
    private static Expectation asIn(Path other, Place place) throws IOException {
        try (Job good = Job.openToRead(other)) {
            ReadingMark known = PlaceHistory.of(good.state(), place, PartBook.standard()).lastReading()
                    .orElseThrow(() -> Problem.usage(other + ": nothing was read at " + place.text() + " there"));
            return Expectation.parse("good " + known.value().text());
        }
    }

    @Override
    void done(Change change) {
        say(JobText.reading(change instanceof EditReading edit ? edit.reading() : ((AddReading) change).reading()));
        if (offer != null) {
            say(offer.expected() + " is expected because " + offer.why());
        }
    }
}
