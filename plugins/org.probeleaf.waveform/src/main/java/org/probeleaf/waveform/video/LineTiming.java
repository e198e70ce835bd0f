// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.video;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.probeleaf.waveform.measure.Figure;
import org.probeleaf.waveform.video.SyncPulses.Pulse;

/**
 * The rates that follow from the sync pulses.
 *
 * @param period    of a line, in seconds; NaN where the pulses are no line sync
 * @param jitter    standard deviation of the distance of lines, in seconds
 * @param lineRate  in hertz
 * @param fieldRate in hertz
 * @param lines     lines in a field
 * @param even      share of the distances that are one line
 */
record LineTiming(double period, double jitter, Figure lineRate, Figure fieldRate, Figure lines, double even) {

    private static final double SHORTEST = 50e-6;
    private static final double LONGEST = 80e-6;
    private static final double NEAR = 0.02;
    private static final int APART = 20;

    static LineTiming of(List<Pulse> pulses, double interval) {
        List<Pulse> line = pulses.stream().filter(Pulse::line).toList();
        double[] d = new double[Math.max(0, line.size() - 1)];
        for (int i = 0; i < d.length; i++) {
            d[i] = line.get(i + 1).start() - line.get(i).start();
        }
        double[] likely = Arrays.stream(d).filter(x -> x > SHORTEST && x < LONGEST).sorted().toArray();
        if (likely.length < 2) {
            return new LineTiming(Double.NaN, Double.NaN, Figure.none("there is no line sync"),
                    Figure.none("there is no line sync"), Figure.none("there is no line sync"), 0);
        }
        double usual = likely[likely.length / 2];
        double[] near = Arrays.stream(likely).filter(x -> Math.abs(x - usual) < NEAR * usual).toArray();
        double period = Arrays.stream(near).average().orElse(usual);
        double square = Arrays.stream(near).map(x -> (x - period) * (x - period)).average().orElse(0);
        double jitter = Math.sqrt(square);
        double unsure = 3 * jitter / Math.sqrt(near.length) + interval * 0.02 / near.length;
        Figure rate = Figure.of(1 / period, unsure / (period * period));
        List<Double> fields = fields(pulses, period);
        if (fields.size() < 2) {
            Figure none = Figure.none(fields.isEmpty() ? "the capture holds no field sync" : "the capture holds one field sync"
                    + " only");
            return new LineTiming(period, jitter, rate, none, none, (double) near.length / d.length);
        }
        double field = (fields.get(fields.size() - 1) - fields.get(0)) / (fields.size() - 1);
        double off = (interval + 3 * jitter) / (fields.size() - 1);
        return new LineTiming(period, jitter, rate, Figure.of(1 / field, off / (field * field)),
                Figure.of(field / period, (off + field / period * unsure) / period), (double) near.length / d.length);
    }

    /** When each field sync begins: a broad pulse with none in the lines before it. */
    private static List<Double> fields(List<Pulse> pulses, double period) {
        List<Double> starts = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (Pulse p : pulses) {
            if (p.broad()) {
                if (p.start() - last > APART * period) {
                    starts.add(p.start());
                }
                last = p.start();
            }
        }
        // A capture that begins inside of a field sync would give a start that is none.
        if (!pulses.isEmpty() && !starts.isEmpty() && pulses.get(0).broad()) {
            starts.remove(0);
        }
        return starts;
    }
}
