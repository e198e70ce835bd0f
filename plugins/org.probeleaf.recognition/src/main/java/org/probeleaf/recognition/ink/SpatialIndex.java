// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Finds things by the place they take; what is found comes in the order in which it was put in. Built once; threads
 * may query it together.
 *
 * <p>A packed R-tree, filled by sort-tile-recursive (Leutenegger, Lopez and Edgington, 1997) and kept in flat arrays:
 * the recogniser asks some hundred questions for each line of a page, and a tree of objects would take most of its
 * time.
 *
 * @param <T> the things
 */
public final class SpatialIndex<T> {

    private static final int FAN = 8;

    private final T[] things;
    /** For each place of the lowest level the thing that lies there; a thing may lie at several. */
    private final int[] order;
    /** For each level, lowest first, its boxes: x0, y0, x1, y1 and so on. */
    private final List<double[]> levels = new ArrayList<>();

    /**
     * @param things what to index
     * @param box    the place a thing takes
     */
    public SpatialIndex(Collection<? extends T> things, Function<? super T, Box> box) {
        this(things, (thing, boxes) -> boxes.add(box.apply(thing)));
    }

    /**
     * @param things what to index
     * @param places puts the boxes in a list that together are the place a thing takes, one or more
     */
    @SuppressWarnings("unchecked")
    private SpatialIndex(Collection<? extends T> things, BiConsumer<? super T, List<Box>> places) {
        this.things = (T[]) things.toArray();
        List<Box> all = new ArrayList<>(this.things.length);
        int[] owner = new int[this.things.length];
        for (int i = 0; i < this.things.length; i++) {
            int from = all.size();
            places.accept(this.things[i], all);
            if (all.size() > owner.length) {
                owner = Arrays.copyOf(owner, Math.max(all.size(), 2 * owner.length));
            }
            Arrays.fill(owner, from, all.size(), i);
        }
        Box[] boxes = all.toArray(Box[]::new);
        int[] tiled = tiled(boxes);
        this.order = new int[tiled.length];
        double[] lowest = new double[4 * boxes.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = owner[tiled[i]];
            Box b = boxes[tiled[i]];
            lowest[4 * i] = b.x0();
            lowest[4 * i + 1] = b.y0();
            lowest[4 * i + 2] = b.x1();
            lowest[4 * i + 3] = b.y1();
        }
        levels.add(lowest);
        while (levels.get(levels.size() - 1).length > 4 * FAN) {
            levels.add(above(levels.get(levels.size() - 1)));
        }
    }

    /** An index of segments; of one that slants over the page only the neighbourhood is searched, not all its box. */
    public static SpatialIndex<Segment> ofSegments(Collection<Segment> segments) {
        return new SpatialIndex<>(segments,
                (s, boxes) -> boxes.addAll(LinePieces.boxes(List.of(s.a(), s.b()), false, s.box())));
    }

    /**
     * An index of segments that take more room than their own.
     *
     * @param margin how far beyond its line, in points, a segment is still to be found
     */
    public static SpatialIndex<Segment> ofSegments(Collection<Segment> segments, ToDoubleFunction<Segment> margin) {
        return new SpatialIndex<>(segments, (s, boxes) -> {
            for (Box piece : LinePieces.boxes(List.of(s.a(), s.b()), false, s.box())) {
                boxes.add(piece.grow(margin.applyAsDouble(s)));
            }
        });
    }

    /** An index of numbers that stand for strokes; of a large one only the neighbourhood of its lines is searched. */
    public static SpatialIndex<Integer> ofStrokes(Collection<Integer> numbers, List<Stroke> strokes) {
        return new SpatialIndex<>(numbers, (i, boxes) -> {
            Stroke s = strokes.get(i);
            boxes.addAll(LinePieces.boxes(s.points(), s.closed(), Box.around(s.points())));
        });
    }

    /** Things whose boxes touch {@code box}. */
    public List<T> touching(Box box) {
        return touching(box.x0(), box.y0(), box.x1(), box.y1());
    }

