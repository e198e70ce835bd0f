// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.probeleaf.waveform.capture.Channel;

/**
 * The line of a trace in a frame. Where several samples share a column of the plot, it is filled from the least of them to
 * the greatest ({@link Envelope}); where they lie apart, they are joined as the channel says.
 */
final class TraceLine {

    /** Samples for each unit of width from which columns are drawn. */
    private static final double CROWDED = 2;

    private final PlotFrame frame;
    private final PlotTrace trace;
    private final boolean states;
    private final List<PlotShape> shapes = new ArrayList<>();
    private double[] xy = new double[256];
    private int n;

    /** @param states whether the values are logic states, of which a gap is an unknown one */
    TraceLine(PlotFrame frame, PlotTrace trace, boolean states) {
        this.frame = frame;
        this.trace = trace;
        this.states = states;
    }

    List<PlotShape> shapes() {
        Channel c = trace.channel();
        if (c.size() > 0) {
            int first = Math.max(0, c.times().indexAt(frame.window().from() - trace.shift()));
            int last = Math.min(c.size() - 1, c.times().indexAt(frame.window().to() - trace.shift()) + 1);
            if (last - first > CROWDED * frame.width()) {
                columns(first, last);
            } else {
                joined(first, last);
            }
        }
        return shapes;
    }

    /** Stretches of columns that hold values, each filled. */
    private void columns(int first, int last) {
        Envelope envelope = new Envelope(frame, trace.ink());
        int columns = envelope.columns();
        int from = first;
        for (int i = 0; i < columns && from <= last; i++) {
            double end = frame.time(envelope.x(i + 1)) - trace.shift();
            int to = Math.max(from + 1, Math.min(last + 1, trace.channel().times().indexAt(end) + 1));
            double[] range = trace.pyramid().range(from, to);
            envelope.add(i, range[0], range[1]);
            from = to;
        }
        shapes.addAll(envelope.shapes());
    }

    private void joined(int first, int last) {
        for (int i = first; i <= last; i++) {
            double value = trace.channel().samples().get(i);
            double x = frame.x(trace.channel().times().at(i) + trace.shift());
            boolean held = trace.channel().held() && n > 0;
            if (Double.isNaN(value)) {
                if (held) {
                    add(x, xy[n - 1]);
                }
                end();
                unknown(i, last, x);
                continue;
            }
            if (held) {
                add(x, xy[n - 1]);
            }
            add(x, frame.y(value));
        }
        end();
    }

    /** A state that nobody knows: shaded between low and high, with both rails. */
    private void unknown(int i, int last, double x) {
        if (!states || i == last) {
            return;
        }
        double from = Math.max(frame.left(), x);
        double to = Math.min(frame.right(), frame.x(trace.channel().times().at(i + 1) + trace.shift()));
        if (to > from) {
            shapes.add(PlotShape.Area.box(from, frame.y(1), to, frame.y(0), Ink.UNKNOWN));
            shapes.add(new PlotShape.Line(new double[] {from, frame.y(1), to, frame.y(1)}, trace.ink()));
            shapes.add(new PlotShape.Line(new double[] {from, frame.y(0), to, frame.y(0)}, trace.ink()));
        }
    }

    private void add(double x, double y) {
        if (n + 2 > xy.length) {
            xy = Arrays.copyOf(xy, 2 * xy.length);
        }
        xy[n++] = x;
        xy[n++] = y;
    }

    /** A gap in the values is a gap in the line; a value alone is a short stroke. */
    private void end() {
        if (n == 2) {
            add(xy[0] + 1, xy[1]);
        }
        if (n > 0) {
            for (double[] line : Clip.toFrame(Arrays.copyOf(xy, n), frame)) {
                shapes.add(new PlotShape.Line(line, trace.ink()));
            }
            n = 0;
        }
    }
}
