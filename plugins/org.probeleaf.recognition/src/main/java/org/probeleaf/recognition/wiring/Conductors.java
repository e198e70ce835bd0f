// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.wiring;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.probeleaf.recognition.ink.Dot;
import org.probeleaf.recognition.ink.Groups;
import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.recognition.symbol.Symbols;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * The conductors of a page: wires and leads, grouped by what is joined. Segments are numbered; leads come after the
 * wires.
 */
public final class Conductors {

    private final PageInk page;
    private final List<Segment> segments;
    private final int wireCount;
    private final Groups groups;
    private final Map<Segment, Integer> ids = new HashMap<>();
    private final SpatialIndex<Segment> index;
    private final SpatialIndex<Segment> bodyInk;
    private final SpatialIndex<Dot> dots;
    private final SpatialIndex<Segment> buses;
    private final List<Point> junctions = new ArrayList<>();
    /** Junctions by squares of one reach. */
    private final Map<Point, List<Point>> junctionsIn = new HashMap<>();
    private final List<Point> openCrossings = new ArrayList<>();

    /**
     * @param page  the page's ink
     * @param symbols its symbols, whose leads conduct
     */
    public Conductors(PageInk page, Symbols symbols) {
        this.page = page;
        this.segments = new ArrayList<>(page.wires());
        this.wireCount = segments.size();
        this.segments.addAll(symbols.leads());
        this.groups = new Groups(segments.size());
        for (int i = 0; i < segments.size(); i++) {
            ids.put(segments.get(i), i);
        }
        this.index = SpatialIndex.ofSegments(segments);
        List<Segment> ink = new ArrayList<>();
        symbols.bodies().forEach(b -> ink.addAll(b.ink()));
        this.bodyInk = SpatialIndex.ofSegments(ink);
        this.dots = new SpatialIndex<>(page.dots().stream().filter(this::isJunction).toList(),
                d -> Box.of(d.at()).grow(Math.max(page.reach(), d.radius())));
        this.buses = SpatialIndex.ofSegments(page.buses(), b -> page.reach() + b.width() / 2);
        joinAtEnds();
        joinAtDots();
    }

    public List<Segment> segments() {
        return segments;
    }

    /** Whether the segment with the given number is a wire, not a lead. */
    public boolean isWire(int segment) {
        return segment < wireCount;
    }

    /** The number of the conductor that holds the segment with the given number. */
    public int conductor(int segment) {
        return groups.find(segment);
    }

    /** Places where three or more lines are joined. */
    public List<Point> junctions() {
        return junctions;
    }

    /** Places where four lines end on each other without a dot, so that it is not plain whether they are joined. */
    public List<Point> openCrossings() {
        return openCrossings;
    }

    /** Numbers of the segments that pass within {@code distance} points of {@code p}. */
    public List<Integer> near(Point p, double distance) {
        List<Integer> found = new ArrayList<>();
        for (Segment s : index.near(p, distance)) {
            if (s.distance(p) <= distance) {
                found.add(ids.get(s));
            }
        }
        return found;
    }

    /** Numbers of the segments whose boxes touch the given one. */
    public List<Integer> touching(Box box) {
        return index.touching(box).stream().map(ids::get).toList();
    }

    /** Merges the conductors of two segments. */
    public void join(int a, int b) {
        groups.join(a, b);
    }

    private void joinAtEnds() {
        double reach = page.reach();
        for (int i = 0; i < segments.size(); i++) {
            Segment s = segments.get(i);
            for (Point end : new Point[] {s.a(), s.b()}) {
                if (!endsOnBus(end)) {
                    joinAt(i, end, near(end, reach));
                }
            }
        }
    }

    /** A wire that ends on a bus is a member of it and is joined to nothing else there. */
    private boolean endsOnBus(Point end) {
        return buses.near(end, 0).stream().anyMatch(b -> b.distance(end) <= page.reach() + b.width() / 2);
    }

    /** Whether a lead comes to its body at this end; a line that happens to run past there is not joined. */
    private boolean isInner(int segment, Point end) {
        return !isWire(segment) && !isDotted(end) && bodyInk.near(end, page.reach()).stream()
                .anyMatch(t -> t.distance(end) <= page.reach());
    }

    private void joinAt(int self, Point end, List<Integer> all) {
        double reach = page.reach();
        List<Integer> here = !isInner(self, end) ? all : all.stream()
                .filter(j -> segments.get(j).nearerEnd(end).distance(end) <= (isWire(j) ? reach : 0.3 * reach)).toList();
        int ends = 0;
        int through = 0;
        for (int j : here) {
            Segment t = segments.get(j);
            if (t.nearerEnd(end).distance(end) <= reach) {
                ends++;
            } else {
                through++;
            }
        }
        if (ends + 2 * through >= 4 && !isDotted(end) && crossesStraight(end, here)) {
            joinStraight(self, here);
            if (through == 0) {
                openCrossings.add(end);
            }
            return;
        }
        for (int j : here) {
            groups.join(self, j);
        }
        if (ends + 2 * through >= 3) {
            addJunction(end);
        }
    }

    private boolean isDotted(Point p) {
        for (Dot d : dots.near(p, 0)) {
            if (d.at().distance(p) <= Math.max(page.reach(), d.radius())) {
                return true;
            }
        }
        return page.dots().isEmpty();
    }

    /**
     * Whether lines leave in all four directions, as where wires are drawn in pieces that end at a crossing; wires
     * drawn twice leave in the same ones again.
     */
    private boolean crossesStraight(Point end, List<Integer> here) {
        Set<String> directions = new HashSet<>();
        for (int j : here) {
            Segment s = segments.get(j);
            for (Point far : new Point[] {s.a(), s.b()}) {
                if (far.distance(end) > page.reach()) {
                    directions.add(s.horizontal() ? far.x() > end.x() ? "right" : "left"
                            : far.y() > end.y() ? "down" : "up");
                }
            }
        }
        return directions.size() == 4;
    }

    private void joinStraight(int self, List<Integer> here) {
        boolean flat = segments.get(self).horizontal();
        for (int j : here) {
            if (segments.get(j).horizontal() == flat) {
                groups.join(self, j);
            }
        }
    }

    /** Whether a spot is broader than the lines it lies on, and no larger than a junction dot would be. */
    private boolean isJunction(Dot dot) {
        double lineWidth = page.wires().isEmpty() ? 0 : page.wires().get(0).width();
        return dot.radius() < 0.6 * page.pitch() && dot.radius() > 0.7 * lineWidth;
    }

    private void joinAtDots() {
        double reach = page.reach();
        for (Dot dot : page.dots()) {
            if (!isJunction(dot)) {
                continue;
            }
            List<Integer> here = near(dot.at(), Math.max(reach, 0.5 * dot.radius()));
            for (int k = 1; k < here.size(); k++) {
                groups.join(here.get(0), here.get(k));
            }
            if (here.size() > 1) {
                addJunction(dot.at());
            }
        }
    }

    private void addJunction(Point p) {
        double reach = page.reach();
        double column = Math.floor(p.x() / reach);
        double row = Math.floor(p.y() / reach);
        for (double x = column - 1; x <= column + 1; x++) {
            for (double y = row - 1; y <= row + 1; y++) {
                for (Point q : junctionsIn.getOrDefault(new Point(x, y), List.of())) {
                    if (q.distance(p) <= reach) {
                        return;
                    }
                }
            }
        }
        junctions.add(p);
        junctionsIn.computeIfAbsent(new Point(column, row), k -> new ArrayList<>(2)).add(p);
    }
}
