// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.symbol;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.probeleaf.recognition.ink.PageInk;
import org.probeleaf.recognition.ink.Segment;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.schematic.geometry.Point;

/**
 * A page's symbols.
 *
 * @param bodies bodies, by id
 * @param leads  straight lines that stick out of them
 */
public record Symbols(List<Body> bodies, List<Segment> leads) {

    /** Finds the symbols of a page. */
    public static Symbols find(PageInk page) {
        LeadSorter sorter = new LeadSorter(page);
        List<Body> bodies = new BodyBuilder(page, sorter.body()).bodies();
        Map<Segment, Integer> owner = new HashMap<>();
        bodies.forEach(b -> b.ink().forEach(s -> owner.put(s, b.id())));
        SpatialIndex<Segment> index = new SpatialIndex<>(sorter.body(), Segment::box);
        List<Segment> ink = new ArrayList<>(sorter.body());
        List<Segment> leads = new ArrayList<>();
        for (Segment lead : sorter.leads()) {
            Set<Integer> atA = bodiesAt(lead.a(), index, owner, page.reach());
            atA.retainAll(bodiesAt(lead.b(), index, owner, page.reach()));
            // A line with both ends on one body is a part of it: the bar of a diode.
            (atA.isEmpty() ? leads : ink).add(lead);
        }
        if (ink.size() > sorter.body().size()) {
            bodies = new BodyBuilder(page, ink).bodies();
        }
        return new Symbols(bodies, leads);
    }

    private static Set<Integer> bodiesAt(Point end, SpatialIndex<Segment> index, Map<Segment, Integer> owner,
            double reach) {
        Set<Integer> found = new HashSet<>();
        for (Segment s : index.near(end, reach)) {
            if (s.distance(end) <= reach) {
                found.add(owner.get(s));
            }
        }
        return found;
    }
}
