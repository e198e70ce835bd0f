// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.schematic.geometry.Point;

/** Ways along the ink of one symbol. */
final class InkWays {

    /** Symbols with more ink than this are no transistors. */
    private static final int MOST = 400;

    private final Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    private final List<Point> places = new ArrayList<>();
    private final double reach;

    /** @param reach how far ink that is meant to meet may lie apart */
    InkWays(List<Segment> ink, double reach) {
        this.reach = reach;
        for (Segment s : ink.size() > MOST ? List.<Segment>of() : ink) {
            int steps = Math.max(1, (int) Math.ceil(s.length() / reach));
            int before = -1;
            for (int i = 0; i <= steps; i++) {
                double t = (double) i / steps;
                Point p = new Point(s.a().x() + t * (s.b().x() - s.a().x()), s.a().y() + t * (s.b().y() - s.a().y()));
                int place = place(p);
                if (before >= 0) {
                    join(before, place);
                }
                before = place;
            }
        }
    }

    /** The length of the shortest way from a point to any ink that {@code there} accepts; infinite where there is none. */
    double shortest(Point from, Predicate<Point> there) {
        int start = -1;
        for (int i = 0; i < places.size(); i++) {
            if (start < 0 || places.get(i).distance(from) < places.get(start).distance(from)) {
                start = i;
            }
        }
        if (start < 0 || places.get(start).distance(from) > 2 * reach) {
            return Double.POSITIVE_INFINITY;
        }
        var ways = new DijkstraShortestPath<>(graph).getPaths(start);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < places.size(); i++) {
            if (there.test(places.get(i))) {
                least = Math.min(least, ways.getWeight(i));
            }
        }
        return least;
    }

    private int place(Point p) {
        int place = places.size();
        places.add(p);
        graph.addVertex(place);
        for (int i = 0; i < place; i++) {
            if (places.get(i).distance(p) <= 0.75 * reach) {
                join(i, place);
            }
        }
        return place;
    }

    private void join(int a, int b) {
        if (a != b && !graph.containsEdge(a, b)) {
            graph.setEdgeWeight(graph.addEdge(a, b), places.get(a).distance(places.get(b)));
        }
    }
}
