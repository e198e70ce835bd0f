// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.List;

import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;

/**
 * Reads lettering that is drawn with single strokes. A first reading knows only how draughtsmen draw letters; what it
 * reads well teaches it the page's own hand, with which all is read again.
 */
final class StrokeLettering {

    /** Lines that must be read well before a page is taken to have lettering. */
    private static final int LEAST_LINES = 3;
    /** The least share of lines read well, among a page's other texts, that is no chance. */
    private static final double SHARE = 0.05;
    private static final List<Direction> WAYS = List.of(Direction.RIGHT, Direction.UP, Direction.DOWN);

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
        List<Line> sure = PageReader.lines(strokes, marks, LetterSet.DRAWN, WAYS, Hand.NONE);
        if (sure.size() < Math.max(LEAST_LINES, SHARE * words)) {
            return List.of();
        }
        Hand hand = Hand.of(sure, LetterSet.DRAWN);
        if (hand.inOrder()) {
            marks = new MarkFinder(strokes, taken, true).marks();
        }
        List<Line> lines = PageReader.lines(strokes, marks, LetterSet.DRAWN, WAYS, hand);
        for (Line line : lines) {
            for (Cell cell : line.cells()) {
                cell.marks().forEach(m -> m.strokes().forEach(i -> taken[i] = true));
            }
        }
        return LineTexts.of(lines, strokes, hand, new Overbars(strokes, taken, true), true);
    }
}
