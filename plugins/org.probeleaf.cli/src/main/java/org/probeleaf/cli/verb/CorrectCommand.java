// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

import org.probeleaf.cli.answer.CorrectionJson;
import org.probeleaf.cli.answer.CorrectionText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JobFiles;
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.job.Job;
import org.probeleaf.job.JobState;
import org.probeleaf.job.change.RemoveCorrection;
import org.probeleaf.job.mark.Anchor;
import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Outcome;
import org.probeleaf.recognition.correction.Spot;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.place.Place;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code correct}: says what was read wrongly. */
@Command(name = "correct", description = {
    "Correct what was read from a job's sheets. Without WHAT the corrections are listed. A correction is pinned to its"
            + " place on the sheet and is put to every later reading of it; undo takes it back.", "",
    "join AT AT...              the places are on one net",
    "split AT                   the wire is cut here",
    "detach AT...               the pins, or the runs of wire here, are not on their net",
    "junction AT                the wires that cross here are joined",
    "no-junction AT             the wires that meet here pass each other",
    "name AT NAME               the net here bears this name",
    "add-pin AT IC4.21          the part has this pin, ending here (--name)",
    "move-pin AT AT             the pin ends elsewhere",
    "edit-pin AT                the pin is lettered otherwise (--number, --name)",
    "remove-pin AT              there is no such pin",
    "add-part REF AT AT         there is a part between these corners (--value, --unit)",
    "edit-part AT               the part is lettered otherwise (--ref, --value)",
    "remove-part AT             there is no such part",
    "unit AT REF                what is drawn here is a unit of this part (--unit)",
    "ignore AT AT               what is drawn between these corners does not count",
    "confirm AT                 it is right as read, whatever was doubted here",
    "withdraw N                 take back the correction with this number", "",
    "AT names a place: IC4.21, IC4, net:/RD or 1@120.5,300 (page, points from the left and the top)."})
public final class CorrectCommand extends Verb {

    @Parameters(index = "0", paramLabel = "FILE", description = "The job.")
    private Path file;

    @Parameters(index = "1", arity = "0..1", paramLabel = "WHAT", description = "What to correct.")
    private String what;

    @Parameters(index = "2..*", arity = "0..*", paramLabel = "WORDS", description = "Places, names, as listed above.")
    private List<String> words = List.of();

    @Option(names = "--number", paramLabel = "N", description = "Number of the pin; \"\" for none.")
    private String number;

    @Option(names = "--name", paramLabel = "N", description = "Name of the pin; \"\" for none.")
    private String name;

    @Option(names = "--ref", paramLabel = "R", description = "Designator of the part.")
    private String ref;

    @Option(names = "--value", paramLabel = "V", description = "Value of the part; \"\" for none.")
    private String value;

    @Option(names = "--unit", paramLabel = "U", description = "Letter or number of the unit.")
    private String unit;

    @Option(names = "--json", paramLabel = "OUT", description = "Write the answer as JSON (- for standard output).")
    private String json;

    public CorrectCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        if (what == null) {
            try (Job job = Job.openToRead(file)) {
                list(job.state());
            }
            return ExitCode.DONE;
        }
        try (Job job = Job.open(file)) {
            if (what.equals("withdraw")) {
                withdraw(job);
            } else {
                correct(job);
            }
        } catch (IllegalArgumentException e) {
            throw Problem.usage(e.getMessage());
        }
        return ExitCode.DONE;
    }

    private void list(JobState state) {
        if (json != null) {
            JsonTarget.object(console(), json, out -> CorrectionJson.list(out, state));
            return;
        }
        List<String> lines = CorrectionText.lines(state);
        lines.forEach(this::say);
        if (lines.isEmpty()) {
            say("There are no corrections.");
        }
    }

    private void withdraw(Job job) throws IOException {
        List<KeptCorrection> all = job.state().sheetReading().corrections();
        String one = words.size() == 1 ? words.get(0) : "";
        int index = one.matches("[1-9]\\d{0,6}") ? Integer.parseInt(one) - 1 : -1;
        if (index < 0 || index >= all.size()) {
            throw Problem.usage("withdraw takes the number of a correction, from 1 to " + all.size()
                    + "; probeleaf correct " + file + " lists them");
        }
        job.apply(new RemoveCorrection(all.get(index).id(), Instant.now()));
        if (json != null) {
            JsonTarget.object(console(), json, out -> CorrectionJson.list(out, job.state()));
        } else {
            say("Withdrawn: " + all.get(index).correction().words() + ".");
        }
    }

    private void correct(Job job) throws IOException {
        Correction correction = CorrectionWords.parse(what, words,
                new CorrectionWords.Options(number, name, ref, value, unit), at -> spot(job, at));
        Netlist before = JobFiles.netlist(job, console());
        Outcome outcome = job.correct(correction, Instant.now());
        Netlist after = job.state().netlist();
        if (json != null) {
            JsonTarget.object(console(), json, out -> CorrectionJson.done(out, correction, outcome, before, after));
        } else {
            CorrectionText.done(console().out(), correction, outcome, before, after);
        }
    }

    private Spot spot(Job job, String at) throws IOException {
        Place place = place(at);
        Anchor anchor = JobFiles.anchor(job, place, file, console());
        return new Spot(place, anchor.page(), anchor.at());
    }
}
