// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import boofcv.struct.geo.AssociatedPair;

/**
 * Makes a graticule that is about right exact: looks for each of its lines at many places along it, puts a straight line
 * through what was found, a homography through the crossings of these, and a smooth bend through what is left where that
 * is worth it.
 */
final class GridFit {

    private static final int PER_DIVISION = 8;
    private static final double WORTH = 0.75;
    private static final double LEAST_BEND = 0.004;

    private final Ridges upright;
    private final Ridges level;

    GridFit(Ridges upright, Ridges level) {
        this.upright = upright;
        this.level = level;
    }

    /** A place of a line of the grid and where it was seen. */
    private record Seen(int line, double along, Spot at) {
    }

    /**
     * The graticule after so many rounds.
     *
     * @param reach how far from where it should be a line is looked for at first, in divisions
     */
    GridMap refine(GridMap map, double reach) {
        GridMap now = map;
        for (int round = 0; round < 3; round++) {
            double within = Math.max(reach / (round + 1), 2.5 / now.pixels());
            GridMap next = straight(now, seen(now, true, within), seen(now, false, within));
            if (next == null) {
                return now;
            }
            now = next;
        }
        return bent(now, reach);
    }

    private List<Seen> seen(GridMap map, boolean columns, double reach) {
        List<Seen> all = new ArrayList<>();
        int lines = columns ? map.divisions().across() : map.divisions().up();
        int length = columns ? map.divisions().up() : map.divisions().across();
        Ridges ridges = columns ? upright : level;
        for (int k = 0; k <= lines; k++) {
            for (int i = 0; i < length * PER_DIVISION; i++) {
                double t = (i + 0.5) / PER_DIVISION;
                Spot s = columns ? map.picture(k, t) : map.picture(t, k);
                Spot beside = columns ? map.picture(k + reach, t) : map.picture(t, k + reach);
                double x = columns ? s.x() : s.y();
                int y = (int) Math.rint(columns ? s.y() : s.x());
                double at = peak(ridges, x, y, Math.abs((columns ? beside.x() : beside.y()) - x));
                if (!Double.isNaN(at)) {
                    // The line is nearly upright in its frame: it is looked at in the row of the picture nearest to it.
                    double moved = at - x;
                    all.add(new Seen(k, t, columns ? new Spot(s.x() + moved, s.y()) : new Spot(s.x(), s.y() + moved)));
                }
            }
        }
        return all;
    }

    /** The middle of the ridge nearest to a place in a row, weighted by how plain it is; NaN for none. */
    private static double peak(Ridges ridges, double x, int y, double reach) {
        int from = (int) Math.ceil(x - reach);
        int to = (int) Math.floor(x + reach);
        int best = -1;
        double most = 0.15;
        for (int i = from; i <= to; i++) {
            double here = ridges.share(i, y) * (1 - 0.5 * Math.abs(i - x) / reach);
            if (here > most && ridges.raw(i, y) >= ridges.raw(i - 1, y) && ridges.raw(i, y) >= ridges.raw(i + 1, y)) {
                most = here;
                best = i;
            }
        }
        if (best < 0) {
            return Double.NaN;
        }
        double a = ridges.raw(best - 1, y);
        double b = ridges.raw(best, y);
        double c = ridges.raw(best + 1, y);
        double bend = a - 2 * b + c;
        return best + (bend < 0 ? Math.max(-0.5, Math.min(0.5, (a - c) / (2 * bend))) : 0);
    }

    /** A line of a family: the place across it as a straight line over the way along it, both in pixels. */
    private record Straight(double at, double slope) {
    }

