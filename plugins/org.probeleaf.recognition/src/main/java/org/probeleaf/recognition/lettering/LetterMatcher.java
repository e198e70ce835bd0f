// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Says which letters a shape may be. */
final class LetterMatcher {

    private static final int GUESSES = 6;
    private static final double OFF_PLACE = 0.35;
    private static final double OFF_WIDTH = 0.12;
    private static final double OFF_PLACE_IN_HAND = 0.6;
    private static final double OFF_WIDTH_IN_HAND = 0.5;
    /** What a letter in the page's own hand is worth more than one in an unknown hand. */
    private static final double OWN_HAND = 0.03;
    /** What a letter in an unknown hand is worth less where the page's own is known. */
    private static final double OTHER_HAND = 0.04;
    /** Guesses worse than the best by more than this are of no use. */
    private static final double SPREAD = 0.25;
    private static final double SHY = 0.06;
    /** A mark smaller than this, in capital heights, is a spot whatever its shape. */
    private static final double SPOT = 0.26;
    private static final double SPOT_FIT = 0.95;

    private final Map<Cell, float[]> own = new IdentityHashMap<>();
    private final List<Alphabet.Letter> letters;
    private final int generic;
    private final double[] other;

    LetterMatcher(Hand hand) {
        letters = new ArrayList<>(Alphabet.letters());
        generic = letters.size();
        other = letters.stream().mapToDouble(l -> hand.letters().containsKey(l.letter()) ? OTHER_HAND : 0).toArray();
        hand.letters().forEach((letter, shapes) ->
                shapes.forEach(s -> letters.add(new Alphabet.Letter(letter, s, false))));
    }

    /** Letters that may stand at a place, best first; never empty. */
    List<Guess> guesses(Cell cell, double base, double capital) {
        LetterShape shape = cell.shape().placed(base, capital);
        if (Math.max(shape.height(), shape.width()) < SPOT) {
            return List.of(new Guess('.', SPOT_FIT - OFF_PLACE * Math.abs(shape.bottom())));
        }
        float[] likeness = own.computeIfAbsent(cell, this::likeness);
        Map<Character, Double> best = new HashMap<>();
        double least = 0;
        for (int i = 0; i < likeness.length; i++) {
            if (likeness[i] < least) {
                continue;
            }
            Alphabet.Letter l = letters.get(i);
            double score = i < generic
                    ? likeness[i] - off(shape, l.shape(), OFF_PLACE, OFF_WIDTH) - (l.shy() ? SHY : 0) - other[i]
                    : Math.min(1, likeness[i] - off(shape, l.shape(), OFF_PLACE_IN_HAND, OFF_WIDTH_IN_HAND) + OWN_HAND);
            least = Math.max(least, score - SPREAD);
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

    private float[] likeness(Cell cell) {
        float[] likeness = new float[letters.size()];
        for (int i = 0; i < likeness.length; i++) {
            likeness[i] = (float) cell.shape().likeness(letters.get(i).shape());
        }
        return likeness;
    }

    private static double off(LetterShape a, LetterShape b, double place, double width) {
        return place * (Math.abs(a.top() - b.top()) + Math.abs(a.bottom() - b.bottom()))
                + width * Math.abs(Math.log((a.width() + 0.15) / (b.width() + 0.15)));
    }
}
