// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.cli.answer;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;

import org.probeleaf.job.JobState;
import org.probeleaf.job.mark.KeptCorrection;
import org.probeleaf.recognition.correction.Correction;
import org.probeleaf.recognition.correction.Outcome;
import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;
import org.probeleaf.schematic.partbook.PartBook;
import org.probeleaf.trace.SignalGraph;

/** Corrections for people. */
public final class CorrectionText {

    private CorrectionText() {
    }

    /** Each correction of a job, numbered, with what stands against it. */
    public static List<String> lines(JobState state) {
        List<String> lines = new ArrayList<>();
        List<KeptCorrection> all = state.sheetReading().corrections();
        for (int i = 0; i < all.size(); i++) {
            Outcome outcome = state.sheetReading().outcome(i);
            lines.add(Words.padded((i + 1) + ".", 4) + all.get(i).correction().words() + state(outcome));
        }
        return lines;
    }

    private static String state(Outcome outcome) {
        return outcome == null ? "" : switch (outcome.state()) {
            case DONE -> "";
            case ALREADY -> "  (the sheets are now read that way)";
            case WITHOUT_EFFECT -> "  (does not show: " + outcome.why() + ")";
            case NO_PLACE -> "  (finds no place: " + outcome.why() + ")";
        };
    }

    /** What a correction has done: the nets that are others now. */
    public static void done(PrintStream out, Correction correction, Outcome outcome, Netlist before, Netlist after) {
        out.println("Corrected: " + correction.words() + ".");
        if (!outcome.holds()) {
            out.println("It does not show yet: " + outcome.why() + ".");
        }
        SignalGraph graph = SignalGraph.of(after, PartBook.standard());
        List<Net> changed = changed(before, after);
        int width = changed.stream().mapToInt(n -> n.title().length()).filter(l -> l <= 24).max().orElse(8);
        for (Net net : changed) {
            List<String> pins = new ArrayList<>(graph.pinsOn(net.id()).stream().map(p -> p.place().text()).toList());
            if (pins.isEmpty()) {
                pins.add("(no pin)");
            }
            Words.wrapped(out, "  " + Words.padded(net.title(), width) + "  ", pins);
        }
    }

    /** The nets after a change that were not there just so before: other pins, or another name. */
    static List<Net> changed(Netlist before, Netlist after) {
        return after.nets().stream().filter(n -> before.net(n.id()).isEmpty()
                || !n.title().equals(before.net(n.id()).get().title())
                || !pins(n, before).equals(pins(n, after))).toList();
    }

    private static List<String> pins(Net net, Netlist netlist) {
        return netlist.parts().stream().flatMap(p -> p.pins().stream().filter(q -> net.id().equals(q.net()))
                .map(q -> p.ref() + "." + q.label() + "@" + q.page() + q.at())).sorted().toList();
    }
}
