// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Fill;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.SheetKind;

/** Prints words as filled outlines, as a program does that turns text into paths; in Liberation Sans. */
final class Printer {

    private static final TrueTypeFont FONT = font();

    private final List<Fill> fills = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private final boolean rims;

    /** @param rims whether each outline is stroked too, as where letters are made bold */
    Printer(boolean rims) {
        this.rims = rims;
    }

    private static TrueTypeFont font() {
        try (InputStream in = PDDocument.class
                .getResourceAsStream("/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf")) {
            return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Prints a word whose base line begins at a point. */
    Printer print(String word, double x, double y, double size, Direction direction) {
        try {
            double scale = size / FONT.getUnitsPerEm();
            AffineTransform at = AffineTransform.getTranslateInstance(x, y);
            at.rotate(Math.toRadians(direction.angle()));
            at.scale(scale, -scale);
            for (char c : word.toCharArray()) {
                int glyph = FONT.getUnicodeCmapLookup().getGlyphId(c);
                if (c != ' ') {
                    add(at.createTransformedShape(FONT.getGlyph().getGlyph(glyph).getPath()));
                }
                at.translate(FONT.getAdvanceWidth(glyph), 0);
            }
            return this;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private void add(Shape letter) {
        List<Point> open = new ArrayList<>();
        double[] p = new double[6];
        boolean curved = false;
        for (PathIterator i = letter.getPathIterator(null); !i.isDone(); i.next()) {
            curved |= i.currentSegment(p) == PathIterator.SEG_QUADTO;
        }
        for (PathIterator i = new FlatteningPathIterator(letter.getPathIterator(null), 0.005, 4); !i.isDone(); i.next()) {
            if (i.currentSegment(p) == PathIterator.SEG_CLOSE) {
                fills.add(new Fill(open, curved, 0, Box.around(open)));
                if (rims) {
                    strokes.add(new Stroke(open, true, curved, 0.1, 0, false, false));
                }
                open.clear();
            } else {
                open.add(new Point(p[0], p[1]));
            }
        }
    }

    /** Fills an outline that is no letter. */
    Printer fill(Point... corners) {
        List<Point> points = List.of(corners);
        fills.add(new Fill(points, false, 0, Box.around(points)));
        return this;
    }

    /** Draws a line. */
    Printer line(Point... points) {
        strokes.add(new Stroke(List.of(points), false, false, 0.5, 0, false, false));
        return this;
    }

    Drawing page() {
        return new Drawing(1, 800, 600, SheetKind.VECTOR, strokes, fills, List.of(), List.of());
    }
}
