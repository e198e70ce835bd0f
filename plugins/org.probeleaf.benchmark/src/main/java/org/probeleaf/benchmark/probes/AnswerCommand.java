// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.probes;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;

import org.probeleaf.diagnosis.Diagnosis;
import org.probeleaf.diagnosis.Finding;
import org.probeleaf.diagnosis.Observation;
import org.probeleaf.diagnosis.Seen;
import org.probeleaf.diagnosis.fault.Priors;
import org.probeleaf.schematic.json.NetlistJson;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.schematic.place.Place;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Times the answer to one bad reading, for each net of a board in turn. */
@Command(name = "answer", mixinStandardHelpOptions = true,
        description = "Times the diagnosis of a board on which one net reads bad, for every net in turn: processor time of a"
                + " warm program.")
public final class AnswerCommand implements Callable<Integer> {

    private static final int ROUNDS = 3;

    @Parameters(paramLabel = "NETLIST", description = "Netlist documents.")
    private List<Path> documents;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        PrintWriter print = spec.commandLine().getOut();
        print.printf("%-24s %6s %6s %9s %9s %9s %9s%n", "board", "parts", "nets", "circuit", "median", "95 %", "longest");
        for (Path document : documents) {
            Netlist board;
            try (InputStream in = Files.newInputStream(document)) {
                board = NetlistJson.read(in);
            }
            times(print, document.getFileName().toString(), board);
        }
        print.flush();
        return 0;
    }

    private static void times(PrintWriter print, String name, Netlist board) {
        List<Double> answers = new ArrayList<>();
        double circuit = 0;
        for (int round = 0; round < ROUNDS; round++) {
            answers.clear();
            long start = processor();
            Diagnosis sound = Diagnosis.of(board, PartBook.standard(), Priors.standard());
            circuit = (processor() - start) / 1e6;
            for (Net net : board.nets()) {
                Diagnosis diagnosis = sound.with(List.of(new Observation(new Place.OfNet(net.id()), Seen.BAD)));
                long asked = processor();
                Finding finding = diagnosis.finding();
                answers.add(finding.suspects().isEmpty() ? 0 : (processor() - asked) / 1e6);
            }
        }
        answers.sort(null);
        print.printf(Locale.ROOT, "%-24s %6d %6d %6.0f ms %6.0f ms %6.0f ms %6.0f ms%n", name, board.parts().size(),
                board.nets().size(), circuit, at(answers, 0.5), at(answers, 0.95), at(answers, 1));
    }

    /** Time of the processor that this thread has taken, in nanoseconds: what else the machine does is left out. */
    static long processor() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static double at(List<Double> sorted, double share) {
        return sorted.isEmpty() ? 0 : sorted.get((int) Math.round(share * (sorted.size() - 1)));
    }
}
