// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Letters as a draughtsman draws them with single lines; the file says how they are written down. */
final class Alphabet {

    /** Capital height in the file's units. */
    private static final double CAPITAL = 8;
    private static final int ARC_STEPS_PER_TURN = 32;

    /**
     * One way to draw a letter.
     *
     * @param letter the letter
     * @param shape  what it looks like
     * @param shy    whether the shape is more often another letter
     */
    record Letter(char letter, LetterShape shape, boolean shy) {
    }

    private static final List<Letter> LETTERS = load();

    private Alphabet() {
    }

    /** All letters, in all their shapes. */
    static List<Letter> letters() {
        return LETTERS;
    }

    private static List<Letter> load() {
        List<Letter> letters = new ArrayList<>();
        try (InputStream in = Alphabet.class.getResourceAsStream("alphabet.txt");
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (!line.startsWith("//") && !line.isBlank()) {
                    letters.add(letter(line));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(letters);
    }

    private static Letter letter(String line) {
        int space = line.indexOf(' ');
        return new Letter(line.charAt(0), LetterShape.of(lines(line.substring(space + 1))), space == 2);
    }

    /** Lines in capital heights from how the file writes them. */
    static List<double[][]> lines(String written) {
        List<double[][]> lines = new ArrayList<>();
        List<double[]> line = new ArrayList<>();
        for (String word : written.trim().split(" +")) {
            if (word.equals("|")) {
                lines.add(line.toArray(double[][]::new));
                line.clear();
            } else if (word.startsWith("@")) {
                addArc(numbers(word.substring(1)), line);
            } else {
                double[] xy = numbers(word);
                line.add(new double[] {xy[0] / CAPITAL, xy[1] / CAPITAL});
            }
        }
        lines.add(line.toArray(double[][]::new));
        return lines;
    }

    private static void addArc(double[] arc, List<double[]> line) {
        double turn = arc[5] - arc[4];
        int steps = Math.max(2, (int) Math.ceil(Math.abs(turn) / 360 * ARC_STEPS_PER_TURN));
        for (int i = 0; i <= steps; i++) {
            double a = Math.toRadians(arc[4] + turn * i / steps);
            line.add(new double[] {(arc[0] + arc[2] * Math.cos(a)) / CAPITAL,
                (arc[1] + arc[3] * Math.sin(a)) / CAPITAL});
        }
    }

    private static double[] numbers(String word) {
        String[] parts = word.split(",");
        double[] numbers = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            numbers[i] = Double.parseDouble(parts[i]);
        }
        return numbers;
    }
}
