// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.waveform.plot;

/** Keeps a line within a frame: values above and below run along its edge, times are cut off at its sides. */
final class Clip {

    private Clip() {
    }

    static double[] toFrame(double[] xy, PlotFrame frame) {
        double[] kept = new double[xy.length + 4];
        int n = 0;
        for (int i = 0; i < xy.length; i += 2) {
            double x = xy[i];
            boolean in = x >= frame.left() && x <= frame.right();
            if (i > 0) {
                n = crossing(xy, i, frame.left(), kept, n, frame);
                n = crossing(xy, i, frame.right(), kept, n, frame);
            }
            if (in) {
                n = put(kept, n, x, xy[i + 1], frame);
            }
            if (n > kept.length - 6) {
                kept = java.util.Arrays.copyOf(kept, kept.length * 2);
            }
        }
        return java.util.Arrays.copyOf(kept, n);
    }

    /** The point at which the stretch that ends at {@code i} passes an edge. */
    private static int crossing(double[] xy, int i, double edge, double[] kept, int n, PlotFrame frame) {
        double before = xy[i - 2];
        double now = xy[i];
        if (before < edge && now > edge || before > edge && now < edge) {
            double share = (edge - before) / (now - before);
            return put(kept, n, edge, xy[i - 1] + share * (xy[i + 1] - xy[i - 1]), frame);
        }
        return n;
    }

    private static int put(double[] kept, int n, double x, double y, PlotFrame frame) {
        kept[n] = x;
        kept[n + 1] = Math.max(frame.top(), Math.min(frame.bottom(), y));
        return n + 2;
    }
}
