// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.paint;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The letters of marks, of which the document gets the ones it uses: Liberation Sans, which PDFBox carries (SIL Open
 * Font License 1.1). It has Greek, Cyrillic and the signs of units; a letter that it lacks shows as a question mark,
 * while the annotation's own text keeps it.
 */
public final class TypeFace {

    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final PDFont font;
    private final Map<Integer, Double> widths = new HashMap<>();

    private TypeFace(PDFont font) {
        this.font = font;
    }

    /** Gives a document the letters. */
    public static TypeFace in(PDDocument document) throws IOException {
        try (InputStream in = PDFont.class.getResourceAsStream(RESOURCE)) {
            return new TypeFace(PDType0Font.load(document, in, true));
        }
    }

    PDFont font() {
        return font;
    }

    /** Sets the letters in a text that has begun. */
    public void use(PDPageContentStream out, double size) throws IOException {
        out.setFont(font, (float) size);
    }

    /** How far up capital letters reach, as a share of the size. */
    public static double capHeight() {
        return 0.72;
    }

    /** The text with what cannot be shown replaced. */
    public String clean(String text) {
        StringBuilder b = new StringBuilder();
        text.codePoints().map(c -> c == '\t' || c == '\u00a0' ? ' ' : c).forEach(c -> {
            if (c >= ' ') {
                b.append(width(c) >= 0 ? Character.toString(c) : "?");
            }
        });
        return b.toString();
    }

    /** The width of a cleaned text, in points at the given size. */
    public double width(String text, double size) {
        return text.codePoints().mapToDouble(c -> Math.max(0, width(c))).sum() * size;
    }

    /** The width of a letter at size 1, or below 0 where it is lacking. */
    private double width(int codePoint) {
        return widths.computeIfAbsent(codePoint, c -> {
            try {
                return font.getStringWidth(Character.toString(c)) / 1000.0;
            } catch (IOException | IllegalArgumentException e) {
                return -1.0;
            }
        });
    }

    /**
     * Breaks a text into lines at spaces, within a word only where it is wider than a line.
     *
     * @param text  with its own line ends
     * @param most  lines at the most; the last one then ends in an ellipsis
     * @return cleaned lines, none for a blank text
     */
    public List<String> wrap(String text, double width, double size, int most) {
        List<String> lines = new ArrayList<>();
        text.strip().lines().forEach(line -> wrapLine(clean(line).strip(), width, size, lines));
        if (lines.size() <= most) {
            return lines;
        }
        List<String> kept = new ArrayList<>(lines.subList(0, most));
        kept.set(most - 1, cut(kept.get(most - 1) + " \u2026", width, size));
        return kept;
    }

    private void wrapLine(String line, double width, double size, List<String> lines) {
        String current = "";
        for (String word : line.split(" +")) {
            String longer = current.isEmpty() ? word : current + " " + word;
            if (width(longer, size) <= width) {
                current = longer;
                continue;
            }
            if (!current.isEmpty()) {
                lines.add(current);
            }
            current = word;
            while (width(current, size) > width && current.length() > 1) {
                int n = fitting(current, width, size);
                lines.add(current.substring(0, n));
                current = current.substring(n);
            }
        }
        if (!current.isEmpty()) {
            lines.add(current);
        }
    }

    private int fitting(String word, double width, double size) {
        int n = word.length();
        while (n > 1 && width(word.substring(0, n), size) > width) {
            n = word.offsetByCodePoints(n, -1);
        }
        return Math.max(1, n);
    }

    /** The text cut short with an ellipsis where it is wider than the width. */
    public String cut(String text, double width, double size) {
        String t = text;
        while (width(t, size) > width && t.length() > 2) {
            String body = t.endsWith("\u2026") ? t.substring(0, t.length() - 1).stripTrailing() : t;
            t = body.substring(0, body.offsetByCodePoints(body.length(), -1)).stripTrailing() + "\u2026";
        }
        return t;
    }
}
