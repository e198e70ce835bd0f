// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.cli.answer.SuspectsJson;
import org.probeleaf.cli.answer.SuspectsText;
import org.probeleaf.cli.io.Bench;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.cli.io.PartBooks;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.diagnosis.Finding;
import org.probeleaf.diagnosis.Given;
import org.probeleaf.diagnosis.Observation;
import org.probeleaf.diagnosis.fault.Priors;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code suspects}: which parts may be to blame, and where to probe next. */
@Command(name = "suspects", description = {
    "Say which parts may be to blame for what was seen on the board, why, and where to probe next. Of a job the board"
            + " as it is counts, and its readings count by themselves; --observe adds to them.", "",
    "AT names a place: IC4.21 (part and pin), net:/RD (a net by name or id), 1@120.5,300 (page, and points from the left"
            + " and the top)."})
public final class SuspectsCommand extends Verb {

    @Parameters(paramLabel = "DRAWING", description = "A sheet, a job or a netlist document.")
    private Path drawing;

    @Option(names = "--inputs", paramLabel = "NET=0|1", description = {
        "Nets that are held at a level, with commas between: the inputs of a test. What the rest should then be is worked"
                + " out where the functions of the parts are known."})
    private List<String> inputs = new ArrayList<>();

    @Option(names = "--observe", paramLabel = "AT=WHAT", description = {
        "What was seen at a place: good, bad, 0 or 1. May be given again."})
    private List<String> observe = new ArrayList<>();

    @Option(names = "--priors", paramLabel = "FILE", description = {
        "How readily parts fail: what it names counts in place of the usual weights. Without it priors.txt in the folder"
                + " of the own part book counts, where there is one."})
    private Path priors;

    @Option(names = "--show-priors", description = "Print the weights that are used, as --priors reads them, and end.")
    private boolean showPriors;

    @Option(names = "--password", paramLabel = "P", description = "Opens a protected PDF.")
    private String password;

    @Option(names = "--json", paramLabel = "FILE", description = "Write the answer as JSON (- for standard output).")
    private String json;

    public SuspectsCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        Path own = PartBooks.folder(console()).path().resolve("priors.txt");
        Priors weights = priors != null ? read(priors) : Files.isRegularFile(own) ? read(own) : Priors.standard();
        if (showPriors) {
            console().out().print(weights.format());
            return ExitCode.DONE;
        }
        List<Given> given = new ArrayList<>();
        List<Observation> seen = new ArrayList<>();
        try {
            inputs.forEach(i -> given.addAll(Given.parseAll(i)));
            observe.forEach(o -> seen.add(Observation.parse(o)));
        } catch (IllegalArgumentException e) {
            throw Problem.usage(e.getMessage());
        }
        Bench bench = Bench.of(drawing, password, console(), weights, new Bench.Said(given, seen));
        Finding finding = bench.diagnosis().finding();
        if (json != null) {
            JsonTarget.object(console(), json, out -> SuspectsJson.write(out, finding));
        } else {
            SuspectsText.write(console().out(), finding, bench.readings());
        }
        return ExitCode.DONE;
    }

    private static Priors read(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw Problem.input(file + ": there is no such file; check the name", null);
        }
        try {
            return Priors.parse(Files.readString(file));
        } catch (IllegalArgumentException | java.nio.charset.CharacterCodingException e) {
            throw Problem.input(file + ": " + e.getMessage(), e);
        }
    }
}
