// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.benchmark.lettering;

import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.probeleaf.recognition.lettering.FontAlphabet;

/** The letters of a font that stand on sheets, as outlines. */
final class FontLetters {

    /** What is written on sheets: printable ASCII and a few signs of units. */
    private static final String LETTERS;
    /** How near straight pieces come to a curve, in units of the font, and into how many it is cut at most. */
    private static final double FLATNESS = 2;
    private static final int DEPTH = 6;

    static {
        StringBuilder letters = new StringBuilder();
        for (char c = '!'; c <= '~'; c++) {
            letters.append(c);
        }
        LETTERS = letters.append("\u00b5\u03a9\u00b0\u00b1").toString();
    }

    private FontLetters() {
    }

    /** The letters of a font, measured in heights of its capital H. */
    static List<FontAlphabet.Sample> of(FontFace face) throws IOException {
        try (TrueTypeFont font = face.open()) {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            double capital = font.getGlyph().getGlyph(glyphs.getGlyphId('H')).getBoundingBox().getUpperRightY();
            List<FontAlphabet.Sample> samples = new ArrayList<>();
            for (char letter : LETTERS.toCharArray()) {
                int id = glyphs.getGlyphId(letter);
                GlyphData glyph = id == 0 ? null : font.getGlyph().getGlyph(id);
                List<double[][]> outlines = glyph == null ? List.of() : outlines(glyph.getPath(), 1 / capital);
                if (!outlines.isEmpty()) {
                    samples.add(new FontAlphabet.Sample(letter, outlines, font.getAdvanceWidth(id) / capital));
                }
            }
            return samples;
        }
    }

    private static List<double[][]> outlines(GeneralPath path, double scale) {
        List<double[][]> outlines = new ArrayList<>();
        List<double[]> open = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator i = new FlatteningPathIterator(path.getPathIterator(null), FLATNESS, DEPTH); !i.isDone();
                i.next()) {
            if (i.currentSegment(at) == PathIterator.SEG_CLOSE) {
                open.add(open.get(0));
                outlines.add(open.toArray(double[][]::new));
                open.clear();
            } else {
                open.add(new double[] {at[0] * scale, at[1] * scale});
            }
        }
        return outlines;
    }
}
