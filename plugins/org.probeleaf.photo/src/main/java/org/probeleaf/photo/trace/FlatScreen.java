// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.trace;

import java.util.Arrays;

import org.probeleaf.photo.graticule.GridMap;
import org.probeleaf.photo.graticule.Spot;
import org.probeleaf.photo.picture.Picture;

/**
 * A screen seen straight on: so many pixels a division both ways, the graticule's upper left corner at the upper left corner
 * of the first pixel. What is kept of each pixel is by how much its three colours differ from the light about it, and from
 * the graticule.
 */
final class FlatScreen {

    private static final int LEAST = 20;
    private static final int MOST = 72;
    /** Half the width of the strip about a line of the graticule, in divisions. */
    static final double STRIP = 0.11;
    /** By how much an axis may be stronger than the other lines. */
    private static final float AXIS = 3;

    final int scale;
    final int width;
    final int height;
    /** Red, green, blue less the background, -1 to 1. */
    final float[][] off;
    /** Red, green, blue of the background. */
    final float[][] ground;

    private FlatScreen(int scale, int width, int height, float[][] off, float[][] ground) {
        this.scale = scale;
        this.width = width;
        this.height = height;
        this.off = off;
        this.ground = ground;
    }

    static FlatScreen of(Picture picture, GridMap map) {
        int scale = (int) Math.max(LEAST, Math.min(MOST, Math.round(map.pixels())));
        int w = map.divisions().across() * scale;
        int h = map.divisions().up() * scale;
        float[][] off = straight(picture, map, scale, w, h);
        float[][] ground = new float[3][];
        for (int c = 0; c < 3; c++) {
            ground[c] = Background.of(off[c], w, h, scale);
            for (int i = 0; i < off[c].length; i++) {
                off[c][i] -= ground[c][i];
            }
        }
        FlatScreen flat = new FlatScreen(scale, w, h, off, ground);
        flat.takeGraticuleAway();
        return flat;
    }

    private static float[][] straight(Picture p, GridMap map, int scale, int w, int h) {
        int fine = (int) Math.max(1, Math.min(4, Math.round(map.pixels() / scale)));
        float[][] out = new float[3][w * h];
        float[] sum = new float[3];
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                Arrays.fill(sum, 0);
                for (int i = 0; i < fine * fine; i++) {
                    Spot s = map.picture((x + (i % fine + 0.5) / fine) / scale, (y + (i / fine + 0.5) / fine) / scale);
                    add(p, s, sum);
                }
                for (int c = 0; c < 3; c++) {
                    out[c][y * w + x] = sum[c] / (255 * fine * fine);
                }
            }
        }
        return out;
    }

    private static void add(Picture p, Spot s, float[] sum) {
        int x = (int) Math.max(0, Math.min(p.width() - 2, Math.floor(s.x())));
        int y = (int) Math.max(0, Math.min(p.height() - 2, Math.floor(s.y())));
        float fx = (float) Math.max(0, Math.min(1, s.x() - x));
        float fy = (float) Math.max(0, Math.min(1, s.y() - y));
        int at = y * p.width() + x;
        int a = p.rgb()[at];
        int b = p.rgb()[at + 1];
        int c = p.rgb()[at + p.width()];
        int d = p.rgb()[at + p.width() + 1];
        for (int i = 0; i < 3; i++) {
            int shift = 16 - 8 * i;
            float top = (a >> shift & 0xff) * (1 - fx) + (b >> shift & 0xff) * fx;
            float low = (c >> shift & 0xff) * (1 - fx) + (d >> shift & 0xff) * fx;
            sum[i] += top * (1 - fy) + low * fy;
        }
    }

    /** How far a column or row is from the nearest line of the graticule, in divisions. */
    double fromLine(int at) {
        double d = (at + 0.5) / scale;
        return Math.abs(d - Math.rint(d));
    }

    private void takeGraticuleAway() {
        float grid = 0;
        float[][] templates = new float[3][];
        for (int c = 0; c < 3; c++) {
            templates[c] = cells(off[c]);
            for (float t : templates[c]) {
                grid = Math.max(grid, Math.abs(t));
            }
        }
        for (int c = 0; c < 3; c++) {
            for (int y = 0; y < height; y++) {
                for (int x = 0; x < width; x++) {
                    off[c][y * width + x] -= templates[c][y % scale * scale + x % scale];
                }
            }
            for (boolean upright : new boolean[] {true, false}) {
                int lines = (upright ? width : height) / scale;
                line(off[c], upright, 0, Float.MAX_VALUE);
                line(off[c], upright, lines, Float.MAX_VALUE);
                if (lines % 2 == 0) {
                    line(off[c], upright, lines / 2, AXIS * Math.max(grid, 0.02f));
                }
            }
        }
    }

    /** The median over all cells of each place in a cell that lies near a line. */
    private float[] cells(float[] plane) {
        float[] out = new float[scale * scale];
        float[] values = new float[width / scale * (height / scale)];
        for (int y = 0; y < scale; y++) {
            for (int x = 0; x < scale; x++) {
                if (fromLine(x) > STRIP && fromLine(y) > STRIP) {
                    continue;
                }
                int n = 0;
                for (int cy = y; cy < height; cy += scale) {
                    for (int cx = x; cx < width; cx += scale) {
                        values[n++] = plane[cy * width + cx];
                    }
                }
                Arrays.sort(values, 0, n);
                out[y * scale + x] = values[n / 2];
            }
        }
        return out;
    }

    /** Takes away what repeats itself from division to division along one line. */
    private void line(float[] plane, boolean upright, int line, float most) {
        int reach = (int) Math.ceil(STRIP * scale);
        int length = upright ? height : width;
        int across = upright ? width : height;
        float[] values = new float[length / scale];
        for (int a = Math.max(0, line * scale - reach); a < Math.min(across, line * scale + reach); a++) {
            for (int phase = 0; phase < scale; phase++) {
                int n = 0;
                for (int t = phase; t < length; t += scale) {
                    values[n++] = plane[upright ? t * width + a : a * width + t];
                }
                Arrays.sort(values, 0, n);
                float median = Math.max(-most, Math.min(most, (values[n / 2] + values[(n - 1) / 2]) / 2));
                for (int t = phase; t < length; t += scale) {
                    plane[upright ? t * width + a : a * width + t] -= median;
                }
            }
        }
    }
}
