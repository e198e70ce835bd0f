// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Chooses among the letters that a word's shapes may be: an O among digits is a zero, a zero among letters an O. The
 * words of a sheet are designators, values, pin numbers and signal names, and plain words in notes.
 */
final class WordChooser {

    /** Words kept while a word grows. */
    private static final int KEPT = 24;
    /** A letter that fits less well than the best by more than this is not tried. */
    private static final double WORSE = 0.14;
    /** The cost of going from digits to letters, or from capitals to small letters. */
    private static final double CHANGE = 0.03;
    /** What a word of a known kind is worth. */
    private static final double KNOWN = 0.05;

    private static final Pattern DESIGNATOR = Pattern.compile(
            "(R|C|L|D|Q|U|IC|J|JP|K|X|Y|T|TP|P|RN|RR|RP|FB|F|SW|S|BT|LED|CN|CON|VR|RV|ZD|TR|CR|H|M|DS)[1-9]\\d{0,3}[A-H]?");
    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?");
    private static final Pattern VALUE = Pattern.compile(
            "\\d+([.,]\\d+)?([pnuµmkKMR]|nF|uF|pF|µF|uH|mH|kHz|MHz|mA|mV|[VAWΩ%])\\d*[FH]?");
    private static final Pattern MEMBER = Pattern.compile("[A-Z]{1,4}\\d{1,2}");

    private WordChooser() {
    }

    /** A word so far: the word before its last letter, which is null at the start. */
    private record Word(Word before, Guess last, double score) {

        List<Guess> letters() {
            LinkedList<Guess> letters = new LinkedList<>();
            for (Word w = this; w.last != null; w = w.before) {
                letters.addFirst(w.last);
            }
            return new ArrayList<>(letters);
        }
    }

    /**
     * The letters of one word.
     *
     * @param guesses what each letter may be, best first
     * @param weight  how much the kinds of words count, 1 where letters are known only in general
     */
    static List<Guess> choose(List<List<Guess>> guesses, double weight) {
        List<Word> words = List.of(new Word(null, null, 0));
        for (List<Guess> place : guesses) {
            List<Word> longer = new ArrayList<>();
            for (Word word : words) {
                for (Guess g : place) {
                    if (g.score() < place.get(0).score() - WORSE) {
                        break;
                    }
                    longer.add(grown(word, g, weight));
                }
            }
            longer.sort(Comparator.comparingDouble(Word::score).reversed());
            words = longer.subList(0, Math.min(KEPT, longer.size()));
        }
        Word best = null;
        double most = 0;
        for (Word word : words) {
            double score = word.score() + weight * worth(word.letters());
            if (best == null || score > most) {
                best = word;
                most = score;
            }
        }
        return best.letters();
    }

    private static Word grown(Word word, Guess g, double weight) {
        double cost = 0;
        if (word.last() != null) {
            int before = kind(word.last().letter());
            int now = kind(g.letter());
            boolean begun = before == 2 && now == 3 && word.before().last() == null;
            cost = before != now && before > 0 && now > 0 && !begun ? weight * CHANGE : 0;
        }
        return new Word(word, g, word.score() + g.score() - cost);
    }

    private static double worth(List<Guess> letters) {
        StringBuilder b = new StringBuilder();
        letters.forEach(g -> b.append(g.letter()));
        return isKnown(b.toString()) ? KNOWN : 0;
    }

    /** Whether a word is a designator, a number, a value, or a signal's name with a number. */
    static boolean isKnown(String s) {
        return DESIGNATOR.matcher(s).matches() || NUMBER.matcher(s).matches() || VALUE.matcher(s).matches()
                || MEMBER.matcher(s).matches();
    }

    static boolean isDesignator(String s) {
        return DESIGNATOR.matcher(s).matches();
    }

    /** 1 for digits, 2 for capitals, 3 for small letters, 0 for others. */
    static int kind(char c) {
        return Character.isDigit(c) ? 1 : Character.isUpperCase(c) ? 2 : Character.isLowerCase(c) ? 3 : 0;
    }
}
