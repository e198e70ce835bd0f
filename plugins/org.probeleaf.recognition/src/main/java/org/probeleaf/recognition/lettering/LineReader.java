// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.schematic.geometry.Box;

/** Reads a line of marks: parts it into letters, finds its base line and capital height, and chooses the letters. */
final class LineReader {

    /** Capital height of a line of small letters only, in their heights. */
    private static final double CAPITAL_OF_SMALL = 8 / 5.4;
    /** The share of its height that a capital with a tail, a Q, has above the line. */
    private static final double LEAST_TAILED = 0.7;
    /** What a line must fit better for a less likely height to be taken. */
    private static final double RELUCTANCE = 0.04;

    /** How much less the kinds of words count where the page's own letters are known. */
    private static final double TRUST = 0.4;

    /** A letter that fits this well is taken although other ink touches it; others are worth that much less. */
    private static final double SURE = 0.92;
    private static final double TOUCHED = 0.25;

    /** A mark lower than this share of the tallest is a dot, a ring of a percent sign or the like. */
    private static final double SMALL = 0.6;

    private final List<Stroke> strokes;
    private final LetterSet set;
    private final LetterMatcher matcher;
    private final Hand hand;

    LineReader(List<Stroke> strokes, LetterSet set, Hand hand) {
        this.strokes = strokes;
        this.set = set;
        this.hand = hand;
        this.matcher = new LetterMatcher(set, hand);
    }

    /** What a capital height and base line make of a line. */
    private record Trial(double base, double capital, List<List<Guess>> guesses, double fit) {
    }

    /** Reads marks that are in the order of writing. */
    Line read(Direction direction, List<Mark> marks) {
        return readCells(direction, cells(direction, withoutBars(direction, marks)));
    }

    /** Reads letters' places that are in the order of writing. */
    Line readCells(Direction direction, List<Cell> cells) {
        Trial best = null;
        for (double[] place : places(cells)) {
            List<List<Guess>> guesses = new ArrayList<>();
            double sum = 0;
            for (Cell cell : cells) {
                List<Guess> g = matcher.guesses(cell, place[0], place[1]);
                guesses.add(g);
                sum += g.get(0).score();
            }
            double fit = sum / cells.size() - place[2];
            if (best == null || fit > best.fit()) {
                best = new Trial(place[0], place[1], guesses, fit);
            }
        }
        return write(direction, cells, best);
    }

    private Line write(Direction direction, List<Cell> cells, Trial trial) {
        List<Guess> letters = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        boolean[] ends = Spacing.ends(cells, trial.guesses(), trial.capital(), set, hand);
        int from = 0;
        for (int i = 1; i <= cells.size(); i++) {
            if (i == cells.size() || ends[i - 1]) {
                List<Guess> word = WordChooser.choose(trial.guesses().subList(from, i), hand.isEmpty() ? 1 : TRUST);
                for (Guess g : word) {
                    letters.add(doubted(g, cells.get(letters.size())));
                }
                word.forEach(g -> text.append(g.letter()));
                if (i < cells.size()) {
                    text.append(' ');
                }
                from = i;
            }
        }
        return new Line(direction, cells, letters, text.toString(), trial.base(), trial.capital());
    }

    /** A shape that other ink touches is more likely a sign of the drawing, unless it is a letter beyond doubt. */
    private static Guess doubted(Guess guess, Cell cell) {
        boolean touched = cell.marks().stream().anyMatch(Mark::touches);
        return touched && guess.score() < SURE ? new Guess(guess.letter(), guess.score() - TOUCHED) : guess;
    }

    /** A level stroke over all else in the line is a bar over letters, no letter. */
    private List<Mark> withoutBars(Direction direction, List<Mark> marks) {
        List<Mark> rest = new ArrayList<>();
        for (Mark mark : marks) {
            Box box = direction.turned(mark.box());
            boolean level = box.height() < 0.12 * box.width();
            boolean over = level && marks.stream().filter(m -> m != mark).map(m -> direction.turned(m.box()))
                    .filter(b -> b.height() > 0.5 * box.width() && b.x0() < box.x1() && b.x1() > box.x0())
                    .anyMatch(b -> box.y0() > b.y1() + 0.02 * b.height());
            if (!over) {
                rest.add(mark);
            }
        }
        return rest.isEmpty() ? marks : rest;
    }

