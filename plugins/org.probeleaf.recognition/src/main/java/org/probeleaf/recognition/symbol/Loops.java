// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.symbol;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.schematic.geometry.Point;

/**
 * Cuts lines where others meet them and sorts the pieces: those on a closed loop, those on none. A loop may also run
 * through symbols, where it is told which symbol a place lies on.
 */
final class Loops {

    private final Map<Segment, List<Segment>> on = new HashMap<>();
    private final Map<Segment, List<Segment>> off = new HashMap<>();
    private final NodeFinder nodes;
    private final Function<Point, Integer> symbolAt;
    private final Map<Integer, Integer> nodeOfSymbol = new HashMap<>();

    /** A piece of a line between two cuts. */
    private record Piece(Segment of, double from, double to, boolean ring) {
    }

    /**
     * @param lines    the lines
     * @param reach    how far ends that meet may miss each other, in points
     * @param symbolAt the number of the symbol that a place lies on, or null where it lies on none
     */
    Loops(List<Segment> lines, double reach, Function<Point, Integer> symbolAt) {
        this(lines, reach, symbolAt, cuts(lines, reach));
    }

    /**
     * Loops of lines that meet end to end, as the sides of a box do; a line that ends on another's middle leads on to
     * none.
     *
     * @param lines the lines
     * @param reach how far ends that meet may miss each other, in points
     */
    static Loops endToEnd(List<Segment> lines, double reach) {
        return new Loops(lines, reach, p -> null, ends(lines));
    }

    private Loops(List<Segment> lines, double reach, Function<Point, Integer> symbolAt,
            Map<Segment, List<Double>> cuts) {
        this.nodes = new NodeFinder(reach);
        this.symbolAt = symbolAt;
        List<int[]> edges = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>();
        for (Segment s : lines) {
            cut(s, cuts.get(s), edges, pieces);
        }
        Bridges graph = new Bridges(nodes.count());
        edges.forEach(e -> graph.add(e[0], e[1]));
        boolean[] bridge = graph.find();
        for (int i = 0; i < bridge.length; i++) {
            bridge[i] &= !pieces.get(i).ring();
        }
        collect(pieces, bridge);
    }

    /** The pieces of a line that lie on a loop. */
    List<Segment> on(Segment line) {
        return on.getOrDefault(line, List.of());
    }

    /** The pieces of a line that lie on no loop; the line itself where it took no part. */
    List<Segment> off(Segment line) {
        return off.getOrDefault(line, on.containsKey(line) ? List.of() : List.of(line));
    }

    private static Map<Segment, List<Double>> ends(List<Segment> lines) {
        Map<Segment, List<Double>> ends = new HashMap<>();
        for (Segment s : lines) {
            ends.put(s, new ArrayList<>(List.of(0.0, s.length())));
        }
        return ends;
    }

    private static Map<Segment, List<Double>> cuts(List<Segment> lines, double reach) {
        SpatialIndex<Segment> index = SpatialIndex.ofSegments(lines);
        Map<Segment, List<Double>> cuts = ends(lines);
        for (Segment s : lines) {
            for (Point end : new Point[] {s.a(), s.b()}) {
                for (Segment t : index.near(end, reach)) {
                    if (t != s && t.distance(end) <= reach) {
                        cuts.get(t).add(t.a().distance(t.nearest(end)));
                    }
                }
            }
        }
        return cuts;
    }

    private void cut(Segment s, List<Double> at, List<int[]> edges, List<Piece> pieces) {
        at.sort(null);
        int from = node(s.a());
        double start = 0;
        for (int i = 1; i < at.size(); i++) {
            int to = node(along(s, at.get(i)));
            // Both ends on one symbol, but not one place: a line across it.
            boolean ring = to == from && at.get(i) - start > 0 && isFar(s, start, at.get(i));
            if (to != from || ring) {
                edges.add(new int[] {from, to});
                pieces.add(new Piece(s, start, at.get(i), ring));
                from = to;
                start = at.get(i);
            }
        }
    }

    private boolean isFar(Segment s, double from, double to) {
        return symbolAt.apply(along(s, from)) != null && nodes.node(along(s, from)) != nodes.node(along(s, to));
    }

    private int node(Point p) {
        int node = nodes.node(p);
        Integer symbol = symbolAt.apply(p);
        if (symbol == null) {
            return node;
        }
        return nodeOfSymbol.computeIfAbsent(symbol, k -> node);
    }

    private void collect(List<Piece> pieces, boolean[] bridge) {
        for (int first = 0; first < bridge.length;) {
            int last = first;
            while (last + 1 < bridge.length && pieces.get(last + 1).of() == pieces.get(first).of()
                    && bridge[last + 1] == bridge[first]) {
                last++;
            }
            Segment s = pieces.get(first).of();
            Segment piece = new Segment(s.stroke(), s.style(), along(s, pieces.get(first).from()),
                    along(s, pieces.get(last).to()), s.shape(), s.width());
            (bridge[first] ? off : on).computeIfAbsent(s, k -> new ArrayList<>(2)).add(piece);
            first = last + 1;
        }
    }

    private static Point along(Segment s, double distance) {
        double t = distance / s.length();
        return new Point(s.a().x() + t * (s.b().x() - s.a().x()), s.a().y() + t * (s.b().y() - s.a().y()));
    }
}
