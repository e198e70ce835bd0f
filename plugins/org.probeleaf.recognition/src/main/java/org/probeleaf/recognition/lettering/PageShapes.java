// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** The different shapes that a page's printed letters have, each once, and the page's lines read by them. */
final class PageShapes {

    /** How far two places of the same letter may lie apart, in capital heights. */
    private static final double SAME_PLACE = 0.05;

    private record Shape(int number, LetterShape placed) {
    }

    private final LetterMatcher matcher;
    private final Map<Object, List<Shape>> shapes = new IdentityHashMap<>();
    private final List<List<Guess>> guesses = new ArrayList<>();

    private PageShapes(LetterSet set) {
        this.matcher = new LetterMatcher(set, Hand.NONE);
    }

    /** The same lines with each shape read as the same letter everywhere. */
    static List<Line> read(List<Line> lines, LetterSet set) {
        PageShapes page = new PageShapes(set);
        List<List<Integer>> numbers = new ArrayList<>();
        for (Line line : lines) {
            numbers.add(line.cells().stream().map(c -> page.number(c.shape(), line)).toList());
        }
        ShapeReader reader = new ShapeReader(page.guesses, null);
        for (int i = 0; i < lines.size(); i++) {
            int at = 0;
            for (String word : lines.get(i).text().split(" ")) {
                reader.add(numbers.get(i).subList(at, at + word.length()));
                at += word.length();
            }
        }
        char[] letters = reader.read();
        List<Line> read = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            read.add(read(lines.get(i), numbers.get(i), letters));
        }
        return read;
    }

    private static Line read(Line line, List<Integer> numbers, char[] letters) {
        StringBuilder text = new StringBuilder();
        List<Guess> guesses = new ArrayList<>();
        for (char c : line.text().toCharArray()) {
            if (c == ' ') {
                text.append(c);
            } else {
                char letter = letters[numbers.get(guesses.size())];
                text.append(letter);
                guesses.add(new Guess(letter, line.letters().get(guesses.size()).score()));
            }
        }
        return new Line(line.direction(), line.cells(), guesses, text.toString(), line.base(), line.capital());
    }

    private int number(LetterShape shape, Line line) {
        LetterShape placed = shape.placed(line.base(), line.capital());
        List<Shape> alike = shapes.computeIfAbsent(matcher.kind(shape), k -> new ArrayList<>());
        for (Shape s : alike) {
            if (Math.abs(s.placed.top() - placed.top()) < SAME_PLACE
                    && Math.abs(s.placed.bottom() - placed.bottom()) < SAME_PLACE
                    && Math.abs(s.placed.width() - placed.width()) < SAME_PLACE) {
                return s.number;
            }
        }
        Shape found = new Shape(guesses.size(), placed);
        alike.add(found);
        guesses.add(matcher.guesses(placed, 0, 1));
        return found.number;
    }
}
