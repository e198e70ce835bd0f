// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts lines of print that stand end to end: a part's name and its value, several names or values in a row, the same
 * word twice. Dots of the drawing at a line's ends are no part of it.
 */
final class LineParts {

    /** A word that is said twice without a gap has at least so many letters. */
    private static final int TWICE = 3;

    private LineParts() {
    }

    /** The same lines, some of them parted. */
    static List<Line> of(List<Line> lines) {
        List<Line> parts = new ArrayList<>();
        for (Line line : lines) {
            part(line, parts);
        }
        return parts;
    }

    private static void part(Line line, List<Line> parts) {
        String[] words = line.text().split(" ");
        int first = 0;
        int end = words.length;
        while (end - first > 1 && isDot(words[end - 1])) {
            end--;
        }
        while (end - first > 1 && isDot(words[first])) {
            first++;
        }
        int from = first;
        int at = 0;
        for (int i = 0; i < first; i++) {
            at += words[i].length();
        }
        for (int i = first; i < end; i++) {
            if (i + 1 == end || partsHere(words[i], words[i + 1])) {
                at = add(line, words, from, i + 1, at, parts);
                from = i + 1;
            }
        }
    }

    /** Adds words of a line; returns how many of its letters are done then. */
    private static int add(Line line, String[] words, int from, int end, int at, List<Line> parts) {
        String text = String.join(" ", List.of(words).subList(from, end));
        int n = text.replace(" ", "").length();
        int half = n / 2;
        if (end - from == 1 && n == 2 * half && half >= TWICE && text.substring(0, half).equals(text.substring(half))) {
            parts.add(piece(line, at, half, text.substring(half)));
            parts.add(piece(line, at + half, half, text.substring(half)));
        } else {
            parts.add(piece(line, at, n, text));
        }
        return at + n;
    }

    private static Line piece(Line line, int at, int n, String text) {
        return new Line(line.direction(), line.cells().subList(at, at + n), line.letters().subList(at, at + n), text,
                line.base(), line.capital());
    }

    private static boolean partsHere(String before, String after) {
        return before.equals(after) && before.length() >= TWICE
                || WordChooser.isKnown(before) && WordChooser.isKnown(after)
                        && (WordChooser.isDesignator(before) || WordChooser.isDesignator(after)
                                || isValue(before) && isValue(after) && unit(before).equals(unit(after)));
    }

    private static boolean isValue(String word) {
        return Character.isDigit(word.charAt(0)) && !unit(word).isEmpty();
    }

    private static String unit(String word) {
        return word.replaceAll("[^A-Za-zµΩ%]", "");
    }

    private static boolean isDot(String word) {
        return word.chars().noneMatch(c -> Character.isLetterOrDigit(c) || c == '+' || c == '-' || c == '=');
    }
}
