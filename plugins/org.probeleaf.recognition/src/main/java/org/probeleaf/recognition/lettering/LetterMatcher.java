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

/** Says which letters a shape may be. */
final class LetterMatcher {

    private static final int GUESSES = 6;
    private static final double OFF_PLACE_IN_HAND = 0.6;
    private static final double OFF_WIDTH_IN_HAND = 0.5;
    /** What a letter in the page's own hand is worth more than one in an unknown hand. */
    private static final double OWN_HAND = 0.03;
    /** What a letter in an unknown hand is worth less where the page's own is known. */
    private static final double OTHER_HAND = 0.04;
    /** Guesses worse than the best by more than this are of no use. */
    private static final double SPREAD = 0.25;
    private static final double SPREAD_PRINTED = 0.15;
    /** What fits all printed letters less well is none, whichever it is most like. */
    private static final double NO_LETTER = 0.5;
    private static final double SHY = 0.06;
    /** Steps of a capital's height that a printed letter's place and width are told by. */
    private static final double PLACES = 64;
    private static final long PLACES_OFF = 100_003;
    /** A mark smaller than this, in capital heights, is a spot whatever its shape. */
    private static final double SPOT = 0.26;
    private static final double SPOT_FIT = 0.95;
    /** From this likeness on two shapes are the same letter of the same font. */
    private static final double ALL_BUT_SAME = 0.997;
    private static final double MOST_APART = Math.sqrt(2 - 2 * ALL_BUT_SAME);
    /** Steps in the ratio of a shape's sides, for each factor e. */
    private static final double SLOTS = 6;
    private static final int MOST_ALIKE = 60;
    /** A shape lower than this share of its width and of a capital is a hyphen or an underscore. */
    private static final double BAR = 0.15;
    private static final double BAR_FIT = 0.92;
    /** Where hyphens and underscores may be, in capital heights. */
    private static final double LONGEST_BAR = 1.6;
    private static final double HIGHEST_BAR = 0.75;
    private static final double LOWEST_BAR = 0.15;

    private final Map<float[], Likeness> own = new IdentityHashMap<>();
    /** A letter drawn a thousand times is compared once. */
    private final Map<LetterShape.Print, Likeness> ofPrint = new HashMap<>();
    /** Shapes looked up by the ratio of their sides. */
    private final Map<Integer, List<Likeness>> ofRatio = new HashMap<>();
    private final LetterSet set;
    private final List<Alphabet.Letter> letters;
    private final int generic;
    private final double[] other;
    private final LetterShape.Outline[] outlines;

    LetterMatcher(LetterSet set, Hand hand) {
        this.set = set;
        letters = new ArrayList<>(set.letters());
        generic = letters.size();
        other = letters.stream().mapToDouble(l -> hand.letters().containsKey(l.letter()) ? OTHER_HAND : 0).toArray();
        hand.letters().forEach((letter, shapes) ->
                shapes.forEach(s -> letters.add(new Alphabet.Letter(letter, s, false))));
        outlines = letters.stream().map(l -> l.shape().outline()).toArray(LetterShape.Outline[]::new);
    }

    /** Letters that may stand at a place, best first; never empty. */
    List<Guess> guesses(Cell cell, double base, double capital) {
        return guesses(cell.shape(), base, capital);
    }

    /** Letters that a shape may be, best first; never empty. */
    List<Guess> guesses(LetterShape unplaced, double base, double capital) {
        LetterShape shape = unplaced.placed(base, capital);
        if (set.pen() && Math.max(shape.height(), shape.width()) < SPOT) {
            return List.of(new Guess('.', SPOT_FIT - set.offPlace() * Math.abs(shape.bottom())));
        }
        if (!set.pen() && shape.height() < BAR * shape.width() && shape.height() < BAR) {
            return bar(shape);
        }
        Likeness likeness = likeness(unplaced);
        return set.pen() ? guesses(likeness, shape)
                : likeness.placed.computeIfAbsent(place(shape), p -> guesses(likeness, shape));
    }

    /** Where a shape stands and how wide it is, in steps that make no difference. */
    private static long place(LetterShape shape) {
        return (Math.round(shape.bottom() * PLACES) * PLACES_OFF + Math.round(shape.top() * PLACES)) * PLACES_OFF
                + Math.round(shape.width() * PLACES);
    }