    private static GridMap straight(GridMap map, List<Seen> columns, List<Seen> rows) {
        Straight[] upright = lines(columns, map.divisions().across(), map.divisions().up(), true);
        Straight[] level = lines(rows, map.divisions().up(), map.divisions().across(), false);
        List<AssociatedPair> pairs = new ArrayList<>();
        for (int u = 0; u < upright.length; u++) {
            for (int v = 0; v < level.length; v++) {
                if (upright[u] != null && level[v] != null) {
                    // x = a + b y and y = c + d x
                    double x = (upright[u].at + upright[u].slope * level[v].at) / (1 - upright[u].slope * level[v].slope);
                    pairs.add(new AssociatedPair(u, v, x, level[v].at + level[v].slope * x));
                }
            }
        }
        long us = Arrays.stream(upright).filter(l -> l != null).count();
        long vs = Arrays.stream(level).filter(l -> l != null).count();
        return us < 3 || vs < 3 ? null : GridMap.of(map.divisions(), pairs, Bend.NONE);
    }

    private static Straight[] lines(List<Seen> seen, int count, int length, boolean columns) {
        Straight[] lines = new Straight[count + 1];
        for (int k = 0; k <= count; k++) {
            int line = k;
            List<double[]> points = new ArrayList<>(seen.stream().filter(s -> s.line == line)
                    .map(s -> columns ? new double[] {s.at.y(), s.at.x()} : new double[] {s.at.x(), s.at.y()}).toList());
            lines[k] = points.size() < length * PER_DIVISION * 0.25 ? null : line(points);
        }
        return lines;
    }

    /** A straight line through points, those left out that stray by far more than half of them do. */
    private static Straight line(List<double[]> points) {
        List<double[]> left = points;
        double[] fit = fit(left);
        for (int round = 0; round < 5; round++) {
            double[] f = fit;
            double[] off = points.stream().mapToDouble(p -> Math.abs(p[1] - f[0] - f[1] * p[0])).sorted().toArray();
            double most = Math.max(0.4, 2.5 * off[off.length / 2]);
            left = points.stream().filter(p -> Math.abs(p[1] - f[0] - f[1] * p[0]) <= most).toList();
            fit = fit(left);
        }
        return new Straight(fit[0], fit[1]);
    }

    private static double[] fit(List<double[]> points) {
        double mx = points.stream().mapToDouble(p -> p[0]).average().orElse(0);
        double my = points.stream().mapToDouble(p -> p[1]).average().orElse(0);
        double xx = 0;
        double xy = 0;
        for (double[] p : points) {
            xx += (p[0] - mx) * (p[0] - mx);
            xy += (p[0] - mx) * (p[1] - my);
        }
        double slope = xx > 0 ? xy / xx : 0;
        return new double[] {my - slope * mx, slope};
    }

    /** With a bend where what is left over shows one. */
    private GridMap bent(GridMap map, double reach) {
        GridMap now = map;
        for (int round = 0; round < 2; round++) {
            double[] u = bend(now, map, true, reach);
            double[] v = bend(now, map, false, reach);
            now = map.with(new Bend(u, v));
        }
        return now;
    }

    private double[] bend(GridMap now, GridMap straight, boolean columns, double reach) {
        List<Bend.Stray> strays = new ArrayList<>();
        for (Seen s : seen(now, columns, Math.max(reach / 2, 2.5 / now.pixels()))) {
            Spot g = straight.unbent(s.at);
            double u = columns ? s.line : s.along;
            double v = columns ? s.along : s.line;
            strays.add(new Bend.Stray(2 * u / now.divisions().across() - 1, 2 * v / now.divisions().up() - 1,
                    columns ? g.x() - u : g.y() - v));
        }
        double[] terms = Bend.fit(strays);
        for (int round = 0; round < 3 && terms != null; round++) {
            double most = Math.max(0.02, 2.5 * Bend.left(strays, terms));
            double[] t = terms;
            List<Bend.Stray> kept = strays.stream()
                    .filter(s -> Bend.left(List.of(s), t) <= most).toList();
            terms = Bend.fit(kept);
            strays = kept;
        }
        if (terms == null) {
            return null;
        }
        double plain = Bend.left(strays, new double[10]);
        double left = Bend.left(strays, terms);
        return plain > LEAST_BEND && left < WORTH * plain ? terms : null;
    }
}