    /** Things whose boxes come within {@code reach} points of {@code p} along both axes. */
    public List<T> near(Point p, double reach) {
        return touching(p.x() - reach, p.y() - reach, p.x() + reach, p.y() + reach);
    }

    private List<T> touching(double x0, double y0, double x1, double y1) {
        Found found = new Found();
        int top = levels.size() - 1;
        search(top, 0, levels.get(top).length / 4, x0, y0, x1, y1, found);
        if (found.count == 0) {
            return List.of();
        }
        Arrays.sort(found.ids, 0, found.count);
        List<T> list = new ArrayList<>(found.count);
        for (int i = 0; i < found.count; i++) {
            if (i == 0 || found.ids[i] != found.ids[i - 1]) {
                list.add(things[found.ids[i]]);
            }
        }
        return list;
    }

    private void search(int level, int from, int to, double x0, double y0, double x1, double y1, Found found) {
        double[] boxes = levels.get(level);
        for (int i = from; i < to; i++) {
            int at = 4 * i;
            if (boxes[at] <= x1 && boxes[at + 2] >= x0 && boxes[at + 1] <= y1 && boxes[at + 3] >= y0) {
                if (level == 0) {
                    found.add(order[i]);
                } else {
                    int end = Math.min((i + 1) * FAN, levels.get(level - 1).length / 4);
                    search(level - 1, i * FAN, end, x0, y0, x1, y1, found);
                }
            }
        }
    }

    /** Numbers of boxes by upright strips from left to right, and from top to bottom within each. */
    private static int[] tiled(Box[] boxes) {
        int n = boxes.length;
        long[] keys = new long[n];
        for (int i = 0; i < n; i++) {
            keys[i] = key(boxes[i].x0() + boxes[i].x1(), i);
        }
        Arrays.sort(keys);
        int strip = FAN * Math.max(1, (int) Math.ceil(Math.sqrt((double) n / FAN)));
        for (int from = 0; from < n; from += strip) {
            int to = Math.min(n, from + strip);
            for (int k = from; k < to; k++) {
                int i = (int) keys[k];
                keys[k] = key(boxes[i].y0() + boxes[i].y1(), i);
            }
            Arrays.sort(keys, from, to);
        }
        int[] order = new int[n];
        for (int k = 0; k < n; k++) {
            order[k] = (int) keys[k];
        }
        return order;
    }

    /** A number that sorts as a value does, with an index in its lower half. */
    private static long key(double value, int index) {
        int bits = Float.floatToIntBits((float) value);
        // The bits of a negative value sort the wrong way round.
        int sortable = bits >= 0 ? bits : bits ^ 0x7FFFFFFF;
        return (long) sortable << 32 | index;
    }

    private static double[] above(double[] below) {
        int nodes = (below.length / 4 + FAN - 1) / FAN;
        double[] boxes = new double[4 * nodes];
        for (int node = 0; node < nodes; node++) {
            double x0 = Double.POSITIVE_INFINITY;
            double y0 = Double.POSITIVE_INFINITY;
            double x1 = Double.NEGATIVE_INFINITY;
            double y1 = Double.NEGATIVE_INFINITY;
            for (int at = 4 * node * FAN; at < Math.min(below.length, 4 * (node + 1) * FAN); at += 4) {
                x0 = Math.min(x0, below[at]);
                y0 = Math.min(y0, below[at + 1]);
                x1 = Math.max(x1, below[at + 2]);
                y1 = Math.max(y1, below[at + 3]);
            }
            boxes[4 * node] = x0;
            boxes[4 * node + 1] = y0;
            boxes[4 * node + 2] = x1;
            boxes[4 * node + 3] = y1;
        }
        return boxes;
    }

    /** Numbers of things found so far. */
    private static final class Found {
        int[] ids = new int[16];
        int count;

        void add(int id) {
            if (count == ids.length) {
                ids = Arrays.copyOf(ids, 2 * count);
            }
            ids[count++] = id;
        }
    }
}