    private List<Guess> guesses(Likeness likeness, LetterShape shape) {
        double spread = set.pen() ? SPREAD : SPREAD_PRINTED;
        Map<Character, Double> best = new HashMap<>();
        double least = set.pen() ? 0 : NO_LETTER;
        // The likeliest first: then most others need no look at all.
        for (int i : likeness.order) {
            if (likeness.atMost[i] < least) {
                break;
            }
            float alike = likeness.to(i);
            if (alike < least) {
                continue;
            }
            Alphabet.Letter l = letters.get(i);
            double score = i < generic
                    ? alike - off(shape, l.shape(), set.offPlace(), set.offWidth()) - (l.shy() ? SHY : 0) - other[i]
                    : Math.min(1, alike - off(shape, l.shape(), OFF_PLACE_IN_HAND, OFF_WIDTH_IN_HAND) + OWN_HAND);
            least = Math.max(least, score - spread);
            if (score >= least) {
                best.merge(l.letter(), score, Math::max);
            }
        }
        List<Guess> guesses = new ArrayList<>();
        best.forEach((letter, score) -> guesses.add(new Guess(letter, score)));
        guesses.sort(Comparator.comparingDouble(Guess::score).reversed());
        return guesses.isEmpty() ? List.of(new Guess('?', 0))
                : guesses.subList(0, Math.min(GUESSES, guesses.size()));
    }

    /** A level bar is the same in all fonts but for its length and weight; which it is, its place says. */
    private List<Guess> bar(LetterShape shape) {
        double middle = (shape.top() + shape.bottom()) / 2;
        if (shape.width() > LONGEST_BAR || middle > HIGHEST_BAR) {
            return List.of(new Guess('-', 0));
        }
        return List.of(new Guess(middle < 0 ? '_' : '-', BAR_FIT - Math.max(0, LOWEST_BAR - Math.abs(middle))));
    }

    /** Stands for all shapes with nearly the same looks. */
    Object kind(LetterShape shape) {
        return likeness(shape);
    }

    private Likeness likeness(LetterShape shape) {
        return own.computeIfAbsent(shape.ink(), k -> set.pen()
                ? ofPrint.computeIfAbsent(shape.print(), p -> new Likeness(shape)) : nearest(shape));
    }

    /** Printed letters are the same all over a page but for rounding. */
    private Likeness nearest(LetterShape shape) {
        double ratio = Math.log((shape.width() + 1e-3) / (shape.height() + 1e-3));
        int slot = (int) Math.floor(ratio * SLOTS);
        double[] ways = shape.ways();
        for (int i = slot - 1; i <= slot + 1; i++) {
            for (Likeness l : ofRatio.getOrDefault(i, List.of())) {
                if (mayBeSame(ways, l.ways) && shape.likeness(l.shape) > ALL_BUT_SAME) {
                    return l;
                }
            }
        }
        Likeness found = new Likeness(shape);
        List<Likeness> alike = ofRatio.computeIfAbsent(slot, k -> new ArrayList<>());
        if (alike.size() < MOST_ALIKE) {
            alike.add(found);
        }
        return found;
    }

    /** Of unit vectors whose product is p, parts differ in length by the root of 2 - 2p at most. */
    private static boolean mayBeSame(double[] a, double[] b) {
        for (int i = 0; i < a.length; i++) {
            if (Math.abs(a[i] - b[i]) > MOST_APART) {
                return false;
            }
        }
        return true;
    }

    /** How alike a shape and each letter are, worked out as far as it is asked for. */
    private final class Likeness {
        private final LetterShape shape;
        private final double[] ways;
        /** Bounds, by letter. */
        private final float[] atMost = new float[letters.size()];
        /** Letters by falling bound. */
        private final int[] order = new int[letters.size()];
        /** What is known so far; NaN where that is nothing. */
        private final float[] known = new float[letters.size()];
        /** What a printed shape may be by where it stands. */
        private final Map<Long, List<Guess>> placed = new HashMap<>();

        Likeness(LetterShape shape) {
            this.shape = shape;
            this.ways = shape.ways();
            LetterShape.Outline outline = shape.outline();
            Arrays.fill(known, Float.NaN);
            long[] keys = new long[order.length];
            for (int i = 0; i < keys.length; i++) {
                atMost[i] = outline.likenessAtMost(outlines[i]);
                // The bits of positive numbers sort as they do.
                keys[i] = (long) -Float.floatToIntBits(atMost[i]) << 32 | i;
            }
            Arrays.sort(keys);
            for (int k = 0; k < keys.length; k++) {
                order[k] = (int) keys[k];
            }
        }

        float to(int letter) {
            if (Float.isNaN(known[letter])) {
                known[letter] = (float) shape.likeness(letters.get(letter).shape());
            }
            return known[letter];
        }
    }

    /** What a letter is worth less for its place and width. */
    static double off(LetterShape a, LetterShape b, double place, double width) {
        return place * (Math.abs(a.top() - b.top()) + Math.abs(a.bottom() - b.bottom()))
                + width * Math.abs(Math.log((a.width() + 0.15) / (b.width() + 0.15)));
    }
}
