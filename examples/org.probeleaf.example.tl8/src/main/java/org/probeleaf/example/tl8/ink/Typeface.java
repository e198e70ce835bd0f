// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.example.tl8.ink;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/** The one typeface of the sheet: Liberation Sans (SIL Open Font License), which PDFBox carries. Not thread-safe. */
public final class Typeface {
    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final double ASCENT = 0.73;
    private static final double DESCENT = 0.21;

    private final TrueTypeFont metrics;

    private Typeface(TrueTypeFont metrics) {
        this.metrics = metrics;
    }

    /** Reads the typeface. */
    public static Typeface load() {
        try (InputStream in = open()) {
            return new Typeface(new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes())));
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface of the example cannot be read", e);
        }
    }

    /** The typeface as a font of {@code document}; only the letters that are used will be embedded. */
    static PDFont in(PDDocument document) throws IOException {
        try (InputStream in = open()) {
            return PDType0Font.load(document, in, true);
        }
    }

    private static InputStream open() throws IOException {
        InputStream in = PDDocument.class.getResourceAsStream(RESOURCE);
        if (in == null) {
            throw new IOException("PDFBox does not carry " + RESOURCE);
        }
        return in;
    }

    /** The width of {@code text} in points. */
    public double width(String text, double size) {
        try {
            double sum = 0;
            for (int c : text.codePoints().toArray()) {
                sum += metrics.getAdvanceWidth(metrics.getUnicodeCmapLookup().getGlyphId(c));
            }
            return sum / metrics.getUnitsPerEm() * size;
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface of the example cannot be read", e);
        }
    }

    /** Where the base line of {@code words} starts. */
    public Point start(Ink.Words words) {
        double back = words.anchor() * width(words.text(), words.size());
        return words.upward() ? words.at().plus(0, back) : words.at().plus(-back, 0);
    }

    /** The area that {@code words} takes up, from the top of its capitals to the foot of its letters. */
    public Box box(Ink.Words words) {
        Point s = start(words);
        double along = width(words.text(), words.size());
        double up = ASCENT * words.size();
        double down = words.text().matches(".*[gjpqyQ,;()\\[\\]].*") ? DESCENT * words.size() : 0;
        return words.upward() ? Box.of(s.x() - up, s.y() - along, s.x() + down, s.y())
                : Box.of(s.x(), s.y() - up, s.x() + along, s.y() + down);
    }
}
