// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.score;

import java.util.Locale;
import java.util.Set;

import org.probeleaf.schematic.netlist.Net;
import org.probeleaf.schematic.netlist.Netlist;

/** Whether confidence means something: for each step of it, how many nets were read with it and how many are right. */
final class Calibration {

    /** Upper ends of the steps; the last takes all that is left. */
    private static final double[] BELOW = {0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98};
    private static final double SURE = 0.9;

    private final int[] nets = new int[BELOW.length + 1];
    private final int[] right = new int[BELOW.length + 1];
    private int sure;
    private int sureAndRight;

    void add(Netlist netlist, Judgement judgement) {
        Set<String> judged = judgement.judgedNets();
        Set<String> good = judgement.rightNets();
        for (Net net : netlist.nets()) {
            if (judged.contains(net.id())) {
                add(net.confidence(), good.contains(net.id()));
            }
        }
    }

    void add(double confidence, boolean isRight) {
        int step = 0;
        while (step < BELOW.length && confidence >= BELOW[step]) {
            step++;
        }
        nets[step]++;
        right[step] += isRight ? 1 : 0;
        if (confidence >= SURE) {
            sure++;
            sureAndRight += isRight ? 1 : 0;
        }
    }

    /** Share of right nets among those of 0.9 and more, or NaN where there are none. */
    double sureShare() {
        return (double) sureAndRight / sure;
    }

    String table() {
        StringBuilder table = new StringBuilder(line("confidence", "nets", "right", "share"));
        for (int i = 0; i < nets.length; i++) {
            if (nets[i] > 0) {
                String from = i == 0 ? "0.00" : String.format(Locale.ROOT, "%.2f", BELOW[i - 1]);
                String to = i == BELOW.length ? "1.00" : String.format(Locale.ROOT, "%.2f", BELOW[i]);
                table.append(line(from + " to " + to, nets[i], right[i], share(right[i], nets[i])));
            }
        }
        return table.append(line("0.90 and more", sure, sureAndRight, share(sureAndRight, sure))).toString();
    }

    private static String share(int part, int all) {
        return all == 0 ? "-" : String.format(Locale.ROOT, "%.3f", (double) part / all);
    }

    private static String line(Object name, Object count, Object good, Object share) {
        return String.format(Locale.ROOT, "%-16s %6s %6s %6s%n", name, count, good, share);
    }
}
