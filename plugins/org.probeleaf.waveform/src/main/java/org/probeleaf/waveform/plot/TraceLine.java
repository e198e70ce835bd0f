// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.capture.Channel;

/**
 * The line of a trace in a frame. Where several samples share a column of the plot, the column is drawn from the least of
 * them to the greatest, so that no peak is lost at any zoom; where they lie apart, they are joined as the channel says.
 */
final class TraceLine {

    /** Samples for each unit of width from which columns are drawn. */
    private static final double CROWDED = 2;

    private final PlotFrame frame;
    private final PlotTrace trace;
    private final List<PlotShape> shapes = new ArrayList<>();

    TraceLine(PlotFrame frame, PlotTrace trace) {
        this.frame = frame;
        this.trace = trace;
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

    /** One stroke for each column, joined to the one before where they do not touch. */
    private void columns(int first, int last) {
        int columns = (int) Math.max(1, Math.floor(frame.width()));
        List<Double> xy = new ArrayList<>();
        int from = first;
        for (int i = 0; i < columns && from <= last; i++) {
            double end = frame.time(frame.left() + (i + 1) * frame.width() / columns) - trace.shift();
            int to = Math.max(from + 1, Math.min(last + 1, trace.channel().times().indexAt(end) + 1));
            double[] range = trace.pyramid().range(from, to);
            if (Double.isNaN(range[0])) {
                end(xy);
            } else {
                double x = frame.left() + (i + 0.5) * frame.width() / columns;
                boolean down = !xy.isEmpty() && Math.abs(xy.get(xy.size() - 1) - frame.y(range[1]))
                        < Math.abs(xy.get(xy.size() - 1) - frame.y(range[0]));
                add(xy, x, frame.y(down ? range[1] : range[0]));
                add(xy, x, frame.y(down ? range[0] : range[1]));
            }
            from = to;
        }
        end(xy);
    }

    private void joined(int first, int last) {
        List<Double> xy = new ArrayList<>();
        for (int i = first; i <= last; i++) {
            double value = trace.channel().samples().get(i);
            if (Double.isNaN(value)) {
                end(xy);
                continue;
            }
            double x = frame.x(trace.channel().times().at(i) + trace.shift());
            if (trace.channel().held() && !xy.isEmpty()) {
                add(xy, x, xy.get(xy.size() - 1));
            }
            add(xy, x, frame.y(value));
        }
        end(xy);
    }

    private static void add(List<Double> xy, double x, double y) {
        xy.add(x);
        xy.add(y);
    }

    /** A gap in the values is a gap in the line; a value alone is a short stroke. */
    private void end(List<Double> xy) {
        if (xy.size() == 2) {
            add(xy, xy.get(0) + 1, xy.get(1));
        }
        if (!xy.isEmpty()) {
            double[] line = Clip.toFrame(xy.stream().mapToDouble(Double::doubleValue).toArray(), frame);
            if (line.length >= 4) {
                shapes.add(new PlotShape.Line(line, trace.ink()));
            }
            xy.clear();
        }
    }
}
