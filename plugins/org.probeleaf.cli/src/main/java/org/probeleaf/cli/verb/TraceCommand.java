// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.IOException;
import java.nio.file.Path;

import org.probeleaf.cli.answer.TraceAnswer;
import org.probeleaf.cli.answer.TraceJson;
import org.probeleaf.cli.answer.TraceText;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.DrawingSource;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.cli.io.PageRange;
import org.probeleaf.cli.io.PartBooks;
import org.probeleaf.cli.io.SheetReader;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.place.Place;
import org.probeleaf.trace.follow.Flow;
import org.probeleaf.trace.follow.FollowOptions;
import org.probeleaf.trace.follow.SignalNetwork;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code trace}: where a signal goes. */
@Command(name = "trace", description = {
    "Say where a signal goes: every pin on the net at a place, on all sheets, drivers and loads told apart; with --to"
            + " also the ways from there to another place.", "",
    "--series and --gates follow it on through parts, as a tree: each line says why the signal goes there, or why it is"
            + " not followed further.", "",
    "AT names a place: IC4.21 (part and pin), IC4 (a part), net:/RD (a net by name or id), 1@120.5,300 (page, and"
            + " points from the left and the top)."})
public final class TraceCommand extends Verb {

    @Parameters(paramLabel = "DRAWING", description = "A sheet, a job or a netlist document.")
    private Path drawing;

    @Option(names = "--from", paramLabel = "AT", required = true, description = "Where to begin.")
    private String from;

    @Option(names = "--to", paramLabel = "AT", description = {
        "Where the signal should arrive. Ways lead through what --series and --gates name, through both where neither"
                + " is given."})
    private String to;

    @Option(names = "--series", description = {
        "Follow the signal through resistors, capacitors, coils, diodes, fuses, links, switches and mating"
                + " connectors."})
    private boolean series;

    @Option(names = "--gates", description = {
        "Follow it through transistors, gates, buffers, latches, counters and their like, from input to output of the"
                + " same section."})
    private boolean gates;

    @Option(names = "--upstream", description = "Follow it back to where it comes from.")
    private boolean upstream;

    @Option(names = "--cuts", description = "List what each lifted pin or missing part on the way would cut off.")
    private boolean cuts;

    @Option(names = "--password", paramLabel = "P", description = "Opens a protected PDF.")
    private String password;

    @Option(names = "--json", paramLabel = "FILE", description = "Write the answer as JSON (- for standard output).")
    private String json;

    public TraceCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() throws IOException {
        Place start = place(from);
        Place end = to == null ? null : place(to);
        Netlist netlist = new DrawingSource(new SheetReader(console())).read(drawing, PageRange.all(), password);
        SignalNetwork network = SignalNetwork.of(netlist, PartBooks.book(console()));
        FollowOptions options = FollowOptions.netOnly().withSeries(series).withGates(gates)
                .with(upstream ? Flow.UPSTREAM : Flow.DOWNSTREAM);
        TraceAnswer answer = TraceAnswer.of(network, start, end, options, cuts);
        if (json != null) {
            JsonTarget.object(console(), json, out -> TraceJson.write(out, answer));
        } else {
            TraceText.write(console().out(), answer);
        }
        return ExitCode.DONE;
    }
}
