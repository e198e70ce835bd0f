// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/** Writes lines that were read as pieces of text, with the bars over them. */
final class LineTexts {

    /** Height of a font that has capitals of height 1. */
    private static final double SIZE = 1.4;

    private static final double ASCENT = 0.72;
    private static final double DESCENT = 0.2;

    private LineTexts() {
    }

    /**
     * What lines say.
     *
     * @param strokes of which the lines' marks are made
     * @param bars    finds bars over letters
     * @param pen     whether the lines are drawn with a pen rather than printed
     */
    static List<Text> of(List<Line> lines, List<Stroke> strokes, Hand hand, Overbars bars, boolean pen) {
        List<Text> texts = new ArrayList<>();
        for (Line line : lines) {
            int rgb = strokes.get(line.cells().get(0).marks().get(0).strokes().get(0)).rgb();
            String words = Overbars.write(line, bars.over(line, rgb));
            double size = SIZE * hand.usual(line.capital());
            Point from = line.direction().at(line.cells().get(0).from(), line.base());
            Box box = pen ? inkBox(line) : fontBox(line, size);
            texts.add(new Text(words, from, line.direction().angle(), size, box, "", rgb, true));
        }
        return texts;
    }

    /** Round the letters as a font's ascent and descent have it, as for text that is text. */
    private static Box fontBox(Line line, double size) {
        double from = line.cells().get(0).from();
        double to = line.cells().get(line.cells().size() - 1).to();
        Point a = line.direction().at(from, line.base() - DESCENT * size);
        Point b = line.direction().at(to, line.base() + ASCENT * size);
        return Box.of(a.x(), a.y(), b.x(), b.y());
    }

    private static Box inkBox(Line line) {
        Direction d = line.direction();
        Cell first = line.cells().get(0);
        Box box = null;
        for (Cell cell : line.cells()) {
            for (Mark mark : cell.marks()) {
                box = box == null ? mark.box() : box.union(mark.box());
            }
        }
        Point a = d.at(first.from(), line.base());
        Point b = d.at(first.from(), line.base() + line.capital());
        return box.union(Box.of(a.x(), a.y(), b.x(), b.y()));
    }
}
