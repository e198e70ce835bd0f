// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Where a trace may be: for each column of a screen the stretches of pixels that differ as the trace does. */
final class Strokes {

    private static final float OTHER = 0.5f;
    private static final double FAINT = 0.3;
    /** So many divisions of a steep stroke may be lost where it passes a level line of the graticule. */
    private static final double ACROSS = 0.13;

    final FlatScreen flat;
    final List<List<Stroke>> columns = new ArrayList<>();
    /** How strong the trace usually is. */
    final double usual;
    private final float[] signal;

    /**
     * A stretch of one column.
     *
     * @param top    its upper end, in pixels from the upper rim, where the light is half of the trace's
     * @param bottom its lower end
     * @param middle the centre of its light
     * @param peak   its strength at most
     */
    record Stroke(double top, double bottom, double middle, double peak) {

        double length() {
            return bottom - top;
        }

        /** How far another lies above or below; 0 where they overlap. */
        double gap(Stroke other) {
            return Math.max(0, Math.max(other.top - bottom, top - other.bottom));
        }
    }

    private Strokes(FlatScreen flat, float[] signal, double usual) {
        this.flat = flat;
        this.signal = signal;
        this.usual = usual;
    }

    /**
     * Of a screen.
     *
     * @param way   which way the trace differs from the background
     * @param floor differences up to this are noise
     */
    static Strokes of(FlatScreen flat, float[] way, float floor) {
        float[] signal = signal(flat, way);
        int rim = Math.max(2, flat.scale / 16);
        float[] peaks = new float[flat.width];
        for (int x = 0; x < flat.width; x++) {
            for (int y = rim; y < flat.height - rim; y++) {
                peaks[x] = Math.max(peaks[x], signal[y * flat.width + x]);
            }
        }
        float[] sorted = peaks.clone();
        Arrays.sort(sorted);
        double usual = sorted[(int) (sorted.length * 0.6)];
        Strokes strokes = new Strokes(flat, signal, usual);
        double least = Math.max(0.6 * floor, FAINT * usual);
        double[] spread = strokes.nearLines();
        for (int x = 0; x < flat.width; x++) {
            strokes.columns.add(x < rim || x >= flat.width - rim ? List.of() : strokes.column(x, rim, least, spread));
        }
        return strokes;
    }

    private static float[] signal(FlatScreen flat, float[] way) {
        float[] out = new float[flat.width * flat.height];
        for (int i = 0; i < out.length; i++) {
            float r = flat.off[0][i];
            float g = flat.off[1][i];
            float b = flat.off[2][i];
            float along = r * way[0] + g * way[1] + b * way[2];
            float other = ColourFinder.length(r - along * way[0], g - along * way[1], b - along * way[2]);
            out[i] = along <= 0 ? 0 : Math.max(0, along - OTHER * other);
        }
        return out;
    }

    /** What is left of level lines of the graticule after it was taken away, for each row: the third quartile along it. */
    private double[] nearLines() {
        double[] spread = new double[flat.height];
        float[] row = new float[flat.width];
        for (int y = 0; y < flat.height; y++) {
            if (flat.fromLine(y) <= FlatScreen.STRIP) {
                System.arraycopy(signal, y * flat.width, row, 0, flat.width);
                Arrays.sort(row);
                spread[y] = Math.min(row[row.length * 3 / 4] * 1.5, 0.6 * usual);
            }
        }
        return spread;
    }

    private List<Stroke> column(int x, int rim, double least, double[] spread) {
        List<Stroke> found = new ArrayList<>();
        int y = rim;
        while (y < flat.height - rim) {
            if (at(x, y) <= Math.max(least, spread[y])) {
                y++;
                continue;
            }
            int from = y;
            double peak = 0;
            while (y < flat.height - rim && at(x, y) > Math.max(least, spread[y])) {
                peak = Math.max(peak, at(x, y));
                y++;
            }
            while (y < flat.height - rim) {
                int on = beyondLine(x, y, least, spread);
                if (on < 0) {
                    break;
                }
                y = on;
                while (y < flat.height - rim && at(x, y) > Math.max(least, spread[y])) {
                    peak = Math.max(peak, at(x, y));
                    y++;
                }
            }
            found.add(stroke(x, from, y - 1, peak));
        }
        return found;
    }

    /** Where a stroke goes on that ended at a row, because a level line of the graticule was taken away there; -1 for nowhere. */
    private int beyondLine(int x, int row, double least, double[] spread) {
        int far = row + (int) Math.ceil(ACROSS * flat.scale);
        for (int y = row + 1; y < Math.min(far, flat.height); y++) {
            if (at(x, y) > Math.max(least, spread[y])) {
                return flat.fromLine((row + y) / 2) <= FlatScreen.STRIP || y - row <= 2 ? y : -1;
            }
        }
        return -1;
    }

    private float at(int x, int y) {
        return signal[y * flat.width + x];
    }

    /** Ends where the light falls to half; a little beyond where the stretch was cut off. */
    private Stroke stroke(int x, int from, int to, double peak) {
        double half = Math.min(peak, usual) / 2;
        int a = from;
        while (a < to && at(x, a) < half) {
            a++;
        }
        int b = to;
        while (b > a && at(x, b) < half) {
            b--;
        }
        double top = a - part(x, a, a - 1, half);
        double bottom = b + part(x, b, b + 1, half);
        double sum = 0;
        double moment = 0;
        for (int y = Math.max(0, from - 2); y <= Math.min(flat.height - 1, to + 2); y++) {
            double v = Math.min(at(x, y), usual * 1.2);
            sum += v;
            moment += v * y;
        }
        // Rows are counted from their upper edge in the grid.
        return new Stroke(top + 0.5, bottom + 0.5, moment / sum + 0.5, peak);
    }

    private double part(int x, int inside, int outside, double half) {
        if (outside < 0 || outside >= flat.height) {
            return 0;
        }
        double in = at(x, inside);
        double out = at(x, outside);
        return in <= out ? 0 : Math.max(0, Math.min(1, (in - half) / (in - out)));
    }
}
