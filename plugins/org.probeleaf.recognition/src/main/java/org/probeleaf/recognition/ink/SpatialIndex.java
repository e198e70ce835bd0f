// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.ink;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * Finds things by the place they take. Built once; threads may query it together.
 *
 * @param <T> the things
 */
public final class SpatialIndex<T> {

    private final STRtree tree = new STRtree();

    /**
     * @param things what to index
     * @param box    the place a thing takes
     */
    public SpatialIndex(Collection<? extends T> things, Function<? super T, Box> box) {
        for (T thing : things) {
            tree.insert(envelope(box.apply(thing)), thing);
        }
        tree.build();
    }

    /** Things whose boxes touch {@code box}. */
    @SuppressWarnings("unchecked")
    public List<T> touching(Box box) {
        return tree.query(envelope(box));
    }

    /** Things whose boxes come within {@code reach} points of {@code p} along both axes. */
    public List<T> near(Point p, double reach) {
        return touching(Box.of(p).grow(reach));
    }

    private static Envelope envelope(Box b) {
        return new Envelope(b.x0(), b.x1(), b.y0(), b.y1());
    }
}
