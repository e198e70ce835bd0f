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

    /** Rows of chips, neighbours joined pin to pin by wires with corners, some through resistors, some by label. */
    private static Drawing sheet(long seed) {
        Random random = new Random(seed);
        Sketch sketch = new Sketch();
        int resistors = 0;
        for (int row = 0; row < 3; row++) {
            double y = 100 + 150 * row;
            for (int column = 0; column < 3; column++) {
                double x = 60 + 240 * column;
                sketch.chip("IC" + (3 * row + column + 1), x, y, 4, 4);
                for (int pin = 0; column < 2 && pin < 4; pin++) {
                    double at = y + 10 * pin;
                    switch (random.nextInt(4)) {
                        case 0 -> sketch.wire(x + 100, at, x + 240, at);
                        case 1 -> sketch.wire(x + 100, at, x + 110 + 5 * pin, at).text("S" + random.nextInt(3) + "X",
                                x + 102, at - 1, 5);
                        case 2 -> {
                            if (pin == 0) {
                                sketch.wire(x + 100, at, x + 150, at).resistor("R" + ++resistors, x + 150, at)
                                        .wire(x + 190, at, x + 240, at);
                            }
                        }
                        default -> {
                            // left open
                        }
                    }
                }
            }
        }
        return sketch.page(1);
    }

    private static void checkSame(Drawing original, Drawing changed) {
        Assertions.assertEquals(Reading.nets(Reading.read(original)), Reading.nets(Reading.read(changed)));
    }

    @Property(tries = 40)
    void recognise_movedSheet_saysTheSame(@ForAll @IntRange(max = 1_000_000) int seed,
            @ForAll @DoubleRange(min = 0, max = 30) double dx, @ForAll @DoubleRange(min = 0, max = 30) double dy) {
        Drawing d = sheet(seed);
        checkSame(d, mapped(d, p -> p.plus(dx, dy), 0, d.width(), d.height()));
    }

    @Property(tries = 40)
    void recognise_sheetTurnedBy90Degrees_saysTheSame(@ForAll @IntRange(max = 1_000_000) int seed) {
        Drawing d = sheet(seed);
        checkSame(d, mapped(d, p -> new Point(d.height() - p.y(), p.x()), 90, d.height(), d.width()));
    }

    @Property(tries = 40)
    void recognise_strokesDrawnBackwards_saysTheSame(@ForAll @IntRange(max = 1_000_000) int seed) {
        Drawing d = sheet(seed);
        checkSame(d, withStrokes(d, d.strokes().stream().map(s -> {
            List<Point> points = new ArrayList<>(s.points());
            Collections.reverse(points);
            return new Stroke(points, s.closed(), s.curved(), s.width(), s.rgb(), s.dashed(), s.round());
        }).toList()));
    }

    @Property(tries = 40)
    void recognise_wiresCutInPieces_saysTheSame(@ForAll @IntRange(max = 1_000_000) int seed) {
        Drawing d = sheet(seed);
        List<Stroke> pieces = new ArrayList<>();
        for (Stroke s : d.strokes()) {
            boolean wire = s.rgb() == 0x007000;
            Point a = s.points().get(0);
            Point b = s.points().get(s.points().size() - 1);
            if (!wire) {
                pieces.add(s);
                continue;
            }
            Point middle = new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
            pieces.add(new Stroke(List.of(a, middle), false, false, s.width(), s.rgb(), false, false));
            pieces.add(new Stroke(List.of(middle, b), false, false, s.width(), s.rgb(), false, false));
        }
        checkSame(d, withStrokes(d, pieces));
    }

    @Property(tries = 40)
    void recognise_contentInAnotherOrder_saysTheSame(@ForAll @IntRange(max = 1_000_000) int seed) {
        Drawing d = sheet(seed);
        List<Stroke> strokes = new ArrayList<>(d.strokes());
        List<Text> texts = new ArrayList<>(d.texts());
        Collections.shuffle(strokes, new Random(seed));
        Collections.shuffle(texts, new Random(seed));
        checkSame(d, new Drawing(1, d.width(), d.height(), d.kind(), strokes, d.fills(), texts, List.of()));
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
