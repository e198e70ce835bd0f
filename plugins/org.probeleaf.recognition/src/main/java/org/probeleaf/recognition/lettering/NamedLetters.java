// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.LetterForm;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Point;

/** Finds out which letters the signs in a page's texts stand for, whose fonts do not say it: once for each font. */
final class NamedLetters {

    /** What stands for a letter that looks like none known. */
    private static final char UNKNOWN = '\ufffd';
    /** A letter must be this much like a known one. */
    private static final double LEAST = 0.6;
    /** How far from the base line a letter may end that stands on it, in heights of the tallest. */
    private static final double ON_LINE = 0.04;
    /** The lowest letter that may tell how high capitals are, in heights of the tallest. */
    private static final double TALL = 0.4;
    /** Heights nearer to each other than this share are one. */
    private static final double SAME_HEIGHT = 0.03;
    private static final int MOST_HEIGHTS = 8;
    /** Capital height of a font that shows small letters only, in their heights. */
    private static final double CAPITAL_OF_SMALL = 1.38;
    /** What that must fit better to be believed. */
    private static final double RELUCTANCE = 0.04;

    private final List<LetterForm> forms;
    private final Map<Character, Integer> numbers = new HashMap<>();
    private final List<List<Guess>> guesses = new ArrayList<>();
    private final LetterMatcher printed = new LetterMatcher(LetterSet.printed(), Hand.NONE);
    private final LetterMatcher drawn = new LetterMatcher(LetterSet.DRAWN, Hand.NONE);

    private NamedLetters(List<LetterForm> forms) {
        this.forms = forms;
    }

    /** The page's texts, with letters for signs. */
    static List<Text> texts(Drawing drawing) {
        return drawing.forms().isEmpty() ? drawing.texts() : new NamedLetters(drawing.forms()).name(drawing.texts());
    }

    private List<Text> name(List<Text> texts) {
        guess();
        int[] fonts = new int[forms.size()];
        for (int i = 0; i < fonts.length; i++) {
            numbers.put(forms.get(i).sign(), i);
            fonts[i] = forms.get(i).font();
        }
        for (Text text : texts) {
            for (char c : text.text().toCharArray()) {
                // Letters that have a name are shapes that nothing is unsure about.
                numbers.computeIfAbsent(c, k -> {
                    guesses.add(List.of(new Guess(k, 1)));
                    return guesses.size() - 1;
                });
            }
        }
        int[] all = Arrays.copyOf(fonts, guesses.size());
        Arrays.fill(all, fonts.length, all.length, -1);
        ShapeReader reader = new ShapeReader(guesses, all);
        for (Text text : texts) {
            for (String word : text.text().split("\\s+")) {
                reader.add(word.chars().mapToObj(c -> numbers.get((char) c)).toList());
            }
        }
        char[] letters = reader.read();
        return texts.stream().map(t -> named(t, letters)).toList();
    }

    private Text named(Text text, char[] letters) {
        StringBuilder words = new StringBuilder();
        for (char c : text.text().toCharArray()) {
            int number = numbers.get(c);
            boolean known = number >= forms.size() || guesses.get(number).get(0).score() >= LEAST;
            words.append(known ? letters[number] : UNKNOWN);
        }
        return new Text(words.toString(), text.origin(), text.angle(), text.size(), text.box(), text.font(), text.rgb(),
                text.visible());
    }

    /** What each form may be, given the height of capitals that suits its font best. */
    private void guess() {
        Map<Integer, List<Integer>> fonts = new TreeMap<>();
        List<LetterShape> shapes = new ArrayList<>();
        for (int i = 0; i < forms.size(); i++) {
            fonts.computeIfAbsent(forms.get(i).font(), k -> new ArrayList<>()).add(i);
            shapes.add(shape(forms.get(i)));
            guesses.add(List.of());
        }
        for (List<Integer> font : fonts.values()) {
            double most = -Double.MAX_VALUE;
            Map<Integer, List<Guess>> best = Map.of();
            for (double[] capital : capitals(font.stream().map(shapes::get).toList())) {
                Map<Integer, List<Guess>> now = new HashMap<>();
                double sum = -capital[1] * font.size();
                for (int i : font) {
                    now.put(i, (forms.get(i).filled() ? printed : drawn).guesses(shapes.get(i), 0, capital[0]));
                    sum += now.get(i).get(0).score();
                }
                if (sum > most) {
                    most = sum;
                    best = now;
                }
            }
            best.forEach(guesses::set);
        }
    }

    /** Heights that a font's capitals may have, each with how unlikely it is. */
    private static List<double[]> capitals(List<LetterShape> shapes) {
        double tallest = shapes.stream().mapToDouble(LetterShape::height).max().orElse(1);
        double[] tops = shapes.stream().filter(s -> Math.abs(s.bottom()) < ON_LINE * tallest && s.top() > TALL * tallest)
                .mapToDouble(LetterShape::top).sorted().toArray();
        List<double[]> capitals = new ArrayList<>();
        for (int i = tops.length - 1; i >= 0 && capitals.size() < MOST_HEIGHTS; i--) {
            if (capitals.isEmpty() || tops[i] < (1 - SAME_HEIGHT) * capitals.get(capitals.size() - 1)[0]) {
                capitals.add(new double[] {tops[i], 0});
            }
        }
        if (capitals.isEmpty()) {
            capitals.add(new double[] {tallest, 0});
        }
        capitals.add(new double[] {capitals.get(0)[0] * CAPITAL_OF_SMALL, RELUCTANCE});
        return capitals;
    }

    private static LetterShape shape(LetterForm form) {
        List<double[][]> lines = new ArrayList<>();
        for (List<Point> line : form.lines()) {
            int n = line.size();
            double[][] corners = new double[form.filled() ? n + 1 : n][];
            for (int i = 0; i < corners.length; i++) {
                corners[i] = new double[] {line.get(i % n).x(), line.get(i % n).y()};
            }
            lines.add(corners);
        }
        return LetterShape.of(lines);
    }
}
