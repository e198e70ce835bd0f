// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.schematic.geometry.Box;

/**
 * Where a text was found.
 *
 * @param page 1-based
 * @param box  round the letters found, in points
 */
record FindHit(int page, Box box) {

    /** Finds a text, letter case ignored, in the texts of a page. */
    static List<FindHit> in(int page, List<Text> texts, String wanted) {
        String needle = wanted.strip().toLowerCase(Locale.ROOT);
        List<FindHit> hits = new ArrayList<>();
        if (needle.isEmpty()) {
            return hits;
        }
        for (Text text : texts) {
            String hay = text.text().toLowerCase(Locale.ROOT);
            for (int i = hay.indexOf(needle); i >= 0; i = hay.indexOf(needle, i + needle.length())) {
                double n = hay.length();
                hits.add(new FindHit(page, piece(text, i / n, (i + needle.length()) / n)));
            }
        }
        return hits;
    }

    /** The share of a text's box that some of its letters take, as if all were alike in width. */
    private static Box piece(Text text, double from, double to) {
        Box b = text.box();
        double angle = Math.floorMod(Math.round(text.angle()), 360);
        if (angle == 0) {
            return new Box(b.x0() + from * b.width(), b.y0(), b.x0() + to * b.width(), b.y1());
        }
        if (angle == 180) {
            return new Box(b.x1() - to * b.width(), b.y0(), b.x1() - from * b.width(), b.y1());
        }
        if (angle == 90) {
            return new Box(b.x0(), b.y0() + from * b.height(), b.x1(), b.y0() + to * b.height());
        }
        if (angle == 270) {
            return new Box(b.x0(), b.y1() - to * b.height(), b.x1(), b.y1() - from * b.height());
        }
        return b;
    }
}
