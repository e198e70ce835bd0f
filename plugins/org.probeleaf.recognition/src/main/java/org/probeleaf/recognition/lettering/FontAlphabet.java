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
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The letters of printing fonts by their outlines: where the outlines lie and which way they run, in a few shapes for
 * each letter that stand for those of many fonts. It is made from fonts by the measuring program and kept as a text
 * file; see the head of that file.
 */
public final class FontAlphabet {

    /** Letters that are seldom on a sheet and look like others. */
    private static final String SHY = "|!\\`'\"{}~^;";
    /** A shape stands for all that it fits better than this. */
    private static final double STANDS_FOR = 0.93;
    private static final double OFF_PLACE = 0.5;
    private static final double OFF_WIDTH = 0.25;
    private static final double THOUSANDTHS = 1000;
    private static final int INK_STEPS = 255;

    /**
     * A letter of a font.
     *
     * @param letter   which
     * @param outlines closed lines, as corners (x, y) in capital heights from the start of the base line, y upwards
     * @param advance  where the next letter starts, in capital heights
     */
    public record Sample(char letter, List<double[][]> outlines, double advance) {

        public Sample {
            outlines = List.copyOf(outlines);
        }
    }

    private final LetterSet set;

    private FontAlphabet(List<Alphabet.Letter> letters, Bearings bearings) {
        this.set = new LetterSet(List.copyOf(letters), OFF_PLACE, OFF_WIDTH, bearings);
    }

    /** The alphabet that is shipped. */
    public static FontAlphabet standard() {
        List<Alphabet.Letter> letters = new ArrayList<>();
        Bearings bearings = new Bearings();
        try (InputStream in = FontAlphabet.class.getResourceAsStream("fonts.txt");
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (!line.startsWith("//") && !line.isBlank()) {
                    Alphabet.Letter letter = letter(line);
                    letters.add(letter);
                    String[] words = line.substring(2).split(" ", 6);
                    bearings.put(letter.letter(), number(words[3]), number(words[4]));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new FontAlphabet(letters, bearings);
    }

    /**
     * Makes an alphabet of the letters of fonts; of shapes that are much alike the first is kept.
     *
     * @param samples those of the most usual fonts first
     */
    public static FontAlphabet of(List<Sample> samples) {
        Map<Character, List<LetterShape>> shapes = new LinkedHashMap<>();
        for (Sample s : samples) {
            shapes.computeIfAbsent(s.letter(), k -> new ArrayList<>()).add(LetterShape.of(s.outlines()));
        }
        List<Alphabet.Letter> letters = new ArrayList<>();
        shapes.forEach((letter, all) -> typical(all).forEach(s -> letters.add(letter(letter, s))));
        return new FontAlphabet(letters, Bearings.of(samples));
    }

    private static Alphabet.Letter letter(char letter, LetterShape shape) {
        return new Alphabet.Letter(letter, shape, SHY.indexOf(letter) >= 0);
    }

    /** Leaves out each shape that one before it stands for. */
    private static List<LetterShape> typical(List<LetterShape> all) {
        List<LetterShape> kept = new ArrayList<>();
        for (LetterShape s : all) {
            if (kept.stream().noneMatch(k -> fit(s, k) > STANDS_FOR)) {
                kept.add(s);
            }
        }
        return kept;
    }

    private static double fit(LetterShape a, LetterShape b) {
        return a.likeness(b) - LetterMatcher.off(a, b, OFF_PLACE, OFF_WIDTH);
    }

    /** The head of the file that it is kept in. */
    public static List<String> head() {
        return List.of(
                "// The letters of printing fonts by their outlines. Made by: ./probeleaf benchmark lettering --write FILE",
                "// of the fonts that are named in FontFace there; docs/licences lists them. Do not edit.",
                "//",
                "// One shape a line: the letter; its lowest and highest point, its width, and the room before and after it,",
                "// in thousandths of a capital's height; how much of the outline runs level, rising, upright and falling in",
                "// each of seven by seven fields over the letter, as bytes in base 64. A letter has several shapes, for as",
                "// many fonts; of those that are much alike the first is kept.");
    }

    LetterSet set() {
        return set;
    }

    /** How many shapes it has. */
    public int size() {
        return set.letters().size();
    }

    /**
     * The letters that a shape may be, likeliest first, by its looks alone.
     *
     * @param outlines as in a {@link Sample}
     */
    public String likeliest(List<double[][]> outlines) {
        StringBuilder letters = new StringBuilder();
        new LetterMatcher(set, Hand.NONE).guesses(LetterShape.of(outlines), 0, 1)
                .forEach(g -> letters.append(g.letter()));
        return letters.toString();
    }

    /** The lines of the file that it is kept in. */
    public List<String> lines() {
        return set.letters().stream().map(this::line).toList();
    }

    private String line(Alphabet.Letter letter) {
        LetterShape s = letter.shape();
        byte[] ink = new byte[s.ink().length];
        for (int i = 0; i < ink.length; i++) {
            ink[i] = (byte) Math.round(s.ink()[i] * INK_STEPS);
        }
        return letter.letter() + " " + Math.round(s.bottom() * THOUSANDTHS) + " " + Math.round(s.top() * THOUSANDTHS)
                + " " + Math.round(s.width() * THOUSANDTHS) + " "
                + Math.round(set.bearings().before(letter.letter()) * THOUSANDTHS) + " "
                + Math.round(set.bearings().after(letter.letter()) * THOUSANDTHS) + " " + Base64.getEncoder().encodeToString(ink);
    }

    private static Alphabet.Letter letter(String line) {
        String[] words = line.substring(2).split(" ");
        byte[] bytes = Base64.getDecoder().decode(words[5]);
        float[] ink = new float[bytes.length];
        double sum = 0;
        for (int i = 0; i < ink.length; i++) {
            ink[i] = Byte.toUnsignedInt(bytes[i]);
            sum += ink[i] * ink[i];
        }
        for (int i = 0; i < ink.length; i++) {
            ink[i] /= (float) Math.sqrt(sum);
        }
        return letter(line.charAt(0), new LetterShape(ink, number(words[0]), number(words[1]), number(words[2])));
    }

    private static double number(String word) {
        return Integer.parseInt(word) / THOUSANDTHS;
    }
}