    /** Marks that lie over each other along the line make one letter. */
    private List<Cell> cells(Direction direction, List<Mark> marks) {
        List<Cell> cells = new ArrayList<>();
        List<Mark> open = new ArrayList<>();
        double from = 0;
        double to = 0;
        double low = 0;
        for (Mark mark : marks) {
            Box b = direction.turned(mark.box());
            double overlap = Math.min(to, b.x1()) - Math.max(from, b.x0());
            double least = Math.min(to - from, b.width());
            double height = tallest(direction, open, b);
            if (!open.isEmpty() && overlap < least(least, Math.min(b.height(), low), height)) {
                cells.add(Cell.of(direction, open, strokes));
                open.clear();
            }
            low = open.isEmpty() ? b.height() : Math.min(low, b.height());
            from = open.isEmpty() ? b.x0() : Math.min(from, b.x0());
            to = open.isEmpty() ? b.x1() : Math.max(to, b.x1());
            open.add(mark);
        }
        cells.add(Cell.of(direction, open, strokes));
        return cells;
    }

    /** How far marks of one letter overlap at least, given the width of the narrower and the height of the lower one. */
    private double least(double width, double low, double tallest) {
        if (set.pen()) {
            return width < 0.15 * tallest ? -0.06 * tallest : 0.5 * width;
        }
        return (low < SMALL * tallest ? 0.35 : 0.5) * width;
    }

    private static double tallest(Direction direction, List<Mark> marks, Box box) {
        double height = box.height();
        for (Mark mark : marks) {
            height = Math.max(height, direction.turned(mark.box()).height());
        }
        return height;
    }

    /** Base line, capital height and how unlikely they are, for all that may hold for the line. */
    private List<double[]> places(List<Cell> cells) {
        double tallest = 0;
        for (Cell c : cells) {
            tallest = Math.max(tallest, c.shape().height());
        }
        List<Double> bottoms = new ArrayList<>();
        List<Double> tops = new ArrayList<>();
        for (Cell c : cells) {
            if (c.shape().height() >= 0.55 * tallest) {
                bottoms.add(c.shape().bottom());
                tops.add(c.shape().top());
            }
        }
        bottoms.sort(null);
        tops.sort(null);
        double top = tops.get(tops.size() - 1);
        double base = bottoms.get(bottoms.size() / 2);
        List<double[]> places = new ArrayList<>();
        double height = Math.max(top - base, 0.1);
        places.add(new double[] {base, height, 0});
        places.add(new double[] {base, height * CAPITAL_OF_SMALL, RELUCTANCE});
        double usual = tops.get(tops.size() / 2) - base;
        if (usual < 0.98 * height && usual > 0.5 * height) {
            places.add(new double[] {base, usual, 0});
        }
        double lowest = bottoms.get(0);
        if (lowest < base - 0.1 * tallest) {
            places.add(new double[] {lowest, Math.max(top - lowest, 0.1), RELUCTANCE});
        }
        double highest = bottoms.get(bottoms.size() - 1);
        if (highest > base + 0.1 * tallest) {
            places.add(new double[] {highest, Math.max(top - highest, 0.1), RELUCTANCE});
        }
        boolean capitalAlone = !set.pen() && cells.size() == 1 && hand.linesOfHeight(height) >= Hand.USUAL;
        for (double own : hand.heights()) {
            if (!capitalAlone && Math.abs(own - height) > 0.02 * own && own > 0.9 * height && own < 1.7 * height) {
                places.add(new double[] {base, own, 0});
            }
            if (!set.pen() && cells.size() == 1 && own < 0.98 * height && own > LEAST_TAILED * height) {
                // A letter alone may reach below the line.
                places.add(new double[] {top - own, own, 0});
            }
        }
        return places;
    }
}
