// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.handover.internal.paint;

import java.io.IOException;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;

/**
 * The name of a net on its wire: the technician's own filled, the sheet's own open.
 *
 * @param text  cleaned
 * @param own   whether the technician gave the name
 * @param tint  colour of the net's band
 * @param unit  points that one design point takes on the page
 * @param width points
 */
public record Tag(String text, boolean own, Tint tint, double unit, double width) {

    private static final double SIZE = 6.6;
    private static final double HEIGHT = 9.4;

    /** Measures a tag. */
    public static Tag of(String text, boolean own, Tint tint, TypeFace face, double unit) {
        String clean = face.cut(face.clean(text.strip().replace('\n', ' ')), 140 * unit, SIZE * unit);
        double room = own ? 7 : 12;
        return new Tag(clean, own, tint, unit, face.width(clean, SIZE * unit) + room * unit);
    }

    public double height() {
        return HEIGHT * unit;
    }

    /** Paints it into a box of its size. */
    public void paint(Canvas canvas, Box box) throws IOException {
        double base = box.y0() + (HEIGHT + SIZE * TypeFace.capHeight()) / 2 * unit;
        if (own) {
            canvas.fill(box, 2.2 * unit, Tint.BLUE, 1);
            canvas.text(new Point(box.x0() + 3.5 * unit, base), text, Letters.strong(SIZE * unit).in(Tint.WHITE));
            return;
        }
        canvas.card(box, 2.2 * unit, Tint.WHITE, Tint.BLACK, 0.45 * unit);
        Box swatch = new Box(box.x0() + 2.6 * unit, box.y0() + 2.6 * unit, box.x0() + 6.8 * unit,
                box.y1() - 2.6 * unit);
        canvas.card(swatch, 0.8 * unit, tint, Tint.BLACK, 0.3 * unit);
        canvas.text(new Point(box.x0() + 8.8 * unit, base), text, Letters.plain(SIZE * unit));
    }
}
