// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.capture.Samples;
import org.probeleaf.waveform.capture.TimeBase;

/** Logic states as traces one above the other: low at a whole step, high above it, unknown and let go as gaps. */
final class StateLines {

    /** From the low of one line to the low of the next. */
    private static final double STEP = 1.5;
    /** More than these cannot be told apart in a plot. */
    private static final int MOST = 32;

    private StateLines() {
    }

    static List<Channel> of(List<DigitalChannel> channels) {
        List<DigitalChannel> lines = channels.stream().flatMap(c -> c.lines().stream()).limit(MOST).toList();
        List<Channel> traces = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            traces.add(line(lines.get(i), (lines.size() - 1 - i) * STEP));
        }
        return traces;
    }

    /** The last state stands until the end of the capture. */
    private static Channel line(DigitalChannel line, double low) {
        int n = line.size();
        double[] times = new double[n + 1];
        double[] values = new double[n + 1];
        for (int i = 0; i < n; i++) {
            times[i] = line.at(i);
            char state = line.state(i, 0);
            values[i] = state == '0' ? low : state == '1' ? low + 1 : Double.NaN;
        }
        times[n] = Math.max(line.end(), n == 0 ? 0 : times[n - 1]);
        values[n] = n == 0 ? Double.NaN : values[n - 1];
        return new Channel(line.name(), "", new TimeBase.Stamped(times), Samples.of(values), Double.NaN, true);
    }
}
