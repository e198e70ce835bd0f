// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/** Finds the bars that are drawn over letters to say that a signal is active low. */
final class Overbars {

    /** How far over the capitals a bar may stand, in capital heights. */
    private static final double LOWEST = 0.04;
    private static final double HIGHEST = 0.6;
    /** How far a bar may begin or end beside its letters, in capital heights. */
    private static final double BESIDE = 0.45;

    /** How far the middle of a bar in the sign of ground may be off that of the next, in half bars. */
    private static final double PILED = 0.2;

    /** Ends nearer to each other than this, in points, meet. */
    private static final double TOUCHING = 0.2;

    private final List<Stroke> strokes;
    private final SpatialIndex<Integer> index;
    private final SpatialIndex<Integer> ink;
    private final boolean[] taken;
    private final boolean pen;

    /**
     * @param taken strokes that are letters; bars that are found are marked in it too
     * @param pen   whether letters are drawn too, so that a stroke on a bar may be one that was not read
     */
    Overbars(List<Stroke> strokes, boolean[] taken, boolean pen) {
        this.pen = pen;
        this.strokes = strokes;
        this.taken = taken;
        List<Integer> level = new ArrayList<>();
        List<Integer> others = new ArrayList<>();
        for (int i = 0; i < strokes.size(); i++) {
            Box b = Box.around(strokes.get(i).points());
            if (!taken[i]) {
                others.add(i);
            }
            if (!taken[i] && !strokes.get(i).closed()
                    && Math.min(b.width(), b.height()) < 0.05 * Math.max(b.width(), b.height())) {
                level.add(i);
            }
        }
        this.ink = new SpatialIndex<>(others, i -> Box.around(strokes.get(i).points()));
        this.index = new SpatialIndex<>(level, i -> Box.around(strokes.get(i).points()));
    }

    /**
     * Which letters of a line have a bar over them.
     *
     * @param rgb colour of the letters and their bar
     */
    boolean[] over(Line line, int rgb) {
        Direction d = line.direction();
        List<Cell> cells = line.cells();
        double capital = line.capital();
        double from = cells.get(0).from() - BESIDE * capital;
        double to = cells.get(cells.size() - 1).to() + BESIDE * capital;
        double low = line.base() + (1 + LOWEST) * capital;
        double high = line.base() + (1 + HIGHEST) * capital;
        Point a = d.at(from, low);
        Point b = d.at(to, high);
        boolean[] over = new boolean[cells.size()];
        for (int i : index.touching(Box.of(a.x(), a.y(), b.x(), b.y()))) {
            Box bar = d.turned(Box.around(strokes.get(i).points()));
            if (strokes.get(i).rgb() == rgb && bar.width() > bar.height() && bar.x0() >= from
                    && bar.x1() <= to && bar.y0() >= low && bar.y1() <= high && isFree(i, d)
                    && (pen || !isOfPile(bar, capital, d)) && mark(cells, bar, over)) {
                taken[i] = true;
            }
        }
        return over;
    }

    /** Whether nothing else goes on from a bar's ends, as a frame's sides do, or ends on it, as a sign of ground's stem. */
    private boolean isFree(int bar, Direction d) {
        List<Point> points = strokes.get(bar).points();
        return (pen || !bearsStem(bar, d)) && endsThere(points.get(0), bar, d) && endsThere(points.get(points.size() - 1), bar, d);
    }

    /** Whether other bars stand over a bar's middle, each longer than the one below, as in the sign of ground. */
    private boolean isOfPile(Box bar, double capital, Direction d) {
        Point c = d.at((bar.x0() + bar.x1()) / 2, bar.y1());
        Point top = d.at((bar.x0() + bar.x1()) / 2, bar.y1() + capital);
        for (int i : index.touching(Box.of(c.x(), c.y(), top.x(), top.y()))) {
            Box other = d.turned(Box.around(strokes.get(i).points()));
            if (other.y0() > bar.y1() + TOUCHING && other.width() > bar.width()
                    && Math.abs(other.x0() + other.x1() - bar.x0() - bar.x1()) < PILED * bar.width()) {
                return true;
            }
        }
        return false;
    }

    private boolean bearsStem(int bar, Direction d) {
        Box box = Box.around(strokes.get(bar).points()).grow(TOUCHING);
        for (int i : ink.touching(box)) {
            List<Point> other = strokes.get(i).points();
            if (i != bar && d.turned(Box.around(other)).height() > TOUCHING
                    && (box.contains(other.get(0)) || box.contains(other.get(other.size() - 1)))) {
                return true;
            }
        }
        return false;
    }

    private boolean endsThere(Point end, int bar, Direction d) {
        for (int i : ink.near(end, TOUCHING)) {
            List<Point> points = strokes.get(i).points();
            // A bar may be drawn in pieces, one a letter.
            boolean level = d.turned(Box.around(points)).height() < TOUCHING;
            if (!level && points.stream().anyMatch(p -> p.distance(end) < TOUCHING)) {
                return false;
            }
        }
        return true;
    }

    private static boolean mark(List<Cell> cells, Box bar, boolean[] over) {
        boolean any = false;
        for (int i = 0; i < cells.size(); i++) {
            double middle = (cells.get(i).from() + cells.get(i).to()) / 2;
            if (middle > bar.x0() && middle < bar.x1()) {
                over[i] = true;
                any = true;
            }
        }
        return any;
    }

    /** The line's text with its bars written out: a slash before a word with a bar, braces round a part of one. */
    static String write(Line line, boolean[] over) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        for (String word : line.text().split(" ")) {
            int n = word.length();
            boolean all = n > 0;
            for (int i = 0; i < n; i++) {
                all &= over[at + i];
            }
            out.append(out.isEmpty() ? "" : " ").append(all ? "/" + word : braced(word, over, at));
            at += n;
        }
        return out.toString();
    }

    private static String braced(String word, boolean[] over, int at) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < word.length(); i++) {
            boolean before = i > 0 && over[at + i - 1];
            if (over[at + i] != before) {
                out.append(over[at + i] ? "~{" : "}");
            }
            out.append(word.charAt(i));
        }
        return out.append(!word.isEmpty() && over[at + word.length() - 1] ? "}" : "").toString();
    }
}
