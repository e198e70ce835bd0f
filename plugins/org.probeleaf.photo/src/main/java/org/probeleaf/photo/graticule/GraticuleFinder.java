// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.photo.graticule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.probeleaf.photo.picture.Picture;
import org.probeleaf.photo.picture.Scaling;

import boofcv.struct.image.GrayF32;

/** Finds the graticule of a screen in a picture. Immutable; any thread may use it. */
public final class GraticuleFinder {

    /** The longer side of the picture that is looked at, in pixels; the smaller one sees over noise and a screen's own pixels. */
    private static final int[] LONGEST = {1300, 650};
    /** As good as this, and the smaller picture is not asked. */
    private static final double SURE = 0.8;
    /** As good as this, and nothing else is. */
    private static final double QUITE_SURE = 0.95;
    /** Less than this is no graticule. */
    private static final double LEAST = 0.3;
    private static final double BETTER = 1.12;

    private final List<Way> ways = new ArrayList<>();

    /** Light or dark lines in a picture made smaller by a factor. */
    private record Way(int factor, Ridges upright, Ridges level) {

        GridScore score(GridMap map) {
            return GridScore.of(map, upright, level, 8);
        }

        GridMap refine(GridMap map, double reach) {
            return new GridFit(upright, level).refine(map, reach);
        }

        GridMap back(GridMap map) {
            return factor == 1 ? map : map.scaled(factor);
        }

        Corners forth(Corners c) {
            return new Corners(forth(c.topLeft()), forth(c.topRight()), forth(c.bottomRight()), forth(c.bottomLeft()));
        }

        private Spot forth(Spot s) {
            return new Spot(Scaling.forth(s.x(), factor), Scaling.forth(s.y(), factor));
        }
    }

    /** Of a picture. */
    public GraticuleFinder(Picture picture) {
        for (int longest : LONGEST) {
            int factor = Scaling.factor(picture, longest);
            if (ways.stream().noneMatch(w -> w.factor == factor)) {
                GrayF32 grey = Scaling.smaller(picture, factor).grey();
                GrayF32 turned = Ridges.turned(grey);
                for (int sign : new int[] {1, -1}) {
                    ways.add(new Way(factor, Ridges.of(grey, sign), Ridges.of(turned, sign)));
                }
            }
        }
    }

    /**
     * The graticule, found by itself.
     *
     * @param divisions how many there are; null to try the usual ones
     */
    public Optional<Graticule> find(Divisions divisions) {
        Graticule best = null;
        double most = 0;
        for (Way way : ways) {
            if (best != null && best.confidence() >= (way.factor > ways.get(0).factor ? SURE : QUITE_SURE)) {
                break;
            }
            GridSearch search = new GridSearch(way.upright, way.level);
            for (Divisions d : divisions == null ? Divisions.USUAL : new Divisions[] {divisions}) {
                GridSearch.Found found = search.best(d);
                if (found == null) {
                    continue;
                }
                GridMap map = way.refine(found.map(), 0.14);
                GridScore score = way.score(map);
                double needed = best == null || best.map().divisions().equals(d) ? most : most * BETTER;
                if (score.value() > needed) {
                    most = score.value();
                    best = new Graticule(way.back(map), confidence(score), true, divisions == null);
                }
            }
        }
        return Optional.ofNullable(best).filter(b -> b.confidence() >= LEAST);
    }

    private static double confidence(GridScore score) {
        double lines = Math.max(0, Math.min(1, (score.present() - 0.55) / 0.4));
        double plain = Math.max(0, Math.min(1, (score.plain() - 0.25) / 0.45));
        return Math.min(0.99, Math.sqrt(lines * plain));
    }

    /**
     * A graticule whose corners were marked, moved onto its lines where these are plain.
     *
     * @param divisions how many there are
     * @param corners   in pixels of the picture
     * @throws IllegalArgumentException with one sentence where these are no corners
     */
    public Graticule marked(Divisions divisions, Corners corners) {
        GridMap said = GridMap.of(divisions, corners);
        Graticule best = null;
        for (Way way : ways) {
            GridMap here = GridMap.of(divisions, way.forth(corners));
            double reach = Math.max(0.08, 4 / said.pixels());
            GridMap map = way.refine(here, reach);
            double confidence = confidence(way.score(map));
            boolean near = true;
            for (int i = 0; i < 4; i++) {
                near &= map.corners().list().get(i).distance(here.corners().list().get(i)) <= 1.5 * reach * here.pixels();
            }
            if (near && confidence > Math.max(LEAST, best == null ? 0 : best.confidence())) {
                best = new Graticule(way.back(map), confidence, false, false);
            }
        }
        return best != null ? best : new Graticule(said, 0.5, false, false);
    }
}
