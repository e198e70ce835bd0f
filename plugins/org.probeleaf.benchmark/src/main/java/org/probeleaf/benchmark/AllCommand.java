// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** All measurements, one after the other. */
@Command(name = "all", mixinStandardHelpOptions = true,
        description = "All of these, one after the other: for the page of figures. Takes about an hour.")
final class AllCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "CASES", description = "Folder of folders with sheet.pdf and truth.json.")
    private Path cases;

    @Option(names = "--out", paramLabel = "DIR", description = "Where overlay pictures and files that fail go.")
    private Path out;

    @Option(names = "--damaged", paramLabel = "N", defaultValue = "5000",
            description = "How many damaged files are read. Default: ${DEFAULT-VALUE}.")
    private int damaged;

    @Option(names = "--more", paramLabel = "PDF|DIR", description = "More good PDFs to damage; may be given again.")
    private List<Path> more = new ArrayList<>();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        List<String> score = new ArrayList<>(List.of("score", cases.toString()));
        List<String> fuzz = new ArrayList<>(List.of("fuzz", cases.toString(), "--count", String.valueOf(damaged)));
        more.forEach(m -> fuzz.add(m.toString()));
        if (out != null) {
            score.addAll(List.of("--out", out.resolve("overlays").toString()));
            fuzz.addAll(List.of("--keep", out.resolve("damaged").toString()));
        }
        int worst = 0;
        for (List<String> line : List.of(score, List.of("speed", cases.toString()), List.of("growth"), List.of("set"),
                List.of("lettering"), fuzz)) {
            PrintWriter print = spec.commandLine().getOut();
            print.println("== " + String.join(" ", line));
            print.flush();
            CommandLine root = spec.root().commandLine();
            worst = Math.max(worst, root.execute(line.toArray(String[]::new)));
            print.println();
        }
        return worst;
    }
}
