// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.name;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.symbol.Body;
import org.probeleaf.schematic.geometry.Box;

/** Finds the value printed beside a part: the text next to its designator, in line with it, close to the symbol. */
final class ValueFinder {

    private final PageInk page;
    private final List<Body> bodies;
    private final TextPool pool;

    ValueFinder(PageInk page, List<Body> bodies, TextPool pool) {
        this.page = page;
        this.bodies = bodies;
        this.pool = pool;
    }

    /**
     * @param designators the designator text of each named body
     * @return the value of each body that has one, by id of the body
     */
    Map<Integer, String> find(Map<Integer, Text> designators) {
        Map<Integer, String> values = new HashMap<>();
        Set<Text> used = new HashSet<>();
        designators.forEach((body, ref) -> {
            Text best = null;
            double least = 2.2 * page.pitch();
            for (Text t : pool.freeIn(bodies.get(body).box().union(ref.box()).grow(2.5 * page.pitch()))) {
                double cost = cost(t, ref, bodies.get(body));
                DesignatorGrammar.Designator other = DesignatorGrammar.parse(t.text());
                boolean mayBe = other == null || !other.strong() || cost < page.pitch();
                if (!used.contains(t) && mayBe && cost < least) {
                    best = t;
                    least = cost;
                }
            }
            if (best != null) {
                used.add(best);
                pool.take(best);
                values.put(body, best.text());
            }
        });
        return values;
    }

    private double cost(Text t, Text ref, Body body) {
        boolean flat = TagFinder.isFlat(t);
        if (flat != TagFinder.isFlat(ref)) {
            return Double.MAX_VALUE;
        }
        Box a = t.box();
        Box r = ref.box();
        double toBody = body.box().distance(a);
        // Set under or over the designator, level with its start, its middle or its end.
        double shift = flat ? least(a.x0() - r.x0(), a.centre().x() - r.centre().x(), a.x1() - r.x1())
                : least(a.y0() - r.y0(), a.centre().y() - r.centre().y(), a.y1() - r.y1());
        double stacked = r.distance(a) + 2 * shift;
        double style = TextStyle.of(t).equals(TextStyle.of(ref)) ? 0 : 0.4 * page.pitch();
        return Math.min(stacked, toBody + 0.5 * page.pitch()) + 0.5 * toBody + style;
    }

    private static double least(double a, double b, double c) {
        return Math.min(Math.abs(a), Math.min(Math.abs(b), Math.abs(c)));
    }
}
