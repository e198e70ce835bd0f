// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.probeleaf.diagnosis.Diagnosis;
import org.probeleaf.diagnosis.Given;
import org.probeleaf.diagnosis.Observation;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.job.Boards;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobState;
import org.probeleaf.job.observation.Episode;
import org.probeleaf.job.observation.JobDiagnosis;
import org.probeleaf.recognition.Progress;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.SignalGraph;

/**
 * The diagnosis of what a person names as a drawing: of a job with its readings, of a sheet or a document with what is
 * said on the command line alone.
 *
 * @param diagnosis to be asked for its finding
 * @param readings  what the job's readings say, the board as it is last; nothing of a sheet or a document
 */
public record Bench(Diagnosis diagnosis, List<Observation> readings) {

    public Bench {
        readings = List.copyOf(readings);
    }

    /** What a person says beside the drawing. */
    public record Said(List<Given> given, List<Observation> seen) {
    }

    /**
     * Reads a drawing.
     *
     * @param password of a protected sheet, or null
     */
    public static Bench of(Path drawing, String password, Console console, Priors priors, Said said)
            throws IOException {
        PartBook book = PartBooks.book(console);
        if (DrawingSource.kind(drawing) != DrawingSource.Kind.JOB) {
            Netlist netlist = new DrawingSource(new SheetReader(console)).read(drawing, PageRange.all(), password);
            return new Bench(Diagnosis.of(netlist, book, priors).given(said.given()).with(said.seen()), List.of());
        }
        try (Job job = Job.openToRead(drawing)) {
            JobState state = job.state().onBench() != null ? job.state() : recognised(job, book);
            Said named = named(said, state, book);
            Diagnosis diagnosis = JobDiagnosis.of(state, book, priors, named.given()).orElseThrow();
            List<Observation> readings = Episode.of(state, book).stream().flatMap(e -> e.seen().stream()).toList();
            return new Bench(diagnosis.with(named.seen()), readings);
        }
    }

    /** A job whose sheets were not read yet. */
    private static JobState recognised(Job job, PartBook book) throws IOException {
        JobState s = job.state();
        Boards boards = Boards.of(job.recognise(book, Progress.NONE), s.boards().kept());
        return new JobState(s.details(), s.sheets(), s.sheetReading(), s.labels(), s.notes(), s.readings(),
                s.captures(), boards, s.log(), s.undoName(), s.redoName(), s.revision());
    }

    /** Nets by the technician's own names become nets by id. */
    private static Said named(Said said, JobState state, PartBook book) {
        if (state.labels().isEmpty()) {
            return said;
        }
        SignalGraph graph = SignalGraph.of(Labels.applied(state.onBench(), state.labels()), book);
        List<Given> given = new ArrayList<>();
        said.given().forEach(g -> given.add(new Given(named(g.at(), graph), g.high())));
        List<Observation> seen = new ArrayList<>();
        said.seen().forEach(o -> seen.add(new Observation(named(o.at(), graph), o.seen())));
        return new Said(given, seen);
    }

    private static Place named(Place place, SignalGraph graph) {
        Optional<Net> net = place instanceof Place.OfNet ? graph.netAt(place) : Optional.empty();
        return net.<Place>map(n -> new Place.OfNet(n.id())).orElse(place);
    }
}
