// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * The hand that a page is written in, learned from what was read well: the letters as this page draws them, and the
 * heights of its lettering.
 */
final class Hand {

    /** Likes of one letter kept; more tell nothing new. */
    private static final int LIKES = 4;
    /** Two letters more alike than this are the same. */
    private static final double SAME = 0.985;
    private static final int COMPARED = 40;
    /** Lines of one height that make it usual. */
    static final int USUAL = 3;
    /** The share of letters that must be drawn in order for all to be. */
    private static final double IN_ORDER = 0.9;
    /** How near a height must be to one of the page's own, as a share of it. */
    private static final double SAME_HEIGHT = 0.07;

    /** A page of which nothing is known. */
    static final Hand NONE = new Hand(Map.of(), new double[0], false, false, 0, 0);

    private final Map<Character, List<LetterShape>> letters;
    private final double[] capitals;
    private final List<Double> heights;
    private final boolean inOrder;
    private final boolean upwards;
    private final double pitch;
    private final double set;

    private Hand(Map<Character, List<LetterShape>> letters, double[] capitals, boolean inOrder,
            boolean upwards, double pitch, double set) {
        this.letters = letters;
        this.capitals = capitals;
        this.inOrder = inOrder;
        this.upwards = upwards;
        this.pitch = pitch;
        this.set = set;
        this.heights = usualHeights();
    }

    /**
     * Learns from lines read well.
     *
     * @param set what letters look like in general
     */
    static Hand of(List<Line> lines, LetterSet set) {
        Map<Character, List<LetterShape>> shapes = new HashMap<>();
        List<Double> heights = new ArrayList<>();
        for (Line line : lines) {
            for (int i = 0; i < line.cells().size(); i++) {
                shapes.computeIfAbsent(line.letters().get(i).letter(), k -> new ArrayList<>())
                        .add(line.cells().get(i).shape().placed(line.base(), line.capital()));
            }
            heights.add(line.capital());
        }
        ZeroAndO.part(shapes);
        shapes.replaceAll((letter, all) -> typical(all));
        return new Hand(shapes, heights.stream().mapToDouble(h -> h).sorted().toArray(), areInOrder(lines), areUpwards(lines),
                Spacing.pitch(lines), set.pen() ? 0 : Spacing.set(lines, set));
    }

    private static boolean areUpwards(List<Line> lines) {
        long up = lines.stream().filter(l -> l.direction() == Direction.UP).count();
        long down = lines.stream().filter(l -> l.direction() == Direction.DOWN).count();
        return up > 0 && down == 0;
    }

    /** How far apart printed letters are set beyond what their fonts do, in capital heights. */
    double set() {
        return set;
    }

    /** The step from letter to letter where the page is typewritten, in capital heights; else 0. */
    double pitch() {
        return pitch;
    }

    /** Whether all upright writing on the page runs upwards, so that an upright 6 is no 9 written downwards. */
    boolean upwards() {
        return upwards;
    }

    /** Whether nearly every letter was drawn straight after the one before it. */
    private static boolean areInOrder(List<Line> lines) {
        int steps = 0;
        int inOrder = 0;
        for (Line line : lines) {
            for (int i = 1; i < line.cells().size(); i++) {
                List<Mark> before = line.cells().get(i - 1).marks();
                steps++;
                inOrder += LineFinder.inOrder(before.get(before.size() - 1), line.cells().get(i).marks().get(0)) ? 1 : 0;
            }
        }
        return inOrder > IN_ORDER * steps;
    }

    /** Whether lines are drawn letter after letter. */
    boolean inOrder() {
        return inOrder;
    }

    /** Those most like the rest, each in another way: a letter that was taken for another is not. */
    private static List<LetterShape> typical(List<LetterShape> all) {
        List<LetterShape> some = all.subList(0, Math.min(all.size(), COMPARED));
        Map<LetterShape, Double> likeness = new IdentityHashMap<>();
        for (LetterShape a : some) {
            likeness.put(a, some.stream().mapToDouble(b -> alike(a, b)).sum());
        }
        List<LetterShape> sorted = new ArrayList<>(some);
        sorted.sort(Comparator.comparingDouble((LetterShape s) -> likeness.get(s)).reversed());
        List<LetterShape> typical = new ArrayList<>();
        for (LetterShape s : sorted.subList(0, (sorted.size() + 1) / 2)) {
            if (typical.size() < LIKES && typical.stream().allMatch(t -> alike(t, s) < SAME)) {
                typical.add(s);
            }
        }
        return List.copyOf(typical);
    }

    private static double alike(LetterShape a, LetterShape b) {
        return a.likeness(b) - Math.abs(a.width() - b.width()) - Math.abs(a.top() - b.top());
    }

    boolean isEmpty() {
        return letters.isEmpty();
    }

    Map<Character, List<LetterShape>> letters() {
        return letters;
    }

    /** How many lines on the page have capitals of this height. */
    int linesOfHeight(double capital) {
        return atMost(capital * (1 + SAME_HEIGHT)) - atMost(capital * (1 - SAME_HEIGHT));
    }

    private int atMost(double height) {
        int at = Arrays.binarySearch(capitals, height);
        return at < 0 ? -at - 1 : at;
    }

    /** The page's usual capital heights, each once. */
    List<Double> heights() {
        return heights;
    }

    /** The usual capital height that a height is meant to be, or the height itself where it is near none. */
    double usual(double capital) {
        return heights.stream().filter(h -> Math.abs(h - capital) < SAME_HEIGHT * h)
                .min(Comparator.comparingDouble(h -> Math.abs(h - capital))).orElse(capital);
    }

    private List<Double> usualHeights() {
        List<Double> usual = new ArrayList<>();
        for (double c : capitals) {
            if (linesOfHeight(c) >= USUAL && (usual.isEmpty() || c > usual.get(usual.size() - 1) * (1 + SAME_HEIGHT))) {
                usual.add(c);
            }
        }
        return List.copyOf(usual);
    }
}
