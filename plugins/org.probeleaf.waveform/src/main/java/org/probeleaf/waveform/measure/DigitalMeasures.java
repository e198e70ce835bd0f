// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.measure;

import org.probeleaf.waveform.capture.DigitalChannel;

/**
 * The figures of one line of logic states. Levels have no meaning: such a trace has no volts.
 *
 * @param period    distance of like edges, in seconds
 * @param frequency 1 by period, in hertz
 * @param duty      share of the time that it is high in a period
 * @param pulse     how long it is high, in seconds
 * @param edges     changes between 0 and 1
 * @param instants  when they are, in seconds
 * @param low       share of the time that it is 0
 * @param high      share of the time that it is 1
 * @param unknown   share of the time that it is x
 * @param floating  share of the time that it is z
 */
public record DigitalMeasures(Figure period, Figure frequency, Figure duty, Figure pulse, int edges, double[] instants,
        double low, double high, double unknown, double floating) {

    /** Measures a line; of a bus take its {@link DigitalChannel#lines()}. */
    public static DigitalMeasures of(DigitalChannel line) {
        double[] instants = new double[line.size()];
        int edges = 0;
        boolean firstRises = true;
        char level = ' ';
        double[] time = new double[4];
        for (int i = 0; i < line.size(); i++) {
            char now = line.state(i, 0);
            double until = i + 1 < line.size() ? line.at(i + 1) : line.end();
            time["01xz".indexOf(now)] += until - line.at(i);
            if (now == '0' || now == '1') {
                if (level != ' ' && level != now) {
                    firstRises = edges == 0 ? now == '1' : firstRises;
                    instants[edges++] = line.at(i);
                }
                level = now;
            }
        }
        double[] at = java.util.Arrays.copyOf(instants, edges);
        double[] unsure = new double[edges];
        java.util.Arrays.fill(unsure, line.tick() / 2);
        Rhythm rhythm = new Rhythm(at, unsure, firstRises);
        Figure period = rhythm.period();
        Figure frequency = period.known()
                ? Figure.of(1 / period.value(), period.uncertainty() / (period.value() * period.value())) : period;
        double all = time[0] + time[1] + time[2] + time[3];
        double share = all > 0 ? 1 / all : 0;
        if (all == 0 && line.size() > 0) {
            time["01xz".indexOf(line.state(line.size() - 1, 0))] = 1;
            share = 1;
        }
        return new DigitalMeasures(period, frequency, rhythm.duty(), rhythm.pulse(), edges, at, time[0] * share,
                time[1] * share, time[2] * share, time[3] * share);
    }
}
