// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Assertions;
import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Fill;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/** What a sheet says does not depend on where on the paper it is drawn, in which order, or in how many strokes. */
class SheetSymmetryTest {

    private static void checkSame(WiredSheet sheet, Drawing changed) {
        Assertions.assertEquals(sheet.nets(), Reading.nets(Reading.read(changed)));
    }

    @Property(tries = 40)
    void recognise_sheetAsDrawn_saysWhatWasWired(@ForAll @IntRange(max = 1_000_000) int seed) {
        WiredSheet sheet = WiredSheet.of(seed);
        checkSame(sheet, sheet.page());
    }

    @Property(tries = 40)
    void recognise_movedSheet_saysTheSame(@ForAll @IntRange(max = 1_000_000) int seed,
            @ForAll @DoubleRange(min = 0, max = 30) double dx, @ForAll @DoubleRange(min = 0, max = 30) double dy) {
        WiredSheet sheet = WiredSheet.of(seed);
        Drawing d = sheet.page();
        checkSame(sheet, mapped(d, p -> p.plus(dx, dy), 0, d.width(), d.height()));
    }

    @Property(tries = 40)
    void recognise_sheetTurnedByRightAngles_saysTheSame(@ForAll @IntRange(max = 1_000_000) int seed) {
        WiredSheet sheet = WiredSheet.of(seed);
        Drawing d = sheet.page();
        for (int turns = 1; turns < 4; turns++) {
            Drawing before = d;
            d = mapped(d, p -> new Point(before.height() - p.y(), p.x()), 90, d.height(), d.width());
            checkSame(sheet, d);
        }
    }

    @Property(tries = 40)
    void recognise_strokesDrawnBackwards_saysTheSame(@ForAll @IntRange(max = 1_000_000) int seed) {
        WiredSheet sheet = WiredSheet.of(seed);
        Drawing d = sheet.page();
        checkSame(sheet, withStrokes(d, d.strokes().stream().map(s -> {
            List<Point> points = new ArrayList<>(s.points());
            Collections.reverse(points);
            return new Stroke(points, s.closed(), s.curved(), s.width(), s.rgb(), s.dashed(), s.round());
        }).toList()));
    }

    @Property(tries = 40)
    void recognise_wiresCutInPieces_saysTheSame(@ForAll @IntRange(max = 1_000_000) int seed) {
        WiredSheet sheet = WiredSheet.of(seed);
        Drawing d = sheet.page();
        Random random = new Random(seed);
        List<Stroke> pieces = new ArrayList<>();
        for (Stroke s : d.strokes()) {
            if (s.rgb() != Sketch.WIRE || s.points().size() != 2) {
                pieces.add(s);
                continue;
            }
            Point from = s.points().get(0);
            for (int left = 1 + random.nextInt(4); left > 0; left--) {
                Point to = between(from, s.points().get(1), left == 1 ? 1 : random.nextDouble());
                pieces.add(new Stroke(List.of(from, to), false, false, s.width(), s.rgb(), false, false));
                from = to;
            }
        }
        checkSame(sheet, withStrokes(d, pieces));
    }

    @Property(tries = 40)
    void recognise_contentInAnotherOrder_saysTheSame(@ForAll @IntRange(max = 1_000_000) int seed) {
        WiredSheet sheet = WiredSheet.of(seed);
        Drawing d = sheet.page();
        List<Stroke> strokes = new ArrayList<>(d.strokes());
        List<Text> texts = new ArrayList<>(d.texts());
        Collections.shuffle(strokes, new Random(seed));
        Collections.shuffle(texts, new Random(seed));
        checkSame(sheet, new Drawing(1, d.width(), d.height(), d.kind(), strokes, d.fills(), texts, List.of()));
    }

    private static Point between(Point a, Point b, double t) {
        return new Point(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
    }

    private static Drawing withStrokes(Drawing d, List<Stroke> strokes) {
        return new Drawing(1, d.width(), d.height(), d.kind(), strokes, d.fills(), d.texts(), List.of());
    }

    private static Drawing mapped(Drawing d, UnaryOperator<Point> map, double turn, double width, double height) {
        return new Drawing(1, width, height, d.kind(),
                d.strokes().stream().map(s -> new Stroke(s.points().stream().map(map).toList(), s.closed(), s.curved(),
                        s.width(), s.rgb(), s.dashed(), s.round())).toList(),
                d.fills().stream().map(f -> new Fill(f.points().stream().map(map).toList(), f.curved(), f.rgb(),
                        box(f.box(), map))).toList(),
                d.texts().stream().map(t -> new Text(t.text(), map.apply(t.origin()), (t.angle() + turn) % 360,
                        t.size(), box(t.box(), map), t.font(), t.rgb(), t.visible())).toList(),
                List.of());
    }

    private static Box box(Box b, UnaryOperator<Point> map) {
        Point p = map.apply(new Point(b.x0(), b.y0()));
        Point q = map.apply(new Point(b.x1(), b.y1()));
        return Box.of(p.x(), p.y(), q.x(), q.y());
    }
}
