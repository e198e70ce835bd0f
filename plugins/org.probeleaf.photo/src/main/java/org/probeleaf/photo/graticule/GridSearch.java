// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import boofcv.struct.geo.AssociatedPair;

/**
 * Looks for the graticule among the lines of both families. For each family, pairs of lines are counted as some number of
 * divisions apart and kept where other lines lie at the divisions; then pairs of both are put together and judged on the
 * picture.
 */
final class GridSearch {

    private static final int KEPT = 70;
    /** So many of both together are judged on the picture, coarsely, and so many of these closely. */
    private static final int JUDGED = 1200;
    private static final int LOOKED_AT = 24;
    private static final double SMALLEST = 12;
    /** A division is about as wide as high, however the camera is held. */
    private static final double LEAST_ASPECT = 0.68;
    private static final double MOST_ASPECT = 1.5;

    private final Ridges upright;
    private final Ridges level;
    private final List<LineFinder.Line> columns;
    private final List<LineFinder.Line> rows;

    GridSearch(Ridges upright, Ridges level) {
        this.upright = upright;
        this.level = level;
        columns = LineFinder.find(upright);
        rows = LineFinder.find(level);
    }

    /** Two lines of a family and which of its lines they would be. */
    private record Pair(LineFinder.Line a, int atA, LineFinder.Line b, int atB, double support) {

        double step() {
            return (b.x() - a.x()) / (atB - atA);
        }
    }

    /** A graticule and how well it explains the picture. */
    record Found(GridMap map, GridScore score) {
    }

    /** The best graticule with so many divisions; null where no lines can be one. */
    Found best(Divisions divisions) {
        List<Pair> across = pairs(columns, divisions.across(), upright.width());
        List<Pair> down = pairs(rows, divisions.up(), level.width());
        List<Pair[]> quads = new ArrayList<>();
        for (Pair c : across) {
            for (Pair r : down) {
                double aspect = c.step() / r.step();
                if (aspect > LEAST_ASPECT && aspect < MOST_ASPECT) {
                    quads.add(new Pair[] {c, r});
                }
            }
        }
        quads.sort(Comparator.comparingDouble(q -> -q[0].support / divisions.across() - q[1].support / divisions.up()));
        List<Found> found = new ArrayList<>();
        for (Pair[] quad : quads.subList(0, Math.min(JUDGED, quads.size()))) {
            GridMap map = map(divisions, quad[0], quad[1]);
            if (map != null) {
                found.add(new Found(map, GridScore.of(map, upright, level, 1.5)));
            }
        }
        found.sort(Comparator.comparingDouble(f -> -f.score.value()));
        return found.stream().limit(LOOKED_AT).map(f -> new Found(f.map, GridScore.of(f.map, upright, level, 8)))
                .max(Comparator.comparingDouble(f -> f.score.value())).orElse(null);
    }

    private List<Pair> pairs(List<LineFinder.Line> lines, int count, int room) {
        List<Pair> pairs = new ArrayList<>();
        Rule rule = new Rule(lines, room);
        for (LineFinder.Line a : lines) {
            for (LineFinder.Line b : lines) {
                if (b.x() <= a.x() || Math.abs(a.slope() - b.slope()) > 0.3) {
                    continue;
                }
                for (int span = (count + 1) / 2; span <= count; span++) {
                    double step = (b.x() - a.x()) / span;
                    for (int at = 0; at + span <= count && step >= SMALLEST; at++) {
                        double first = a.x() - at * step;
                        if (first > -0.6 * step && first + count * step < room + 0.6 * step) {
                            // A frame that is found is worth more than one that is reckoned.
                            pairs.add(new Pair(a, at, b, at + span, rule.support(a.x(), at, b.x(), at + span, count)
                                    + (at == 0 ? 0.4 : 0) + (at + span == count ? 0.4 : 0)));
                        }
                    }
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(p -> -p.support));
        return pairs.subList(0, Math.min(KEPT, pairs.size()));
    }

    private GridMap map(Divisions divisions, Pair c, Pair r) {
        List<AssociatedPair> pairs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            LineFinder.Line column = i % 2 == 0 ? c.a : c.b;
            LineFinder.Line row = i < 2 ? r.a : r.b;
            Spot s = crossing(column, row);
            pairs.add(new AssociatedPair(i % 2 == 0 ? c.atA : c.atB, i < 2 ? r.atA : r.atB, s.x(), s.y()));
        }
        try {
            GridMap map = GridMap.of(divisions, pairs, Bend.NONE);
            double out = 0.06 * Math.max(upright.width(), upright.height());
            for (Spot s : map.corners().list()) {
                if (!(s.x() > -out && s.y() > -out && s.x() < upright.width() + out && s.y() < upright.height() + out)) {
                    return null;
                }
            }
            return map;
        } catch (IllegalArgumentException e) {
            return null;
        }
    }

    private Spot crossing(LineFinder.Line column, LineFinder.Line row) {
        double my = (upright.height() - 1) / 2.0;
        double mx = (level.height() - 1) / 2.0;
        double x = (column.x() + column.slope() * (row.x() - row.slope() * mx - my)) / (1 - column.slope() * row.slope());
        return new Spot(x, row.at(x, mx));
    }
}
