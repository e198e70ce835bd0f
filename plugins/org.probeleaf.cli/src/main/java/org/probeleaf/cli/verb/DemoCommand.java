// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import org.probeleaf.cli.answer.JobText;
import org.probeleaf.cli.answer.TraceAnswer;
import org.probeleaf.cli.answer.TraceText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JobFiles;
import org.probeleaf.cli.io.PartBooks;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.cli.io.Workbench;
import org.probeleaf.job.Job;
import org.probeleaf.job.change.AddLabel;
import org.probeleaf.job.change.AddNote;
import org.probeleaf.job.change.AddReading;
import org.probeleaf.job.details.Hazard;
import org.probeleaf.job.details.JobDetails;
import org.probeleaf.job.expectation.Expectation;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.LabelMark;
import org.probeleaf.job.mark.NoteMark;
import org.probeleaf.job.mark.ReadingMark;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.follow.FollowOptions;
import org.probeleaf.trace.follow.SignalNetwork;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code demo}: the example from the sheet to the hand-over. */
@Command(name = "demo", description = {"Take the example from the sheet to the hand-over: make a job of it, trace its"
        + " read strobe over both pages, pin readings, write the marked-up sheet, and open the window on it where there"
        + " is a display."})
public final class DemoCommand extends Verb {

    private static final Place STROBE = Place.parse("IC1.21");
    private static final Place PORT = Place.parse("IC9.1");

    @Option(names = "--out", paramLabel = "DIR", defaultValue = "probeleaf-demo",
            description = "The folder to write to (probeleaf-demo where none is named).")
    private Path out;

    @Option(names = "--no-window", description = "Write the files and open no window.")
    private boolean noWindow;

    public DemoCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException, InterruptedException {
        Files.createDirectories(out);
        Path file = freeName();
        JobDetails details = new JobDetails("Tern Instruments TL-8 harbour tide logger, serial 0421",
                "Harbour office, Skerry Quay", "Clock and display run, but the tide stays at 0.00 m.",
                "Bench 2", List.of(Hazard.STATIC, Hazard.HEAT));
        say("The sheet");
        say("  A harbour sends in its tide logger: clock and display run, the tide stays at zero. There is a schematic"
                + " of two pages:");
        say("  " + sheet());
        say("");
        try (Job job = Job.create(file, List.of(sheet()), details)) {
            JobFiles.netlist(job, console());
            say("The job");
            JobText.writeHead(console().out(), job.state());
            say("");
            trace(job);
            pin(job);
            List<Path> marked = JobFiles.handOver(job, out, Instant.now(), false, console());
            say("");
            where(file, marked);
        }
        return window(file);
    }

    private void trace(Job job) {
        SignalNetwork network = SignalNetwork.of(job.state().netlist(), PartBooks.book(console()));
        say("Where the read strobe of the processor goes");
        TraceText.write(console().out(), TraceAnswer.of(network, STROBE, null, FollowOptions.netOnly(), false));
        say("");
        say("How it gets to the port that reads the float");
        TraceText.writePaths(console().out(), TraceAnswer.of(network, STROBE, PORT, FollowOptions.netOnly(), false));
        say("");
    }

    private void pin(Job job) throws IOException {
        say("What the bench finds, pinned to the sheet");
        Place strobe = Place.parse("net:/RD");
        job.apply(new AddLabel(LabelMark.of(strobe, anchor(job, strobe), "read strobe", Instant.now())));
        reading(job, "IC14.1", "8.7V", "8V..12V", "");
        reading(job, "TP3", "5.02V", "5V+-5%", "");
        reading(job, "IC1.21", "3.6Vpp", null, "pulses all the time");
        reading(job, "IC5.10", "3.5Vpp", null, "pulses with each poll of the float");
        reading(job, "IC5.8", "4.3V flat", "0V..0.8V", "should go low with each poll");
        Place gate = Place.parse("IC5.9");
        job.apply(new AddNote(NoteMark.of(gate, anchor(job, gate), "Pins 9 and 10 both go low, pin 8 never does: this"
                + " gate is dead, so the port IC9 is never read. IC5 is in a socket; fit another and try again.",
                Instant.now())));
        job.state().notes().forEach(note -> say("  " + note.place().text() + "  " + note.text()));
    }

    private void reading(Job job, String at, String typed, String expected, String note) throws IOException {
        Place place = Place.parse(at);
        ReadingMark mark = ReadingMark.of(place, anchor(job, place), typed, note,
                expected == null ? null : Expectation.parse(expected), Instant.now());
        job.apply(new AddReading(mark));
        say("  " + JobText.reading(mark));
    }

    private Anchor anchor(Job job, Place place) throws IOException {
        return JobFiles.anchor(job, place, job.file(), console());
    }

    private void where(Path file, List<Path> marked) {
        say("Where everything is");
        say("  the job                " + file.toAbsolutePath().normalize());
        marked.forEach(m -> say("  the marked-up sheet    " + m.toAbsolutePath().normalize()));
        say("");
        say("Look further with");
        // The launcher of a checkout is called by its path.
        String program = System.getProperty("probeleaf.program", "probeleaf");
        say("  " + program + " job show " + file);
        say("  " + program + " trace " + file + " --from IC5.8");
        say("  " + program + " window " + file);
    }

    private ExitCode window(Path file) throws IOException, InterruptedException {
        Workbench workbench = Workbench.of(console());
        if (noWindow) {
            return ExitCode.DONE;
        }
        if (!workbench.canOpen()) {
            say("There is no display here, so no window opens.");
            return ExitCode.DONE;
        }
        say("The window opens on the job.");
        console().out().flush();
        int code = workbench.open(List.of(file.toAbsolutePath().toString()));
        if (code != 0) {
            throw Problem.other("the window ended with code " + code + "; what it printed says why", null);
        }
        return ExitCode.DONE;
    }

    private Path sheet() {
        Path home = console().home();
        Path sheet = home == null ? null : home.resolve("examples/tern-tl8/tern-tl8.pdf");
        if (sheet == null || !Files.isRegularFile(sheet)) {
            throw Problem.other("the example is not part of this folder; take it whole, with its folder examples",
                    null);
        }
        return sheet;
    }

    /** A job of an earlier run stays as it is, since the person may have worked on. */
    private Path freeName() {
        Path file = out.resolve("tern-tl8.probeleaf");
        for (int i = 2; Files.exists(file); i++) {
            file = out.resolve("tern-tl8-" + i + ".probeleaf");
        }
        return file;
    }
}
