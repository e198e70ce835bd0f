// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;

import org.probeleaf.drawing.primitive.Stroke;

/** Finds the lines of lettering among a page's marks: all that may be lines are read, and the best are kept. */
final class PageReader {

    /** Letters of a line that is taken while the page's hand is not known. */
    static final int SURE_LETTERS = 3;
    /** What a line written the usual way is worth more than one read turned. */
    private static final double UPRIGHT = 0.03;
    /** What a line of one letter is worth less than a long one that fits as well. */
    private static final double SHORT = 0.15;
    /** A line of letters that fit less well is none. */
    private static final double FIT = 0.78;
    private static final double BEYOND_DOUBT = 0.94;
    private static final Limits DRAWN = new Limits(0.86, 0.9, 0.93);
    private static final Limits PRINTED = new Limits(0.8, 0.84, 0.88);
    /** A letter alone that other ink touches must be beyond doubt. */
    private static final double FIT_TOUCHED = 0.98;
    /** Few letters that fit the page's own so well may be of any height. */
    private static final double FIT_KNOWN = 0.96;
    /** A letter that fits less well breaks its line. */
    private static final double LEAST = 0.62;
    /** How much less well a letter fits that was never seen in the page's own hand. */
    private static final double UNSEEN = 0.06;
    /** Letters that rings, crosses, coils and rules of a drawing look like. */
    private static final String CHANCE = "0OoIil1XxVvAHTLUuCcJjnYN4";
    private static final String SIGNS = "XxOoVvTLUCc";
    /** The least share of letters and digits in a line. */
    private static final double PLAIN = 0.5;
    private static final double PLAIN_PRINTED = 0.3;

    private final List<Mark> marks;
    private final LetterSet set;
    private final List<Direction> ways;
    private final Hand hand;
    private final LineReader reader;
    private final Set<Mark> taken = Collections.newSetFromMap(new IdentityHashMap<>());
    private final List<Line> kept = new ArrayList<>();
    private final PriorityQueue<Ranked> open = new PriorityQueue<>(Comparator.comparingDouble(Ranked::rank).reversed());

    /** How well a long line, a short one and one letter alone must fit, once the page's hand is known. */
    private record Limits(double line, double few, double single) {
    }

    private record Ranked(Line line, double rank) {
    }

    private PageReader(List<Stroke> strokes, List<Mark> marks, LetterSet set, List<Direction> ways, Hand hand) {
        this.marks = marks;
        this.set = set;
        this.ways = ways;
        this.hand = hand;
        this.reader = new LineReader(strokes, set, hand);
    }

    /**
     * The lines of lettering on a page.
     *
     * @param set  what letters look like
     * @param ways which ways may be written, the usual one first
     * @param hand what is known of the page's hand
     */
    static List<Line> lines(List<Stroke> strokes, List<Mark> marks, LetterSet set, List<Direction> ways, Hand hand) {
        PageReader page = new PageReader(strokes, marks, set, ways, hand);
        page.read();
        return page.kept;
    }

    private void read() {
        List<Mark> rest = new ArrayList<>(marks);
        for (Direction d : ways) {
            if (d == Direction.DOWN && hand.upwards()) {
                continue;
            }
            for (List<Mark> line : new LineFinder(d, rest, set.pen(), hand.inOrder()).lines()) {
                if (line.size() >= fewest() && !line.stream().allMatch(Mark::bare)) {
                    Line read = reader.read(d, line);
                    if (read.cells().size() > 2 && read.fit() > BEYOND_DOUBT && isLettering(read)) {
                        keep(read);
                    } else {
                        open(read);
                    }
                }
            }
            // What reads well one way need not be tried another.
            rest.removeAll(taken);
        }
        while (!open.isEmpty()) {
            Line line = open.poll().line();
            if (line.cells().stream().anyMatch(c -> c.marks().stream().anyMatch(taken::contains))) {
                offerRest(line);
            } else if (isLettering(line)) {
                keep(line);
            } else if (line.cells().size() > 1) {
                part(line);
            }
        }
    }

    /** Letters that a line must have to be taken at this stage. */
    private int fewest() {
        return hand.isEmpty() ? SURE_LETTERS : 1;
    }

    private void keep(Line line) {
        line.cells().forEach(c -> taken.addAll(c.marks()));
        kept.add(line);
    }

    private void open(Line line) {
        open.add(new Ranked(line, rank(line)));
    }

    private double rank(Line line) {
        return line.fit() - SHORT / line.cells().size() + bonus(line.direction());
    }

    /** What the way a line is written is worth; of printed lines also that it is not written against the usual way. */
    private double bonus(Direction d) {
        int at = ways.indexOf(d);
        return set.pen() ? at == 0 ? UPRIGHT : 0 : UPRIGHT - UPRIGHT / 3 * at;
    }

    private void offer(Direction d, List<Cell> cells) {
        if (cells.size() >= fewest()) {
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

    /** Leaves the letters out that do not fit, else the one that fits least, and offers what stands between them. */
    private void part(Line line) {
        double worst = line.letters().stream().mapToDouble(Guess::score).min().orElse(0);
        double limit = Math.max(worst, Math.nextDown(LEAST));
        List<Cell> run = new ArrayList<>();
        for (int i = 0; i < line.cells().size(); i++) {
            if (line.letters().get(i).score() <= limit) {
                offer(line.direction(), run);
                offer(line.direction(), List.of(line.cells().get(i)));
                run = new ArrayList<>();
            } else {
                run.add(line.cells().get(i));
            }
        }
        offer(line.direction(), run);
    }

    private boolean isLettering(Line line) {
        int n = line.cells().size();
        boolean bare = line.cells().stream().allMatch(c -> c.marks().size() == 1 && c.marks().get(0).bare());
        long plain = line.letters().stream().filter(g -> Character.isLetterOrDigit(g.letter())).count();
        if (bare || isSigns(line) || plain < (set.pen() ? PLAIN : PLAIN_PRINTED) * n || line.letters().stream().anyMatch(g -> g.score() < LEAST)) {
            return false;
        }
        if (hand.isEmpty()) {
            return n >= fewest() && line.fit() >= FIT && telling(line) > 1;
        }
        double fit = fit(line);
        Limits limits = set.pen() ? DRAWN : PRINTED;
        boolean known = !set.pen() && fit >= FIT_KNOWN;
        int alike = known ? Hand.USUAL : hand.linesOfHeight(line.capital());
        if (n > 1) {
            return fit >= (n >= 4 ? limits.line : limits.few) && (n >= 4 || alike > 0)
                    && (telling(line) > 0 || fit >= limits.single);
        }
        return fit >= limits.single && alike >= Hand.USUAL && Character.isLetterOrDigit(line.text().charAt(0))
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
    private boolean isSigns(Line line) {
        return line.text().matches("[oO ]+")
                || set.pen() && Arrays.stream(line.text().split(" ")).allMatch(w -> w.length() == 1 && SIGNS.contains(w));
    }
}
