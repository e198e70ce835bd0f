// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.ToDoubleFunction;

import org.probeleaf.benchmark.Case;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads the sheets of an evaluation folder and holds them against their true netlists. */
@Command(name = "score", mixinStandardHelpOptions = true,
        description = "Reads sheets whose netlists are known; prints figures, times and what confidence is worth.")
public final class ScoreCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "CASES", description = "Folder of folders with sheet.pdf and truth.json.")
    private Path cases;

    @Option(names = "--only", paramLabel = "NAME", description = "Only this case; may be given again.")
    private List<String> only = new ArrayList<>();

    @Option(names = "--out", paramLabel = "DIR",
            description = "Write an overlay picture for each page and the wrong nets of each case there.")
    private Path out;

    @Option(names = "--warm", paramLabel = "N", description = "Read each sheet N times before its times are taken.")
    private int warm;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter print = spec.commandLine().getOut();
        List<Case> all = Case.in(cases, only);
        List<Score> scores = new ArrayList<>();
        Calibration calibration = new Calibration();
        StringBuilder times = new StringBuilder();
        print.printf("%-28s %6s %6s %6s %6s   true parts/nets, exact nets%n", "case", "parts", "exact", "bcubed",
                "pins");
        for (Case c : all) {
            for (int i = 0; i < warm; i++) {
                Reading.of(c.sheet());
            }
            Reading reading = Reading.of(c.sheet());
            Judgement judgement = Judgement.of(reading.netlist(), Truth.read(c.truth()));
            Score s = judgement.score();
            scores.add(s);
            calibration.add(reading.netlist(), judgement);
            print.printf(Locale.ROOT, "%-28s %6.3f %6.3f %6.3f %6.3f   %d/%d, %d%n", c.name(), s.parts(), s.exact(),
                    s.bcubed(), s.pins(), s.trueParts(), s.trueNets(), s.exactNets());
            print.flush();
            times.append(times(c.name(), reading));
            if (out != null) {
                Files.createDirectories(out);
                Files.writeString(out.resolve(c.name() + ".txt"), WrongNets.text(judgement));
                Overlay.write(c, reading.netlist(), judgement, out);
            }
        }
        print.printf(Locale.ROOT, "%-28s %6.3f %6.3f %6.3f %6.3f   %d cases%n%n", "mean", mean(scores, Score::parts),
                mean(scores, Score::exact), mean(scores, Score::bcubed), mean(scores, Score::pins), scores.size());
        print.printf("%-28s %4s %7s %7s %9s   milliseconds%n%s%n", "sheet", "page", "open", "draw", "recognise", times);
        print.print(calibration.table());
        print.flush();
        return 0;
    }

    private static String times(String name, Reading reading) {
        StringBuilder lines = new StringBuilder();
        for (Reading.PageTime p : reading.pages()) {
            double open = p.page() == 1 ? reading.open() : 0;
            lines.append(String.format(Locale.ROOT, "%-28s %4d %7.1f %7.1f %9.1f%n", name, p.page(), open * 1e3,
                    p.draw() * 1e3, p.read() * 1e3));
        }
        return lines.append(String.format(Locale.ROOT, "%-28s %4s %25.1f%n", name, "all", reading.all() * 1e3))
                .toString();
    }

    private static double mean(List<Score> scores, ToDoubleFunction<Score> figure) {
        return scores.stream().mapToDouble(figure).average().orElse(0);
    }
}
