// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.verb;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.probeleaf.cli.answer.NetsText;
import org.probeleaf.cli.answer.TimingJson;
import org.probeleaf.cli.io.Console;
import org.probeleaf.cli.io.DrawingSource;
import org.probeleaf.cli.io.ExitCode;
import org.probeleaf.cli.io.JsonTarget;
import org.probeleaf.cli.io.OutputNames;
import org.probeleaf.cli.io.PageRange;
import org.probeleaf.cli.io.Problem;
import org.probeleaf.cli.io.Problems;
import org.probeleaf.cli.io.SheetReader;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Netlist;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code nets}: recognise drawings. */
@Command(name = "nets", description = {
    "Read drawings and say what is connected: the parts, and each net with the pins on it.", "",
    "A drawing is a sheet (PDF, PNG, JPEG, TIFF), a job (*.probeleaf) or a netlist document (*.json). One that"
            + " cannot be read is named and left out; the others are still read."})
public final class NetsCommand extends Verb {

    @Parameters(paramLabel = "DRAWING", arity = "1..*", description = "Drawings to read.")
    private List<Path> drawings;

    @Option(names = "--pages", paramLabel = "LIST", description = "Pages of the sheets to read, as in 1-3,5.")
    private String pages;

    @Option(names = "--password", paramLabel = "P", description = "Opens a protected PDF.")
    private String password;

    @Option(names = "--json", paramLabel = "FILE|DIR", description = {
        "Write the netlist document to FILE (- for standard output), or into the folder DIR one document for each"
                + " drawing, named after it."})
    private String json;

    @Option(names = "--timing", paramLabel = "FILE", description =
            "Write how long each page took (- for standard output).")
    private String timing;

    public NetsCommand(Console console) {
        super(console);
    }

    @Override
    ExitCode run() {
        PageRange range = range();
        boolean folder = json != null && intoFolder();
        List<String> names = OutputNames.of(drawings);
        SheetReader reader = new SheetReader(console());
        DrawingSource source = new DrawingSource(reader);
        ExitCode code = ExitCode.DONE;
        for (int i = 0; i < drawings.size(); i++) {
            try {
                Netlist netlist = source.read(drawings.get(i), range, password);
                answer(netlist, drawings.get(i), folder ? Path.of(json, names.get(i) + ".json").toString() : json, i);
            } catch (IOException | RuntimeException | StackOverflowError e) {
                if (drawings.size() == 1) {
                    throw Problems.wrapped(e);
                }
                code = Problems.tell(console(), e, code);
            }
        }
        if (timing != null) {
            JsonTarget.object(console(), timing, out -> TimingJson.write(out, reader.timings()));
        }
        return code;
    }

    private void answer(Netlist netlist, Path drawing, String target, int index) {
        if (target != null) {
            JsonTarget.write(console(), target, out -> NetlistJson.write(netlist, out));
        } else if (!"-".equals(timing)) {
            if (index > 0) {
                say("");
            }
            NetsText.write(console().out(), drawing, netlist);
        }
    }

    private PageRange range() {
        try {
            return pages == null ? PageRange.all() : PageRange.parse(pages);
        } catch (IllegalArgumentException e) {
            throw Problem.usage(e.getMessage());
        }
    }

    /** Several drawings, an ending slash and a folder that is there mean a folder. */
    private boolean intoFolder() {
        if (json.equals("-")) {
            if ("-".equals(timing)) {
                throw Problem.usage("--json - and --timing - would mix on standard output; write one to a file");
            }
            if (drawings.size() > 1) {
                throw Problem.usage("standard output takes one document; name a folder, as in --json OUT/, for "
                        + drawings.size() + " drawings");
            }
            return false;
        }
        boolean there = Files.isDirectory(Path.of(json));
        if (drawings.size() > 1 && Files.exists(Path.of(json)) && !there) {
            throw Problem.usage(json + ": is a file; name a folder for " + drawings.size() + " documents");
        }
        return there || drawings.size() > 1 || json.endsWith("/") || json.endsWith(File.separator);
    }
}
