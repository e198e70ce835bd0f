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
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.job.Job;
import org.probeleaf.job.change.KeepBoardChange;
import org.probeleaf.job.change.PutBack;
import org.probeleaf.job.mark.KeptBoardChange;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code putback}: what is to be put back, and what has been. */
@Command(name = "putback", description = {
    "List what was done to the board for now and is still to be put back. With numbers of that list, or what they are"
            + " about (IC5.8, R12), note that it has been put back.",
    "A change that was to stay can be put back too, by what it is about."})
public final class PutBackCommand extends Verb {

    @Parameters(index = "0", paramLabel = "FILE", description = "The job.")
    private Path file;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "WHAT", description = "A number of the list, a pin, a part"
            + " or a place.")
    private List<String> words = List.of();

    @Option(names = "--all", description = "Everything on the list has been put back.")
    private boolean all;

    @Option(names = "--keep", description = "It is to stay: take it off the list, but leave it on the board.")
    private boolean keep;

    @Option(names = "--json", paramLabel = "OUT", description = "Write the answer as JSON (- for standard output).")
    private String json;

    public PutBackCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        if (words.isEmpty() && !all) {
            if (keep) {
                throw Problem.usage("say what is to stay: a number of the list, a pin, a part, or --all");
            }
            try (Job job = Job.openToRead(file)) {
                answer(job, List.of());
            }
            return ExitCode.DONE;
        }
        if (!words.isEmpty() && all) {
            throw Problem.usage("name what was put back, or say --all, not both");
        }
        try (Job job = Job.open(file)) {
            List<KeptBoardChange> open = job.state().boards().open();
            List<KeptBoardChange> meant = new ArrayList<>(all ? open : List.of());
            for (String word : words) {
                meant.add(BoardChangeFinder.find(job.state().boards(), word, file));
            }
            for (KeptBoardChange one : meant.stream().distinct().toList()) {
                job.apply(keep ? new KeepBoardChange(one.id(), Instant.now()) : new PutBack(one.id(), Instant.now()));
            }
            answer(job, meant);
        } catch (IllegalArgumentException e) {
            throw Problem.usage(e.getMessage());
        }
        return ExitCode.DONE;
    }

    private void answer(Job job, List<KeptBoardChange> done) throws IOException {
        List<KeptBoardChange> open = job.state().boards().open();
        if (json != null) {
            JsonTarget.object(console(), json, out -> BoardJson.putBack(out, keep ? List.of() : done,
                    keep ? done : List.of(), open));
            return;
        }
        for (KeptBoardChange one : done) {
            say((keep ? "To stay: " : "Put back: ") + one.words() + ".");
        }
        BoardText.open(console().out(), open);
    }
}
