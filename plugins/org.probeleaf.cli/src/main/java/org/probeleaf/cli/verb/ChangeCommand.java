// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.cli.answer.BoardJson;
import org.probeleaf.cli.answer.BoardText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JobFiles;
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.job.Job;
import org.probeleaf.job.mark.Board;
import org.probeleaf.job.mark.KeptBoardChange;
import org.probeleaf.schematic.board.BoardChange;
import org.probeleaf.trace.board.ChangeOutcome;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code change}: what was done to the board. */
@Command(name = "change", description = {
    "Note what was done to the board on the bench, or how it differs from its drawing. Traces, levels and suspects"
            + " follow the board from then on. What is --temporary stands on the put-back list.", "",
    "lift IC4.21...             the pins are off their pads",
    "remove R12...              the parts are out",
    "fit R12                    a part that was out is in again",
    "fit R99=10k:AT,AT          a part is in that the drawing does not have, its pins 1, 2... there",
    "replace IC5                another specimen is in; IC5=74HCT32 of another type",
    "link AT AT                 a wire joins the places",
    "cut AT...                  the track is cut there; at a pin, close to it",
    "value R12=3k3...           the part has another value than drawn", "",
    "AT names a place: IC4.21, IC4, net:/RD or 1@120.5,300 (page, points from the left and the top)."})
public final class ChangeCommand extends Verb {

    @Parameters(index = "0", paramLabel = "FILE", description = "The job.")
    private Path file;

    @Parameters(index = "1", paramLabel = "WHAT", description = "What was done.")
    private String what;

    @Parameters(index = "2..*", arity = "1..*", paramLabel = "AT", description = "Where, as listed above.")
    private List<String> words = List.of();

    @Option(names = "--temporary", description = "It is to be put back before the unit leaves.")
    private boolean temporary;

    @Option(names = "--value", paramLabel = "V", description = "The value, where it is not written after =.")
    private String value;

    @Option(names = "--note", paramLabel = "T", defaultValue = "", description = "A remark on it.")
    private String note;

    @Option(names = "--known-good", description = {"It is so on a board that is known to work, not on the one on the"
            + " bench."})
    private boolean knownGood;

    @Option(names = "--json", paramLabel = "OUT", description = "Write the answer as JSON (- for standard output).")
    private String json;

    public ChangeCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        if (temporary && knownGood) {
            throw Problem.usage("what is temporary is put back on the board on the bench; leave --known-good or"
                    + " --temporary out");
        }
        try (Job job = Job.open(file)) {
            List<BoardChange> changes = BoardChangeWords.parse(what, words, value);
            JobFiles.netlist(job, console());
            Instant now = Instant.now();
            List<KeptBoardChange> kept = new ArrayList<>();
            for (BoardChange change : changes) {
                kept.add(KeptBoardChange.of(knownGood ? Board.KNOWN_GOOD : Board.THIS,
                        JobFiles.named(job, change, file, console()), temporary, note, now));
            }
            List<ChangeOutcome> outcomes = job.changeBoard(kept);
            if (json != null) {
                JsonTarget.object(console(), json, out -> BoardJson.done(out, kept, outcomes, job.state().boards()));
            } else {
                BoardText.done(console().out(), kept, outcomes, job.state().boards());
            }
        } catch (IllegalArgumentException e) {
            throw Problem.usage(e.getMessage());
        }
        return ExitCode.DONE;
    }
}
