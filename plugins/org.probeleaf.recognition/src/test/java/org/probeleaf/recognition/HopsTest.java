// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Wires that hop over others in an arc, as older drawings have it (IEC 61082-1 shows crossings without). */
class HopsTest {

    private static final int PINS = 6;

    /**
     * Two chips whose facing pins are joined in a random order: each wire leaves level, runs up or down in a column of
     * its own, and goes on level; where it crosses another level wire it hops.
     */
    private static void check(long seed, boolean oneStyle, boolean oneStroke) {
        Random random = new Random(seed);
        Sketch sketch = new Sketch().chip("IC1", 100, 200, PINS, PINS).chip("IC2", 500, 205, PINS, PINS);
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < PINS; i++) {
            order.add(random.nextInt(order.size() + 1), i);
        }
        List<String> expected = new ArrayList<>();
        double radius = 1 + random.nextDouble();
        for (int i = 0; i < PINS; i++) {
            double y = 200 + 10 * i;
            double to = 205 + 10 * order.get(i);
            double column = 260 + 24 * i;
            HopPen pen = new HopPen(sketch, radius, oneStyle, oneStroke, 200, y);
            // Level wires of others that this column crosses: those that have not turned yet, and those that have.
            pen.level(column);
            List<Double> crossed = new ArrayList<>();
            for (int j = 0; j < PINS; j++) {
                double at = j < i ? 205 + 10 * order.get(j) : 200 + 10 * j;
                boolean between = at > Math.min(y, to) && at < Math.max(y, to);
                if (j != i && between) {
                    crossed.add(at);
                }
            }
            crossed.sort(y < to ? null : (a, b) -> Double.compare(b, a));
            crossed.forEach(pen::hop);
            pen.upright(to);
            pen.level(500);
            pen.end();
            expected.add("-: IC1." + (PINS + 1 + i) + " IC2." + (order.get(i) + 1));
        }
        expected.sort(null);
        assertEquals(String.join("; ", expected), Reading.nets(Reading.read(sketch.page(1))));
    }

    @Property(tries = 60)
    void recognise_wiresWithHopsInPieces_stayApart(@ForAll @IntRange(max = 1_000_000) int seed) {
        check(seed, false, false);
    }

    @Property(tries = 60)
    void recognise_wiresWithHopsInOneStroke_stayApart(@ForAll @IntRange(max = 1_000_000) int seed) {
        check(seed, false, true);
    }

    @Property(tries = 60)
    void recognise_wiresWithHopsInTheStyleOfSymbols_stayApart(@ForAll @IntRange(max = 1_000_000) int seed) {
        check(seed, true, false);
    }
}
