// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.waveform.capture.TimeBase;
import org.probeleaf.waveform.plot.PlotMask.Span;
import org.probeleaf.waveform.plot.PlotShape.Area;

/** The band of a tolerance, and the marks where a capture leaves it. */
final class MaskShapes {

    private static final double WEDGE = 4;
    private static final double BAR = 2.5;
    private static final double OFF = 2;

    private MaskShapes() {
    }

    /** For each column what the reference does within the time that is allowed, widened by the level that is. */
    static List<PlotShape> band(PlotMask mask, PlotFrame f) {
        List<PlotShape> shapes = new ArrayList<>();
        int columns = (int) Math.max(1, Math.floor(f.width()));
        double[] top = new double[columns + 1];
        double[] bottom = new double[columns + 1];
        int first = -1;
        for (int i = 0; i <= columns; i++) {
            double[] range = range(mask, f.time(f.left() + i * f.width() / columns), f);
            boolean there = !Double.isNaN(range[0]);
            if (there) {
                top[i] = inside(f, f.y(range[1] + mask.level()));
                bottom[i] = inside(f, f.y(range[0] - mask.level()));
                first = first < 0 ? i : first;
            }
            if (first >= 0 && (!there || i == columns)) {
                stretch(shapes, f, columns, top, bottom, first, there ? i : i - 1);
                first = -1;
            }
        }
        return shapes;
    }

    private static double inside(PlotFrame f, double y) {
        return Math.max(f.top(), Math.min(f.bottom(), y));
    }

    /** Least and greatest of the reference about a time; NaN beyond its ends. */
    private static double[] range(PlotMask mask, double seconds, PlotFrame f) {
        TimeBase times = mask.reference().channel().times();
        int n = mask.reference().channel().size();
        double at = seconds - mask.reference().shift();
        if (n == 0 || at < times.at(0) || at > times.at(n - 1)) {
            return new double[] {Double.NaN, Double.NaN};
        }
        double half = Math.max(mask.time(), (f.window().to() - f.window().from()) / f.width() / 2);
        int from = Math.max(0, times.indexAt(at - half));
        int to = Math.min(n, times.indexAt(at + half) + 2);
        return mask.reference().pyramid().range(from, to);
    }

    private static void stretch(List<PlotShape> shapes, PlotFrame f, int columns, double[] top, double[] bottom, int first,
            int last) {
        int n = last - first + 1;
        if (n < 2) {
            return;
        }
        double[] xy = new double[4 * n];
        for (int i = 0; i < n; i++) {
            double x = f.left() + (first + i) * f.width() / columns;
            xy[2 * i] = x;
            xy[2 * i + 1] = top[first + i];
            xy[4 * n - 2 - 2 * i] = x;
            xy[4 * n - 1 - 2 * i] = bottom[first + i];
        }
        shapes.add(new Area(xy, Ink.TOLERANCE));
    }

    /** A wedge points down at each stretch outside, over a bar of its length; those that would touch are one. */
    static List<PlotShape> outside(PlotMask mask, PlotFrame f) {
        List<PlotShape> shapes = new ArrayList<>();
        double from = Double.NaN;
        double to = Double.NaN;
        for (Span span : mask.outside()) {
            double x0 = Math.max(f.left(), f.x(span.from()));
            double x1 = Math.min(f.right(), f.x(span.to()));
            if (x1 < x0) {
                continue;
            }
            if (x0 <= to + 2 * WEDGE) {
                to = Math.max(to, x1);
            } else {
                mark(shapes, f, from, to);
                from = x0;
                to = x1;
            }
        }
        mark(shapes, f, from, to);
        return shapes;
    }

    private static void mark(List<PlotShape> shapes, PlotFrame f, double from, double to) {
        if (Double.isNaN(from)) {
            return;
        }
        double middle = (from + to) / 2;
        double tip = f.top() - OFF - BAR;
        shapes.add(new Area(new double[] {middle - WEDGE, tip - WEDGE - 1, middle + WEDGE, tip - WEDGE - 1, middle, tip},
                Ink.OUTSIDE));
        shapes.add(Area.box(from - 0.5, f.top() - OFF - BAR + 1, Math.max(to, from + 1) + 0.5, f.top() - OFF + 1, Ink.OUTSIDE));
    }
}
