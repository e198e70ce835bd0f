// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.session;

import org.probeleaf.waveform.capture.Channel;
import org.probeleaf.waveform.capture.DigitalChannel;
import org.probeleaf.waveform.measure.DigitalMeasures;
import org.probeleaf.waveform.measure.Measures;
import org.probeleaf.waveform.measure.WaveMeasurer;
import org.probeleaf.waveform.plot.Ink;
import org.probeleaf.waveform.plot.PlotTrace;
import org.probeleaf.waveform.plot.StateTrace;
import org.probeleaf.waveform.video.VideoAnalyser;
import org.probeleaf.waveform.video.VideoSignal;

/**
 * A trace of a capture, measured.
 *
 * @param plot     ready to be drawn
 * @param measures its figures, or null where it is a line of logic states
 * @param states   the figures of a line of logic states, or null
 * @param video    what it is as video, or null where it is none
 */
public record LoadedTrace(PlotTrace plot, Measures measures, DigitalMeasures states, VideoSignal video) {

    static LoadedTrace of(Channel channel, Ink ink) {
        Measures m = WaveMeasurer.standard().measure(channel);
        return new LoadedTrace(PlotTrace.of(channel.name(), channel, ink), m, null,
                VideoAnalyser.analyse(channel, m).orElse(null));
    }

    /** @param line of one line */
    static LoadedTrace of(DigitalChannel line, Ink ink) {
        return new LoadedTrace(StateTrace.of(line, ink), null, DigitalMeasures.of(line), null);
    }

    /** Whether it is a line of logic states. */
    public boolean logic() {
        return states != null;
    }

    /** As in the file. */
    public String name() {
        return plot.channel().name();
    }

    /** Of its values; empty where it is not known, or a logic state. */
    public String unit() {
        return plot.channel().unit();
    }

    /** When it passes from one state to the other, in seconds, in order. */
    public double[] edges() {
        return logic() ? states.instants() : measures.instants();
    }
}
