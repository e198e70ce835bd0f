// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;

import org.probeleaf.drawing.primitive.Stroke;

/** Finds the lines of lettering among a page's marks: all that may be lines are read, and the best are kept. */
final class PageReader {

    /** What a line written from left to right is worth more than one read turned. */
    private static final double UPRIGHT = 0.03;
    /** What a line of one letter is worth less than a long one that fits as well. */
    private static final double SHORT = 0.15;
    /** A line of letters that fit less well is none. */
    private static final double FIT = 0.78;
    private static final double FIT_OWN = 0.86;
    private static final double FIT_SHORT = 0.9;
    private static final double FIT_SINGLE = 0.93;
    /** A letter alone that other ink touches must be beyond doubt. */
    private static final double FIT_TOUCHED = 0.98;
    /** A letter that fits less well breaks its line. */
    private static final double LEAST = 0.62;
    /** How much less well a letter fits that was never seen in the page's own hand. */
    private static final double UNSEEN = 0.06;
    /** Letters that rings, crosses, coils and rules of a drawing look like. */
    private static final String CHANCE = "0OoIil1XxVvAHTLUuCcJjnYN4";
    private static final String SIGNS = "XxOoVvTLUCc";
    /** The least share of letters and digits in a line. */
    private static final double PLAIN = 0.5;

    private final List<Stroke> strokes;
    private final List<Mark> marks;
    private final Hand hand;
    private final LineReader reader;
    private final Set<Mark> taken = new HashSet<>();
    private final List<Line> kept = new ArrayList<>();
    private final PriorityQueue<Ranked> open = new PriorityQueue<>(Comparator.comparingDouble(Ranked::rank).reversed());

    private record Ranked(Line line, double rank) {
    }

    private PageReader(List<Stroke> strokes, List<Mark> marks, Hand hand) {
        this.strokes = strokes;
        this.marks = marks;
        this.hand = hand;
        this.reader = new LineReader(strokes, hand);
    }

    /** The lines of lettering on a page, given what is known of its hand. */
    static List<Line> lines(List<Stroke> strokes, List<Mark> marks, Hand hand) {
        PageReader page = new PageReader(strokes, marks, hand);
        page.read();
        return page.kept;
    }

    private void read() {
        for (Direction d : Direction.values()) {
            if (d == Direction.DOWN && hand.upwards()) {
                continue;
            }
            for (List<Mark> line : new LineFinder(d, marks, hand.inOrder()).lines()) {
                open(reader.read(d, line));
            }
        }
        while (!open.isEmpty()) {
            Line line = open.poll().line();
            if (line.cells().stream().anyMatch(c -> c.marks().stream().anyMatch(taken::contains))) {
                offerRest(line);
            } else if (isLettering(line)) {
                line.cells().forEach(c -> taken.addAll(c.marks()));
                kept.add(line);
            } else if (line.cells().size() > 1) {
                part(line);
            }
        }
    }

    private void open(Line line) {
        open.add(new Ranked(line, rank(line)));
    }

    private static double rank(Line line) {
        return line.fit() - SHORT / line.cells().size() + (line.direction() == Direction.RIGHT ? UPRIGHT : 0);
    }

    private void offer(Direction d, List<Cell> cells) {
        if (!cells.isEmpty()) {
            open(reader.readCells(d, cells));
        }
    }

    /** Offers what is left of a line when a better one took some of its marks. */
    private void offerRest(Line line) {
        List<Cell> run = new ArrayList<>();
        for (Cell cell : line.cells()) {
            if (cell.marks().stream().anyMatch(taken::contains)) {
                offer(line.direction(), run);
                run = new ArrayList<>();
            } else {
                run.add(cell);
            }
        }
        offer(line.direction(), run);
    }

    /** Leaves the letter that fits least out and offers what stands before and after it. */
    private void part(Line line) {
        int worst = 0;
        for (int i = 1; i < line.letters().size(); i++) {
            if (line.letters().get(i).score() < line.letters().get(worst).score()) {
                worst = i;
            }
        }
        offer(line.direction(), line.cells().subList(0, worst));
        offer(line.direction(), line.cells().subList(worst + 1, line.cells().size()));
        offer(line.direction(), line.cells().subList(worst, worst + 1));
    }

    private boolean isLettering(Line line) {
        int n = line.cells().size();
        boolean bare = line.cells().stream().allMatch(c -> isBare(c));
        long plain = line.letters().stream().filter(g -> Character.isLetterOrDigit(g.letter())).count();
        if (bare || isSigns(line) || plain < PLAIN * n || line.letters().stream().anyMatch(g -> g.score() < LEAST)) {
            return false;
        }
        if (hand.isEmpty()) {
            return n >= 3 && line.fit() >= FIT && telling(line) > 1;
        }
        double fit = fit(line);
        int alike = hand.linesOfHeight(line.capital());
        if (n > 1) {
            return fit >= (n >= 4 ? FIT_OWN : FIT_SHORT) && (n >= 4 || alike > 0)
                    && (telling(line) > 0 || fit >= FIT_SINGLE);
        }
        return fit >= FIT_SINGLE && alike >= Hand.USUAL && Character.isLetterOrDigit(line.text().charAt(0))
                && (fit >= FIT_TOUCHED && hand.inOrder()
                        || line.cells().get(0).marks().stream().noneMatch(Mark::touches));
    }

    /** How well a line fits, with allowance for letters that the page's own hand does not show yet. */
    private double fit(Line line) {
        long unseen = line.letters().stream().filter(g -> !hand.letters().containsKey(g.letter())).count();
        return line.fit() + UNSEEN * unseen / line.letters().size();
    }

    /** How many different letters a line has that a drawing's own lines do not make by chance. */
    private static long telling(Line line) {
        return line.text().chars().filter(c -> Character.isLetterOrDigit(c) && CHANCE.indexOf(c) < 0).distinct().count();
    }

    /** Whether a line is nothing but crosses, rings or arrow heads: signs of the drawing that look like letters. */
    private static boolean isSigns(Line line) {
        return line.text().matches("[oO ]+")
                || Arrays.stream(line.text().split(" ")).allMatch(w -> w.length() == 1 && SIGNS.contains(w));
    }

    /** Whether nothing but a straight line is drawn in a letter's place: it may be anything. */
    private boolean isBare(Cell cell) {
        LetterShape s = cell.shape();
        return Math.min(s.width(), s.height()) < 0.05 * Math.max(s.width(), s.height());
    }
}
