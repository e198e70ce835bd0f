// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.workbench.geometry;

import java.util.List;

import org.probeleaf.schematic.geometry.Box;
import org.probeleaf.schematic.geometry.Point;
import org.probeleaf.schematic.netlist.Part;
import org.probeleaf.schematic.netlist.Pin;
import org.probeleaf.schematic.partbook.PinDirection;

/**
 * The mark at a pin of the selected net: its shape says how the pin works, its direction where the part's body is.
 *
 * @param outlines closed outlines round the origin, in units of the mark's size; empty for a ring
 * @param filled   whether they are filled
 */
public record PinMark(List<double[]> outlines, boolean filled) {

    private static final double[] FORWARD = {-0.6, -0.75, 0.9, 0, -0.6, 0.75};
    private static final double[] FORWARD_HALF = {0.1, -0.65, 1.2, 0, 0.1, 0.65};
    private static final double[] BACK_HALF = {-0.1, -0.65, -1.2, 0, -0.1, 0.65};
    private static final double[] DIAMOND = {-0.85, 0, 0, -0.85, 0.85, 0, 0, 0.85};

    /**
     * The mark for a direction.
     *
     * @param direction how the pin works
     * @param outX      x of the unit vector from the body outwards
     * @param outY      y of it, downwards
     */
    public static PinMark of(PinDirection direction, double outX, double outY) {
        return switch (direction) {
            case OUT -> new PinMark(List.of(turned(FORWARD, outX, outY)), true);
            case IN -> new PinMark(List.of(turned(FORWARD, -outX, -outY)), false);
            case BIDIR -> new PinMark(List.of(turned(FORWARD_HALF, outX, outY), turned(BACK_HALF, outX, outY)), true);
            case PASSIVE, POWER -> new PinMark(List.of(), false);
            case UNKNOWN -> new PinMark(List.of(DIAMOND), false);
        };
    }

    /** The unit vector from the part's body out of a pin; to the right where it cannot be told. */
    public static Point outwards(Part part, Pin pin) {
        Box body = null;
        for (var unit : part.units()) {
            boolean nearer = body == null || unit.box().distance(pin.at()) < body.distance(pin.at());
            if (unit.page() == pin.page() && nearer) {
                body = unit.box();
            }
        }
        if (body == null) {
            return new Point(1, 0);
        }
        double dx = (pin.at().x() - body.centre().x()) / Math.max(1, body.width());
        double dy = (pin.at().y() - body.centre().y()) / Math.max(1, body.height());
        return Math.abs(dx) >= Math.abs(dy) ? new Point(dx < 0 ? -1 : 1, 0) : new Point(0, dy < 0 ? -1 : 1);
    }

    private static double[] turned(double[] shape, double ux, double uy) {
        double[] out = new double[shape.length];
        for (int i = 0; i < shape.length; i += 2) {
            out[i] = shape[i] * ux - shape[i + 1] * uy;
            out[i + 1] = shape[i] * uy + shape[i + 1] * ux;
        }
        return out;
    }
}
