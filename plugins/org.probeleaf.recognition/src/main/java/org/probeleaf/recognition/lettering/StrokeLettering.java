// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.List;

import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Reads lettering that is drawn with single strokes. A first reading knows only how draughtsmen draw letters; what it
 * reads well teaches it the page's own hand, with which all is read again.
 */
final class StrokeLettering {

    /** Lines that must be read well before a page is taken to have lettering. */
    private static final int LEAST_LINES = 3;
    /** The least share of lines read well, among a page's other texts, that is no chance. */
    private static final double SHARE = 0.05;
    /** Height of a font that has capitals of height 1. */
    private static final double SIZE = 1.4;

    private StrokeLettering() {
    }

    /**
     * Reads what is written on a page.
     *
     * @param strokes the page's strokes
     * @param taken   strokes to leave alone; those that turn out to be letters are marked in it
     * @param words   texts the page carries anyway
     */
    static List<Text> read(List<Stroke> strokes, boolean[] taken, int words) {
        List<Mark> marks = new MarkFinder(strokes, taken, false).marks();
        List<Line> sure = PageReader.lines(strokes, marks, Hand.NONE);
        if (sure.size() < Math.max(LEAST_LINES, SHARE * words)) {
            return List.of();
        }
        Hand hand = Hand.of(sure);
        if (hand.inOrder()) {
            marks = new MarkFinder(strokes, taken, true).marks();
        }
        List<Line> lines = PageReader.lines(strokes, marks, hand);
        for (Line line : lines) {
            for (Cell cell : line.cells()) {
                cell.marks().forEach(m -> m.strokes().forEach(i -> taken[i] = true));
            }
        }
        Overbars bars = new Overbars(strokes, taken);
        List<Text> texts = new ArrayList<>();
        for (Line line : lines) {
            double capital = hand.usual(line.capital());
            texts.add(text(line, Overbars.write(line, bars.over(line)), SIZE * capital, strokes));
        }
        return texts;
    }

    private static Text text(Line line, String words, double size, List<Stroke> strokes) {
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
        box = box.union(Box.of(a.x(), a.y(), b.x(), b.y()));
        Stroke stroke = strokes.get(first.marks().get(0).strokes().get(0));
        return new Text(words, a, d.angle(), size, box, "", stroke.rgb(), true);
    }
}
