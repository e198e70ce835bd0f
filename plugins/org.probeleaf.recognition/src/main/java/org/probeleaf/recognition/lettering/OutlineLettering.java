// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.probeleaf.drawing.primitive.Fill;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Point;

/**
 * Reads lettering that was printed with a font and then turned into filled outlines. As with drawn lettering, what is
 * read well at first teaches the page's own hand, with which all is read again.
 */
final class OutlineLettering {

    /** Lines that must be read well before a page is taken to have lettering. */
    private static final int LEAST_LINES = 3;
    /** Letters in outlines that a page with text of its own may have as its frame's or its maker's sign. */
    private static final double SHARE = 0.05;

    /** Letters written against the usual way in lines that are beyond doubt, from which on such are looked for. */
    private static final int UPSIDE_DOWN = 6;

    private OutlineLettering() {
    }

    /**
     * Reads what is written on a page.
     *
     * @param fills   the page's filled shapes
     * @param letters of the fills; those that turn out to be letters are marked in it
     * @param strokes the page's strokes, among which are bars over letters
     * @param taken   strokes to leave alone; those that turn out to be bars are marked in it
     * @param words   texts the page carries anyway
     */
    static List<Text> read(List<Fill> fills, boolean[] letters, List<Stroke> strokes, boolean[] taken, int words) {
        OutlineMarks found = new OutlineMarks(fills);
        long curved = found.marks().stream().filter(m -> !m.bare()).count();
        if (curved < LEAST_LINES * PageReader.SURE_LETTERS) {
            return List.of();
        }
        List<Stroke> outlines = found.outlines();
        List<Line> sure = PageReader.lines(outlines, found.marks(), LetterSet.printed(),
                List.of(Direction.RIGHT, Direction.UP, Direction.DOWN, Direction.LEFT), Hand.NONE);
        if (sure.size() < Math.max(LEAST_LINES, SHARE * words)) {
            return List.of();
        }
        Hand hand = Hand.of(sure, LetterSet.printed());
        List<Line> lines = PageReader.lines(outlines, found.marks(), LetterSet.printed(), ways(sure), hand);
        lines = LineParts.of(PageShapes.read(lines, LetterSet.printed()));
        for (Line line : lines) {
            for (Cell cell : line.cells()) {
                cell.marks().forEach(m -> m.strokes().forEach(i -> letters[found.fill(i)] = true));
            }
        }
        takeRims(fills, letters, strokes, taken);
        return LineTexts.of(lines, outlines, hand, new Overbars(strokes, taken, false), false);
    }

    /** Letters may be stroked too. */
    private static void takeRims(List<Fill> fills, boolean[] letters, List<Stroke> strokes, boolean[] taken) {
        Map<Point, List<Point>> outlines = new HashMap<>();
        for (int i = 0; i < letters.length; i++) {
            if (letters[i]) {
                outlines.put(fills.get(i).points().get(0), fills.get(i).points());
            }
        }
        for (int i = 0; i < taken.length; i++) {
            List<Point> points = strokes.get(i).points();
            taken[i] |= points.equals(outlines.get(points.get(0)));
        }
    }

    /** The ways of writing, the page's usual one first: a page may lie on its side or upside down. */
    private static List<Direction> ways(List<Line> sure) {
        Map<Direction, Integer> count = new EnumMap<>(Direction.class);
        sure.forEach(l -> count.merge(l.direction(), l.cells().size(), Integer::sum));
        List<Direction> ways = new ArrayList<>(List.of(Direction.values()));
        ways.sort((a, b) -> count.getOrDefault(b, 0) - count.getOrDefault(a, 0));
        // Few sheets have writing upside down, but all have some that looks so.
        Direction against = ways.get(0).opposite();
        if (count.getOrDefault(against, 0) < UPSIDE_DOWN) {
            ways.remove(against);
        }
        return ways;
    }
}
