// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.recognition.lettering;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.probeleaf.drawing.primitive.Drawing;
import org.probeleaf.drawing.primitive.Stroke;
import org.probeleaf.drawing.primitive.Text;
import org.probeleaf.recognition.ink.SpatialIndex;
import org.probeleaf.schematic.geometry.Box;

/**
 * Some programs draw letters as strokes and add the same words as text that does not show: there the strokes are set
 * aside and the words are used. Text that does not show and lies over no strokes is no part of the drawing and is left
 * out.
 */
final class HiddenText {

    /** How far letter strokes may stand out of the text's box across the line, in letter heights. */
    private static final double ACROSS = 0.2;
    /** The widest gap between one letter's strokes and the next, in letter heights. */
    private static final double STEP = 0.5;
    /** The largest stroke that can be part of a letter, in letter heights. */
    private static final double LARGEST = 1.3;

    private final boolean[] letter;
    private final List<Text> texts = new ArrayList<>();

    HiddenText(Drawing drawing, List<Text> all) {
        List<Stroke> strokes = drawing.strokes();
        letter = new boolean[strokes.size()];
        List<Integer> ids = new ArrayList<>();
        Box[] boxes = new Box[strokes.size()];
        for (int i = 0; i < strokes.size(); i++) {
            boxes[i] = Box.around(strokes.get(i).points());
            ids.add(i);
        }
        SpatialIndex<Integer> index = new SpatialIndex<>(ids, i -> boxes[i]);
        for (Text text : all) {
            if (text.visible()) {
                texts.add(text);
            } else {
                Text drawn = claim(text, index, boxes, strokes);
                if (drawn != null) {
                    texts.add(drawn);
                }
            }
        }
    }

    /** For each stroke, whether it is part of a letter; to be added to. */
    boolean[] letters() {
        return letter;
    }

    /** Text that is part of the drawing. */
    List<Text> texts() {
        return texts;
    }

    /**
     * Sets the strokes under a text aside and gives the text the place they take. The words that do not show are often
     * set in another font than the strokes, so the strokes may reach beyond the text's own box at either end: they
     * are followed from letter to letter.
     */
    private Text claim(Text text, SpatialIndex<Integer> index, Box[] boxes, List<Stroke> strokes) {
        boolean flat = Math.abs(Math.sin(Math.toRadians(text.angle()))) < 0.5;
        double size = text.size();
        double length = flat ? text.box().width() : text.box().height();
        double along = 0.7 * length + size;
        double across = ACROSS * size;
        Box t = text.box();
        Box band = flat ? new Box(t.x0() - along, t.y0() - across, t.x1() + along, t.y1() + across)
                : new Box(t.x0() - across, t.y0() - along, t.x1() + across, t.y1() + along);
        List<Integer> letters = new ArrayList<>();
        for (int i : index.touching(band)) {
            Box b = boxes[i];
            if (strokes.get(i).rgb() == text.rgb() && band.contains(b) && b.width() <= LARGEST * size
                    && b.height() <= LARGEST * size) {
                letters.add(i);
            }
        }
        letters.sort(Comparator.comparingDouble(i -> flat ? boxes[i].x0() : boxes[i].y0()));
        Box taken = null;
        double from = flat ? t.x0() : t.y0();
        double to = flat ? t.x1() : t.y1();
        for (int i : letters) {
            double lo = flat ? boxes[i].x0() : boxes[i].y0();
            double hi = flat ? boxes[i].x1() : boxes[i].y1();
            if (lo <= to + STEP * size && hi >= from) {
                to = Math.max(to, hi);
                taken = take(i, boxes[i], taken);
            }
        }
        for (int k = letters.size() - 1; k >= 0; k--) {
            int i = letters.get(k);
            double hi = flat ? boxes[i].x1() : boxes[i].y1();
            double lo = flat ? boxes[i].x0() : boxes[i].y0();
            if (hi >= from - STEP * size && lo <= to) {
                from = Math.min(from, lo);
                taken = take(i, boxes[i], taken);
            }
        }
        return taken == null ? null
                : new Text(text.text(), text.origin(), text.angle(), size, taken, text.font(), text.rgb(), true);
    }

    private Box take(int stroke, Box box, Box taken) {
        letter[stroke] = true;
        return taken == null ? box : taken.union(box);
    }
}
