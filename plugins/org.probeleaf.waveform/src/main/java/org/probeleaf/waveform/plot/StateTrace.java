// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;

/** A line of logic states as a trace for a lane: 0 low, 1 high, a half where it is let go, a gap where nobody knows. */
public final class StateTrace {

    private StateTrace() {
    }

    /**
     * Makes a trace of one line; its last state stands until the end of the capture.
     *
     * @param line of one bit
     * @param ink  how it looks
     */
    public static PlotTrace of(DigitalChannel line, Ink ink) {
        int n = line.size();
        double[] times = new double[n + 1];
        double[] values = new double[n + 1];
        for (int i = 0; i < n; i++) {
            times[i] = line.at(i);
            values[i] = value(line.state(i, 0));
        }
        times[n] = Math.max(line.end(), n == 0 ? 0 : times[n - 1]);
        values[n] = n == 0 ? Double.NaN : values[n - 1];
        return PlotTrace.of(line.name(), new Channel(line.name(), "", new TimeBase.Stamped(times), Samples.of(values),
                Double.NaN, true), ink);
    }

    private static double value(char state) {
        return switch (state) {
            case '0' -> 0;
            case '1' -> 1;
            case 'z' -> 0.5;
            default -> Double.NaN;
        };
    }
}
