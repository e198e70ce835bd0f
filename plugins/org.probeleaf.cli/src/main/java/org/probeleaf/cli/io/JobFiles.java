// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.io;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.probeleaf.handover.MarkedSheet;
import org.probeleaf.handover.MarkedSheetOptions;
import org.probeleaf.handover.WaveformSheet;
import org.probeleaf.handover.wave.Wave;
import org.probeleaf.handover.wave.WaveReader;
import org.probeleaf.handover.wave.WaveSource;
import org.probeleaf.job.Job;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.recognition.Progress;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.LevelBook;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.SignalGraph;
import org.probeleaf.waveform.judge.ThresholdWords;

/** What the verbs that change a job share. */
public final class JobFiles {

    private JobFiles() {
    }

    /** The job's netlist; recognised and kept where it has none yet. */
    public static Netlist netlist(Job job, Console console) throws IOException {
        if (job.state().netlist() == null) {
            job.setNetlist(recognise(job, console));
        }
        return job.state().netlist();
    }

    /** Recognises the job's sheets and shows how far it is. */
    public static Netlist recognise(Job job, Console console) throws IOException {
        try {
            return job.recognise(PartBooks.book(console), new Progress() {
                @Override
                public void pagesDone(int done, int total) {
                    console.progress(job.file().getFileName() + ": reading page " + done + " of " + total);
                }
            });
        } finally {
            console.progressDone();
        }
    }

    /**
     * Writes the job's marked-up sheets, with its technician as author, and names them.
     *
     * @param sheetOnly leaves out the pages of waveforms
     */
    public static List<Path> handOver(Job job, Path folder, Instant when, boolean sheetOnly, Console console)
            throws IOException {
        List<Wave> waves = new WaveReader(WaveSource.FILES, new ThresholdWords(LevelBook.standard(), PartBooks.book(console)))
                .all(job);
        MarkedSheetOptions options = MarkedSheetOptions.of(job.state().details().technician(), when).withWaves(waves);
        List<Path> files = new ArrayList<>(MarkedSheet.write(job, options, folder));
        if (!sheetOnly) {
            WaveformSheet.write(job.state().details(), options, folder).ifPresent(files::add);
        }
        return files;
    }

    /**
     * A change of the board as the job can keep it: where it names a net by a name of the technician's own, the spot
     * of that label stands for it.
     *
     * @throws Problem where the job's sheets have no such place
     */
    public static BoardChange named(Job job, BoardChange change, Path file, Console console) throws IOException {
        if (change instanceof BoardChange.Link c) {
            return new BoardChange.Link(named(job, c.from(), file, console), named(job, c.to(), file, console));
        }
        if (change instanceof BoardChange.Cut c) {
            return new BoardChange.Cut(named(job, c.at(), file, console));
        }
        if (change instanceof BoardChange.Fit c) {
            List<Place> at = new ArrayList<>();
            for (Place place : c.at()) {
                at.add(named(job, place, file, console));
            }
            return new BoardChange.Fit(c.ref(), c.value(), at);
        }
        return change;
    }

    private static Place named(Job job, Place place, Path file, Console console) throws IOException {
        boolean own = place instanceof Place.OfNet net && job.state().labels().stream()
                .anyMatch(l -> l.text().equalsIgnoreCase(net.net()));
        if (!own || Anchor.of(place, netlist(job, console)).isPresent()) {
            return place;
        }
        Anchor anchor = anchor(job, place, file, console);
        return new Place.OnPage(anchor.page(), anchor.at().x(), anchor.at().y());
    }

    /**
     * The spot that a place means in a job, the technician's net labels included.
     *
     * @throws Problem where the job's sheets have no such place
     */
    public static Anchor anchor(Job job, Place place, Path file, Console console) throws IOException {
        Netlist netlist = place instanceof Place.OnPage && job.state().netlist() == null ? null
                : netlist(job, console);
        if (place instanceof Place.OnPage spot && spot.page() > job.state().pageCount()) {
            throw Problem.usage(file + ": there is no page " + spot.page() + "; the job has "
                    + job.state().pageCount());
        }
        Optional<Anchor> anchor = Anchor.of(place, netlist);
        if (anchor.isPresent()) {
            return anchor.get();
        }
        SignalGraph graph = SignalGraph.of(Labels.applied(netlist, job.state().labels()), PartBook.standard());
        if (place instanceof Place.OfNet) {
            Optional<Anchor> labelled = graph.netAt(place)
                    .flatMap(net -> Anchor.of(new Place.OfNet(net.id()), netlist));
            if (labelled.isPresent()) {
                return labelled.get();
            }
        }
        graph.trace(place);
        throw Problem.usage(file + ": " + place.text() + " is nowhere on the sheets; name another place");
    }
}
