// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Decides which letter each shape of a page's fonts is, once for all places where it stands: by its looks and by the
 * words that it stands in. An upright line is an l in "title" and an I in "IN"; where its shape stands in both, the
 * greater number counts.
 */
final class ShapeReader {

    /** A letter that fits less well than the best by more than this is not thought of. */
    private static final double WORSE = 0.07;
    /** What looks count beside a word's sense. */
    private static final double LOOKS = 2;
    /** The cost of going from digits to letters, or from capitals to small letters, within a word. */
    private static final double CHANGE = 0.08;
    /** What a word of a known kind is worth. */
    private static final double KNOWN = 0.08;
    /** The cost of a second shape for the same letter in one font. */
    private static final double SAME = 0.12;
    /** Words looked at for one shape; more tell nothing new. */
    private static final int WORDS = 40;
    private static final int ROUNDS = 3;

    private final List<List<Guess>> shapes;
    private final int[] fonts;
    private final List<Set<List<Integer>>> words = new ArrayList<>();
    private final char[] letters;

    /**
     * @param shapes for each shape what it may be by its looks, best first
     * @param fonts  for each shape which font it is of, where a letter has one shape in each; null where that is unknown
     */
    ShapeReader(List<List<Guess>> shapes, int[] fonts) {
        this.shapes = shapes;
        this.fonts = fonts;
        this.letters = new char[shapes.size()];
        for (int i = 0; i < letters.length; i++) {
            words.add(new LinkedHashSet<>());
            letters[i] = shapes.get(i).get(0).letter();
        }
    }

    /** Takes note of a word, given as its shapes. */
    void add(List<Integer> word) {
        for (int shape : new LinkedHashSet<>(word)) {
            if (words.get(shape).size() < WORDS && candidates(shape) > 1) {
                words.get(shape).add(List.copyOf(word));
            }
        }
    }

    private int candidates(int shape) {
        List<Guess> guesses = shapes.get(shape);
        int n = 1;
        while (n < guesses.size() && guesses.get(n).score() >= guesses.get(0).score() - WORSE) {
            n++;
        }
        return n;
    }

    /** The letter of each shape. */
    char[] read() {
        for (int round = 0; round < ROUNDS; round++) {
            boolean changed = false;
            for (int s = 0; s < letters.length; s++) {
                int n = candidates(s);
                if (n > 1) {
                    char best = best(s, n);
                    changed |= best != letters[s];
                    letters[s] = best;
                }
            }
            if (!changed) {
                break;
            }
        }
        return letters;
    }

    private char best(int shape, int n) {
        char best = 0;
        double most = 0;
        char before = letters[shape];
        for (Guess g : shapes.get(shape).subList(0, n)) {
            letters[shape] = g.letter();
            double worth = LOOKS * g.score() + sense(shape) - (fonts != null && isTaken(shape) ? SAME : 0);
            if (best == 0 || worth > most) {
                best = g.letter();
                most = worth;
            }
        }
        letters[shape] = before;
        return best;
    }

    private boolean isTaken(int shape) {
        for (int i = 0; i < letters.length; i++) {
            if (i != shape && fonts[i] == fonts[shape] && letters[i] == letters[shape]) {
                return true;
            }
        }
        return false;
    }

    /** How much sense the words make that a shape stands in, on the average. */
    private double sense(int shape) {
        double sum = 0;
        for (List<Integer> word : words.get(shape)) {
            StringBuilder b = new StringBuilder();
            word.forEach(i -> b.append(letters[i]));
            sum += sense(b);
        }
        return sum / Math.max(1, words.get(shape).size());
    }

    private static double sense(CharSequence word) {
        double sum = 0;
        int from = 0;
        for (int i = 0; i <= word.length(); i++) {
            if (i == word.length() || WordChooser.kind(word.charAt(i)) == 0) {
                sum += from < i ? plain(word.subSequence(from, i).toString()) : 0;
                from = i + 1;
            }
        }
        return sum;
    }

    /** The sense of a word of nothing but letters and digits. */
    private static double plain(String word) {
        double sum = WordChooser.isKnown(word) ? KNOWN : 0;
        for (int i = 1; i < word.length(); i++) {
            int before = WordChooser.kind(word.charAt(i - 1));
            int now = WordChooser.kind(word.charAt(i));
            boolean begun = before == 2 && now == 3 && i == 1;
            sum -= before != now && !begun ? CHANGE : 0;
        }
        return sum;
    }
}
